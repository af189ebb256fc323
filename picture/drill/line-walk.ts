import type { Act, ActId, DrillPlan, IcePoint, Lengths, LevelId, Rink, Run, SpotId } from '@icewright/engine';
import type { LineEnd } from '../ice/line-marks.ts';
import type { DrillLine } from './drill-line.ts';
import type { SpotPlaces } from './pass-places.ts';
import type { RouteBefore } from './route.ts';
import { type ActTimes, hadPuckAt } from './run-reading.ts';

/** All that is known while the acts of a drill are turned into lines. */
export interface LineWalk {
  readonly plan: DrillPlan;
  readonly rink: Rink;
  readonly run: Run | undefined;
  readonly level: LevelId | undefined;
  readonly places: ReadonlyMap<SpotId, SpotPlaces>;
  /** Passes met so far, by who is to take them. */
  readonly passesTo: Map<SpotId, number>;
  readonly lengths: Lengths;
}

/** One act of a spot where it begins. */
export interface ActStep {
  readonly of: { readonly spot: SpotId; readonly act: ActId };
  readonly at: IcePoint;
  readonly before: RouteBefore;
  readonly backwardBefore: boolean | null;
  readonly times: ActTimes | null;
  readonly later: readonly (readonly [ActId, Act])[];
  readonly hasPuck: boolean;
}

/** What an act draws, and where it leaves her for the act after it. */
export interface LeftAt {
  readonly lines: readonly DrillLine[];
  readonly at: IcePoint;
  readonly before: RouteBefore;
  /** Null: as it was. */
  readonly backward: boolean | null;
}

export const STANDING: RouteBefore = { speedMps: 0 };

/** Direction she is turned to where an act begins: the way she moves, or the way the spot faces. */
export const headingOf = (walk: LineWalk, step: ActStep): number =>
  step.before.headingRad ?? walk.plan.spots[step.of.spot]?.facingRad ?? 0;

/** Whether the puck is on her stick: as it was played, or as far as the plan says. */
export const playsPuck = (walk: LineWalk, step: ActStep): boolean =>
  walk.run && step.times ? hadPuckAt(walk.run, step.of.spot, step.times) : step.hasPuck;

/** A line goes on into the next that moves her; passes and waits between are no end. */
export const endOf = (later: ActStep['later']): LineEnd => {
  const next = later.find(([, each]) => !STAYS.includes(each.kind))?.[1];
  return next && GOES_ON.includes(next.kind) ? 'open' : 'head';
};

const STAYS: readonly Act['kind'][] = ['pass', 'hold', 'face', 'leave', 'pivot'];
const GOES_ON: readonly Act['kind'][] = ['skate', 'carry', 'stop', 'turn', 'pickUp'];
