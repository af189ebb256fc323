import type { Act, DrillPlan, Rink, Run } from '@icewright/engine';
import type { RouteLine } from './drill-line.ts';
import { drillLinesOf } from './drill-lines.ts';

/** The entries a key can have, in its order. */
export const KEY_ENTRIES = [
  'skating',
  'withPuck',
  'backward',
  'backwardPuck',
  'pivot',
  'stop',
  'turn',
  'face',
  'pass',
  'bank',
  'saucer',
  'rim',
  'drop',
  'meant',
  'shot',
  'pickUp',
  'left',
  'chase',
  'steal',
  'gap',
  'screen',
  'fires',
  'waits',
  'whistle',
  'seconds',
  'place',
  'us',
  'them',
  'goalie',
  'coach',
  'line',
  'pucks',
  'pylon',
  'net',
  'smallNet',
  'divider',
] as const;

export type KeyEntry = (typeof KEY_ENTRIES)[number];

/** The marks that a drill's drawing uses, in the order of the key; of several drills, those that any of them uses. */
export const usedMarks = (...plans: readonly DrillPlan[]): readonly KeyEntry[] =>
  marksOf(plans.map(plan => ({ plan, played: new Map() })));

/** The marks of drawings of which some are as they were played: there a gap is the way she went. */
export const drawnMarks = (
  drawn: readonly { readonly plan?: DrillPlan; readonly run?: Run; readonly rink: Rink }[],
): readonly KeyEntry[] =>
  marksOf(
    drawn.flatMap(({ plan, run, rink }) =>
      plan === undefined ? [] : [{ plan, played: run ? playedMarks(plan, run, rink) : new Map() }],
    ),
  );

/** The mark of each gap, chase, steal and screen that was played, and of each pass that was cut, by its spot and act. */
type PlayedMarks = ReadonlyMap<string, KeyEntry>;

const playedMarks = (plan: DrillPlan, run: Run, rink: Rink): PlayedMarks =>
  new Map(
    drillLinesOf(plan, rink, { run }).flatMap(line => {
      const key = `${line.spot} ${line.act}`;
      if (line.kind === 'pass' && line.meant) return [[key, 'meant'] as const];
      return line.kind === 'route' && line.style === 'chase'
        ? [[key, pursuitMark(line, plan.spots[line.spot]?.acts[line.act])] as const]
        : [];
    }),
  );

const pursuitMark = (line: RouteLine, act: Act | undefined): KeyEntry => {
  if (act?.kind === 'screen' || act?.kind === 'steal') return act.kind;
  return line.backward ? 'backward' : 'chase';
};

const marksOf = (
  drawn: readonly { readonly plan: DrillPlan; readonly played: PlayedMarks }[],
): readonly KeyEntry[] => {
  const used = new Set<KeyEntry>();
  for (const { plan, played } of drawn) {
    for (const [id, spot] of Object.entries(plan.spots)) addSpot(used, spot, id, played);
    if (Object.keys(plan.pucks).length > 0) used.add('pucks');
    for (const gear of Object.values(plan.gear)) used.add(gear.kind);
  }
  return KEY_ENTRIES.filter(entry => used.has(entry));
};

const addSpot = (
  used: Set<KeyEntry>,
  spot: DrillPlan['spots'][keyof DrillPlan['spots']],
  id: string,
  played: PlayedMarks,
): void => {
  used.add(spot.kind === 'skater' ? spot.side : spot.kind);
  if (spot.waitingCount > 0) used.add('line');
  let facing: 'forward' | 'backward' | null = null;
  const acts = (Object.entries(spot.acts) as [string, Act][]).sort(
    ([, one], [, other]) => one.rank - other.rank,
  );
  for (const [actId, act] of acts) {
    if (act.kind === 'skate' || act.kind === 'carry') {
      if (act.stops) used.add('stop');
      if (facing !== null && facing !== act.facing) used.add('pivot');
      facing = act.facing;
    }
    const mark = played.get(`${id} ${actId}`);
    const plain = mark === undefined || mark === 'meant' ? markOf(act) : mark;
    if (plain) used.add(plain);
    if (mark === 'meant') used.add(mark);
    addCue(used, act.cue);
  }
};

const routeMark = (act: Extract<Act, { kind: 'skate' | 'carry' }>): KeyEntry => {
  if (act.facing === 'backward') return act.kind === 'carry' ? 'backwardPuck' : 'backward';
  return act.kind === 'carry' ? 'withPuck' : 'skating';
};

/** The mark of an act; nothing is drawn for a hold. */
const markOf = (act: Act): KeyEntry | null => {
  if (act.kind === 'skate' || act.kind === 'carry') return routeMark(act);
  if (act.kind === 'pass') return act.way === 'direct' ? 'pass' : act.way;
  if (act.kind === 'shoot') return 'shot';
  if (act.kind === 'leave') return 'left';
  return act.kind === 'hold' ? null : act.kind;
};

const addCue = (
  used: Set<KeyEntry>,
  cue: DrillPlan['spots'][keyof DrillPlan['spots']]['acts'][never]['cue'],
): void => {
  if (!cue) return;
  if (cue.on === 'whistle') used.add('whistle');
  else if (cue.on === 'after') {
    if (cue.seconds > 0) used.add('seconds');
  } else {
    used.add('waits');
    used.add('fires');
    if (cue.on === 'reaches') used.add('place');
  }
};
