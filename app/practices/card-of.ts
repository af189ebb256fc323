import { type Drill, inOrder, type Practice, type Skater, type Team } from '@icewright/book';
import { rinkOf } from '@icewright/engine';
import type { IceCard, IceCardBlock } from '@icewright/picture';
import { clockSaid, daySaid, fromToday } from '../parts/figures.ts';
import { hurtingSentences } from '../parts/hurting-findings.ts';
import { findRun } from '../parts/played-drill.ts';
import { scheduleOf, type TimedBlock } from './schedule.ts';

/** A practice as it is printed: ids become names, minutes become clock times. */
export function cardOf(
  team: Team,
  practice: Practice,
  drills: ReadonlyMap<string, Drill>,
  nextGame: { readonly title: string; readonly day: string } | undefined,
): IceCard {
  const schedule = scheduleOf(practice);
  const clock = (time: string) => clockSaid(time, team.clockFace);
  return {
    team: team.name,
    title: practice.title,
    facts: [
      {
        small: daySaid(practice.day, 'long'),
        strong: `${clock(practice.starts)} to ${clock(schedule.iceEndsClock)}`,
      },
      { small: practice.place === '' ? 'Ice' : practice.place, strong: `${practice.iceMinutes} min` },
      ...(nextGame === undefined
        ? []
        : [{ small: nextGame.title, strong: fromToday(nextGame.day, practice.day) }]),
    ],
    today: practice.today,
    blocks: schedule.blocks.map(timed => cardBlockOf(timed, team, drills, clock)),
    groups: groupsOf(team, practice),
    note: noteOf(team, practice),
    cautions: [
      ...(schedule.leftMinutes < 0
        ? [`The blocks take ${-schedule.leftMinutes} min more than the ice: leave something out.`]
        : []),
      ...noContactOf(team, practice).map(
        skater => `${calledOf(skater)}: no contact until the medical staff lift it.`,
      ),
      ...dangersOf(team, schedule.blocks, drills),
    ],
  };
}

/** More than these would push the blocks off the page; the drill itself shows them all. */
const MOST_DANGERS = 3;
/** What the engine flags in today's drills that may hurt somebody, each once, as sentences for the box of cautions. */
function dangersOf(
  team: Team,
  blocks: readonly TimedBlock[],
  drills: ReadonlyMap<string, Drill>,
): readonly string[] {
  const ids = new Set(blocks.flatMap(({ block }) => (block.drill === undefined ? [] : [block.drill])));
  const said = [...ids].flatMap(id => {
    const drill = drills.get(id);
    return drill === undefined
      ? []
      : hurtingSentences(drill, team.lengths).map(sentence => `${drill.title}: ${sentence}`);
  });
  const more = said.length - MOST_DANGERS;
  return more <= 0
    ? said
    : [...said.slice(0, MOST_DANGERS), `${more} more of this kind: look at the findings of the drills.`];
}

function cardBlockOf(
  { block, startsClock, endsClock }: TimedBlock,
  team: Team,
  drills: ReadonlyMap<string, Drill>,
  clock: (time: string) => string,
): IceCardBlock {
  const plan = block.drill === undefined ? undefined : drills.get(block.drill);
  const run = plan && findRun(plan);
  const facts = (['leads', 'groups', 'pucks', 'ice'] as const)
    .filter(key => block[key] !== '')
    .map(key => ({ name: key, words: block[key] }));
  return {
    startClock: clock(startsClock),
    endClock: clock(endsClock),
    minutes: block.minutes,
    title: block.title,
    cueWords: block.says,
    keyPoints: block.keyPoints
      .split('\n')
      .map(point => point.trim())
      .filter(point => point !== ''),
    ...(plan === undefined ? {} : { plan }),
    ...(run === undefined ? {} : { run }),
    lengths: team.lengths,
    rink: rinkOf(plan?.rink ?? team.rink),
    facts,
  };
}

function groupsOf(team: Team, practice: Practice): IceCard['groups'] {
  const here = inOrder(team.skaters).filter(([id]) => !practice.missing.includes(id));
  const names = [...new Set(here.map(([, skater]) => skater.group))];
  return names.map(group => ({
    name: group,
    people: here
      .filter(([, skater]) => skater.group === group)
      .map(([, skater]) => `${calledOf(skater)}${skater.noContact ? '*' : ''}`)
      .join(', '),
  }));
}

function noteOf(team: Team, practice: Practice): string {
  const missing = practice.missing.flatMap(id =>
    team.skaters[id] === undefined ? [] : [team.skaters[id].number],
  );
  return [
    noContactOf(team, practice).length > 0 ? '* no contact.' : '',
    missing.length > 0 ? `Missing: ${missing.join(', ')}.` : '',
    practice.note,
  ]
    .filter(part => part !== '')
    .join(' ');
}

/** Number and name, which no line break may part. */
const calledOf = (skater: Skater): string => `${skater.number}\u00a0${skater.name}`;

const noContactOf = (team: Team, practice: Practice): Skater[] =>
  inOrder(team.skaters)
    .filter(([id, skater]) => skater.noContact && !practice.missing.includes(id))
    .map(([, skater]) => skater);
