import type { DrillPlan, Spot } from '../drill/drill.ts';
import { STILL_MOVES_MPS } from '../drill/drill-rows.ts';
import type { LineId } from '../rink/lines.ts';
import type { Run, Track } from '../run/run-result.ts';
import type { End } from '../units/ends.ts';
import type { SpotId } from '../units/ids.ts';
import { HIGH_SPEED_MPS, RETURN_MPS } from './flow-rows.ts';

/** What one rep asks of the skater of one spot. Seconds after the whistle, metres. */
export interface SpotFacts {
  readonly spot: SpotId;
  /** From the first motion to the last; equal when nobody moves. */
  readonly fromS: number;
  readonly toS: number;
  /** Motion only, without standing between. */
  readonly movingS: number;
  /** When the skater has nothing more to do in the rep. */
  readonly freeS: number;
  /** From the end of the rep to the line that is joined next, at an easy pace. */
  readonly backS: number;
  readonly goesTo: SpotId;
  readonly distanceM: number;
  readonly highSpeedS: number;
  readonly puckS: number;
  readonly receiveCount: number;
  readonly shotCount: number;
}

export interface RepFacts {
  readonly durationS: number;
  readonly spots: readonly SpotFacts[];
  readonly shots: readonly { readonly timeS: number; readonly end: End }[];
  /** Pucks that somebody takes and that nobody brought on the stick. */
  readonly takenPuckCount: number;
}

/**
 * What a computed rep asks of everybody in it, for playing a block of them. Skaters only: coaches and goalies stand in no
 * line. Seconds after the whistle (0 to the length of the run), metres. A plan without skaters gives an empty list.
 */
export const repFactsOf = (plan: DrillPlan, run: Run): RepFacts => {
  const before = known.get(run);
  if (before && before.spots === plan.spots && before.goesTo === plan.flow?.goesTo) return before.facts;
  const facts = factsOf(plan, run);
  known.set(run, { spots: plan.spots, goesTo: plan.flow?.goesTo, facts });
  return facts;
};

/** A block is played many times from one run (with two missing, with how many everybody goes); its tracks are read once. */
const known = new WeakMap<
  Run,
  {
    readonly spots: DrillPlan['spots'];
    readonly goesTo: Readonly<Record<SpotId, SpotId>> | undefined;
    readonly facts: RepFacts;
  }
>();

const factsOf = (plan: DrillPlan, run: Run): RepFacts => ({
  durationS: run.durationS,
  spots: run.tracks.flatMap((track, index) => {
    const spot = plan.spots[track.spot];
    return spot?.kind === 'skater' ? [spotFactsOf(plan, run, track, index, spot)] : [];
  }),
  shots: shotsOf(plan, run),
  takenPuckCount: takenPucksOf(plan, run),
});

/**
 * When a rep is over a line, seconds: the puck's first crossing, or without one that of the last skater who crosses it.
 * Null when neither does. Our reading of "clear".
 */
export const clearsAtS = (run: Run, line: LineId): number | null => {
  const first = new Map<SpotId, number>();
  for (const event of run.events) {
    if (event.kind === 'puckCrosses' && event.line === line) return event.timeS;
    if (event.kind === 'spotCrosses' && event.line === line && !first.has(event.spot))
      first.set(event.spot, event.timeS);
  }
  return first.size === 0 ? null : Math.max(...first.values());
};

const spotFactsOf = (plan: DrillPlan, run: Run, track: Track, index: number, spot: Spot): SpotFacts => {
  const motion = motionOf(track, run.stepHz);
  const goesTo = plan.flow?.goesTo[track.spot];
  const next = goesTo !== undefined && plan.spots[goesTo]?.kind === 'skater' ? goesTo : track.spot;
  const lineM = plan.spots[next]?.atM ?? spot.atM;
  const last = track.xM.length - 1;
  const backM = last < 0 ? 0 : Math.hypot(track.xM[last]! - lineM.xM, track.yM[last]! - lineM.yM);
  const lastActS = lastActOf(track, run.stepHz);
  const isIdle = motion.movingS === 0 && lastActS === 0;
  return {
    spot: track.spot,
    ...motion,
    freeS: isIdle ? run.durationS : Math.max(motion.toS, lastActS),
    backS: backM / RETURN_MPS.value,
    goesTo: next,
    distanceM: track.distanceM,
    puckS: puckSecondsOf(run, index),
    receiveCount: countOf(run, 'receive', track.spot),
    shotCount: countOf(run, 'shot', track.spot),
  };
};

const motionOf = (track: Track, stepHz: number) => {
  const moves2 = STILL_MOVES_MPS.value ** 2;
  const high2 = HIGH_SPEED_MPS.value ** 2;
  let first = -1;
  let last = -1;
  let moving = 0;
  let high = 0;
  for (let i = 0; i < track.xMps.length; i++) {
    const x = track.xMps[i]!;
    const y = track.yMps[i]!;
    const speed2 = x * x + y * y;
    if (speed2 <= moves2) continue;
    if (first < 0) first = i;
    last = i;
    moving++;
    if (speed2 >= high2) high++;
  }
  return {
    fromS: Math.max(0, first) / stepHz,
    toS: Math.max(0, last) / stepHz,
    movingS: Math.max(0, moving - 1) / stepHz,
    highSpeedS: high / stepHz,
  };
};

/** When the last act is over, seconds; 0 when there was none. */
const lastActOf = (track: Track, stepHz: number): number => {
  for (let i = track.actIndex.length - 1; i >= 0; i--) if (track.actIndex[i]! >= 0) return i / stepHz;
  return 0;
};

const puckSecondsOf = (run: Run, index: number): number => {
  let count = 0;
  for (const puck of run.pucks) for (const owner of puck.owner) if (owner === index) count++;
  return count / run.stepHz;
};

const countOf = (run: Run, kind: 'receive' | 'shot', spot: SpotId): number => {
  let count = 0;
  for (const event of run.events) if (event.kind === kind && event.spot === spot) count++;
  return count;
};

/** Shots with the end they go to; one whose act is not in the plan is left out. */
const shotsOf = (plan: DrillPlan, run: Run): RepFacts['shots'] =>
  run.events.flatMap(event => {
    const act = event.kind === 'shot' ? plan.spots[event.spot]?.acts[event.act] : undefined;
    return act?.kind === 'shoot' ? [{ timeS: event.timeS, end: act.atEnd }] : [];
  });

const takenPucksOf = (plan: DrillPlan, run: Run): number =>
  run.pucks.filter(({ owner }) => {
    const first = run.tracks[owner[0] ?? -1];
    const isBrought = first !== undefined && plan.spots[first.spot]?.kind === 'skater';
    return !isBrought && owner.some(one => one >= 0);
  }).length;
