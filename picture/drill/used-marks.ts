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
  'gapSkated',
  'screen',
  'ticks',
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

/** The marks of drawings of which some are as they were played: there a gap is the way she went. `ticks`: seconds are marked on the routes. */
export const drawnMarks = (
  drawn: readonly { readonly plan?: DrillPlan; readonly run?: Run; readonly rink: Rink }[],
  { ticks = false }: { readonly ticks?: boolean } = {},
): readonly KeyEntry[] => {
  const marks = marksOf(
    drawn.flatMap(({ plan, run, rink }) =>
      plan === undefined ? [] : [{ plan, played: run ? playedMarks(plan, run, rink) : new Map() }],
    ),
  );
  return ticks && marks.some(mark => TICKED.includes(mark))
    ? KEY_ENTRIES.filter(entry => entry === 'ticks' || marks.includes(entry))
    : marks;
};

/** Marks of routes, on which seconds stand. */
const TICKED: readonly KeyEntry[] = [
  'skating',
  'withPuck',
  'backward',
  'backwardPuck',
  'chase',
  'gapSkated',
  'steal',
];

/** The marks of each gap, chase, steal and screen that was played, of each pass that was cut and each way to a pass, by its spot and act. */
type PlayedMarks = ReadonlyMap<string, readonly KeyEntry[]>;

const playedMarks = (plan: DrillPlan, run: Run, rink: Rink): PlayedMarks => {
  const played = new Map<string, readonly KeyEntry[]>();
  for (const line of drillLinesOf(plan, rink, { run })) {
    const act = plan.spots[line.spot]?.acts[line.act];
    const marks =
      line.kind === 'pass' && line.meant && act
        ? [...marksOfAct(act), 'meant' as const]
        : line.kind === 'route' && line.style === 'chase'
          ? pursuitMarks(line, act)
          : line.kind === 'route' && line.puckComesAt && act
            ? [...marksOfAct(act), line.backward ? ('backward' as const) : ('skating' as const)]
            : [];
    const key = `${line.spot} ${line.act}`;
    if (marks.length > 0) played.set(key, [...(played.get(key) ?? []), ...marks]);
  }
  return played;
};

/** A stretch of it, by the act that is drawn: who keeps a gap going forward chases nobody. */
const pursuitMarks = (line: RouteLine, act: Act | undefined): readonly KeyEntry[] => [
  ...(line.pivot ? (['pivot'] as const) : []),
  act?.kind === 'screen' || act?.kind === 'steal'
    ? act.kind
    : line.backward
      ? 'backward'
      : act?.kind === 'gap'
        ? 'gapSkated'
        : 'chase',
];

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
    for (const mark of played.get(`${id} ${actId}`) ?? marksOfAct(act)) used.add(mark);
    addCue(used, act.cue);
  }
};

const routeMark = (act: Extract<Act, { kind: 'skate' | 'carry' }>): KeyEntry => {
  if (act.facing === 'backward') return act.kind === 'carry' ? 'backwardPuck' : 'backward';
  return act.kind === 'carry' ? 'withPuck' : 'skating';
};

const marksOfAct = (act: Act): readonly KeyEntry[] => {
  const mark = markOf(act);
  return mark === null ? [] : [mark];
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
