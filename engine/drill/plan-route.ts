import { type RouteCurve, routeCurveOf, routePlaceAt } from '../skater/route-curve.ts';
import { profileRoute, type RouteProfile } from '../skater/route-profile.ts';
import { isNone } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import type { Actor } from './actor.ts';
import type { ActDeed } from './drill.ts';
import { BOARDS_ROOM_M, LEAST_EFFORT_RATIO } from './drill-rows.ts';
import { type Body, boardsDistanceAt, pushInside, standingPointOf } from './in-boards.ts';
import type { PlannedRoute } from './planned-route.ts';
import type { RunState } from './run-state.ts';
import { STEP_HZ } from './step-hz.ts';

/** A skater faster than this leaves in the direction of motion; a slower one in any. */
const CARRIES_ON_MPS = 0.5;

type RouteDeed = Extract<ActDeed, { kind: 'skate' | 'carry' }>;

/**
 * The times of a scripted route for this skater, starting at `startS` from where `from` is, with the speed it has. Points
 * off the ice are moved to the nearest place to stand, and so is any bulge of the smooth curve. A skater who stands
 * with the back to the route turns on the spot first.
 */
export const planRoute = (
  run: RunState,
  actor: Actor,
  act: RouteDeed,
  startS: number,
  from: Body,
): PlannedRoute => {
  const boards = run.rink.boards;
  const speedMps = Math.hypot(from.xMps, from.yMps);
  const moves = speedMps > CARRIES_ON_MPS;
  const pointsM = [
    { xM: from.xM, yM: from.yM },
    ...act.throughM.map(pointM => standingPointOf(boards, pointM)),
  ];
  const curve = routeCurveOf(pointsM, moves ? { startHeadingRad: Math.atan2(from.yMps, from.xMps) } : {});
  const profile = profileRoute(curve, actor.model, {
    startSpeedMps: moves ? speedMps : 0,
    facing: act.facing,
    facingBefore: facingBefore(actor, curve, moves ? from : null, act.facing),
    withPuck: act.kind === 'carry',
    effortRatio: Math.max(LEAST_EFFORT_RATIO.value, act.effortRatio),
    stops: act.stops,
  });
  const planned = isNone(profile)
    ? standing(startS, from, act.facing === 'backward')
    : sampled(startS, profile, act.facing === 'backward');
  let off: PlannedRoute['off'] = null;
  const noteOff = (atM: IcePoint): void => {
    const byM = -boardsDistanceAt(boards, atM.xM, atM.yM);
    if (byM > (off?.byM ?? OFF_FROM_M)) off = { atM, byM };
  };
  for (const pointM of act.throughM) noteOff(pointM);
  for (let i = 0; i < planned.xM.length; i++) {
    if (boardsDistanceAt(boards, planned.xM[i]!, planned.yM[i]!) >= BOARDS_ROOM_M.value) continue;
    const point = { xM: planned.xM[i]!, yM: planned.yM[i]! };
    noteOff({ ...point });
    pushInside(boards, point);
    planned.xM[i] = point.xM;
    planned.yM[i] = point.yM;
  }
  return { ...planned, off };
};

/** A line drawn on the boards is not yet off the ice. */
const OFF_FROM_M = 0.05;

/** Whether the body's facing now is that of a skater going forward or backward along the start of the curve. */
const facingBefore = (
  actor: Actor,
  curve: RouteCurve,
  moving: Body | null,
  facing: 'forward' | 'backward',
): 'forward' | 'backward' => {
  if (curve.lengthM === 0) return facing;
  const headingRad = curve.headingRad[0]!;
  const alongX = moving ? moving.xMps : Math.cos(headingRad);
  const alongY = moving ? moving.yMps : Math.sin(headingRad);
  return alongX * actor.facingX + alongY * actor.facingY >= 0 ? 'forward' : 'backward';
};

const standing = (startS: number, from: Body, backward: boolean): PlannedRoute => ({
  off: null,
  startS,
  endS: startS,
  stepS: 1 / STEP_HZ,
  backward,
  xM: Float64Array.of(from.xM),
  yM: Float64Array.of(from.yM),
  xMps: Float64Array.of(0),
  yMps: Float64Array.of(0),
});

const sampled = (startS: number, profile: RouteProfile, backward: boolean): PlannedRoute => {
  const stepS = 1 / STEP_HZ;
  const count = Math.ceil(profile.durationS / stepS - 1e-9) + 1;
  const planned: PlannedRoute = {
    off: null,
    startS,
    endS: startS + profile.durationS,
    stepS,
    backward,
    xM: new Float64Array(count),
    yM: new Float64Array(count),
    xMps: new Float64Array(count),
    yMps: new Float64Array(count),
  };
  const { curve, speedMps, timeS } = profile;
  const last = timeS.length - 1;
  let k = 0;
  for (let i = 0; i < count; i++) {
    const atS = i === count - 1 ? profile.durationS : i * stepS;
    while (k < last - 1 && timeS[k + 1]! <= atS) k++;
    const intoS = Math.max(0, atS - timeS[k]!);
    const fromMps = speedMps[k]!;
    const gapS = last > 0 ? timeS[k + 1]! - timeS[k]! : 0;
    const rateMps2 = gapS > 0 ? (speedMps[k + 1]! - fromMps) / gapS : 0;
    const place = routePlaceAt(curve, k * curve.stepM + intoS * (fromMps + 0.5 * rateMps2 * intoS));
    const speed = Math.max(0, fromMps + rateMps2 * intoS);
    planned.xM[i] = place.atM.xM;
    planned.yM[i] = place.atM.yM;
    planned.xMps[i] = speed * Math.cos(place.headingRad);
    planned.yMps[i] = speed * Math.sin(place.headingRad);
  }
  return planned;
};
