import type { Drill, Team } from '@icewright/book';
import { findingSentence, findSmallGame, type Lengths, needsOf, type Run, rinkOf } from '@icewright/engine';
import type { DrillPictured, DrillSheet } from '@icewright/picture';
import { countSaid, daySaid, numberSaid, today } from '../../parts/figures.ts';
import { hurtingSentences } from '../../parts/hurting-findings.ts';
import { findRun } from '../../parts/played-drill.ts';
import { rosterOf, type WhoIsHere } from '../../parts/who-is-here.ts';
import { LEVELS } from '../../shell/rinks.ts';
import { flowFindings } from '../findings/flow-findings.ts';

/** The drill with its run as it stands, for a picture of it. */
export function picturedOf(drill: Drill, lengths: Lengths): DrillPictured {
  const run = findRun(drill);
  return {
    plan: drill,
    rink: rinkOf(drill.rink),
    ...(run === undefined ? {} : { run }),
    lengths,
    title: drill.title,
    says: drill.says,
  };
}

/** A drill as its page says it. `cover` stands over the page. */
export function sheetOf(drill: Drill, team: Pick<Team, 'lengths' | 'skaters'>, cover: string): DrillSheet {
  const pictured = picturedOf(drill, team.lengths);
  const run = pictured.run && withBlock(drill, pictured.run, rosterOf(team));
  return {
    ...pictured,
    ...(run === undefined ? {} : { run }),
    cover,
    keyPoints: pointsOf(drill),
    figures: [
      { name: 'minutes', words: `${drill.minutes}` },
      { name: 'on the ice in a rep', words: peopleSaid(drill) },
      ...(run === undefined
        ? []
        : [{ name: 'one rep', words: `${numberSaid(run.durationS)} s, an estimate` }]),
      { name: 'computed for', words: LEVELS.find(({ value }) => value === drill.level)?.said ?? drill.level },
    ],
    findings: (run?.findings ?? []).map(finding => ({
      weight: finding.weight,
      words: findingSentence(finding, drill, team.lengths),
    })),
    cautions: hurtingSentences(drill, team.lengths),
  };
}

/** What is wrong with the block, or to be known of it, after what is of one rep, as the list beside the ice has them. */
const withBlock = (drill: Drill, run: Run, here: WhoIsHere): Run => ({
  ...run,
  findings: [
    ...run.findings,
    ...flowFindings(here)(drill, run),
    ...findSmallGame(drill, rinkOf(drill.rink), here.skaters),
  ],
});

export const pointsOf = (drill: Drill): readonly string[] =>
  drill.keyPoints
    .split('\n')
    .map(point => point.trim())
    .filter(point => point !== '');

/** Who is on the ice, counted as the library counts them: with those who play in small games. */
function peopleSaid(drill: Drill): string {
  const { skaterCount, goalieCount, coachCount } = needsOf(drill, rinkOf(drill.rink));
  const games = Object.values(drill.games);
  const inGames = games.reduce((sum, game) => sum + game.usCount + game.themCount, 0);
  return [
    `${countSaid(skaterCount, 'skater')}${inGames > 0 ? ` (${inGames} in ${games.length === 1 ? 'the small game' : 'small games'})` : ''}`,
    ...(goalieCount > 0 ? [countSaid(goalieCount, 'goalie')] : []),
    ...(coachCount > 0 ? [countSaid(coachCount, 'coach', 'coaches')] : []),
  ].join(', ');
}

/** The line over the page: whose it is, and the day. */
export const coverOf = (team: Pick<Team, 'name'>): string =>
  [team.name, daySaid(today(), 'long')].filter(part => part !== '').join(' · ');
