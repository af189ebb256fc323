import { type None, noneBecause } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import type { SkaterModel } from './model.ts';
import { type RouteCurve, routePlaceAt } from './route-curve.ts';
import { brakePass, pushPass } from './route-passes.ts';
import { ROUTE_ROWS } from './route-rows.ts';

/** What of a skater decides how a route is skated. */
export type RoutePower = Pick<
  SkaterModel,
  | 'topSpeedMps'
  | 'tauS'
  | 'lateralAccelMps2'
  | 'stopDecelMps2'
  | 'minTurnRadiusM'
  | 'backwardRatio'
  | 'carryRatio'
  | 'transitionS'
>;

export interface RouteRun {
  readonly startSpeedMps: number;
  readonly facing: 'forward' | 'backward';
  /** How the skater faced before: a change costs `transitionS`. Left out: no change. */
  readonly facingBefore?: 'forward' | 'backward';
  readonly withPuck: boolean;
  /** Scales the top speed, above 0 to 1. */
  readonly effortRatio: number;
  /** Ends at rest; otherwise at whatever speed is fastest. */
  readonly stops: boolean;
}

export interface RouteProfile {
  readonly curve: RouteCurve;
  readonly durationS: number;
  /** Speed and time at the curve's samples. `timeS` starts at the delay of a turn on the spot, mostly 0. */
  readonly speedMps: Float64Array;
  readonly timeS: Float64Array;
  /** How much faster the skater arrives than the route's beginning allows, m/s; 0 when all is well. */
  readonly startExcessMps: number;
  /** Tightest radius of the route, metres; below the skater's `minTurnRadiusM` the route cannot be followed as drawn. */
  readonly tightestRadiusM: number;
  readonly isTooTight: boolean;
  stateAt(timeS: number): RouteState;
}

export interface RouteState {
  readonly atM: IcePoint;
  /** Direction of motion; a skater going backwards faces the other way. */
  readonly headingRad: number;
  readonly speedMps: number;
  readonly sM: number;
}

/** A skater slower than this turns round on the spot before pushing off. */
const TURNS_ON_THE_SPOT_BELOW_MPS = ROUTE_ROWS.turnsOnTheSpotBelowMps.value;

/**
 * The fastest way to skate the curve: (a_t/a_max)² + (v²κ/a_lat)² ≤ 1 at every sample, with a_max = (V_mode − v)/τ when
 * speeding up and the stop deceleration when braking; V_mode = V × effort × backward ratio × carry ratio. One forward and
 * one backward pass over v². A start above V_mode eases down by the same law. None: effort 0 (or no top speed) and the
 * glide ends before the route does. A change of facing costs `transitionS` before the first push: at speed its way is
 * glided, nearly at rest it is spent on the spot. Source: forward–backward pass for time-optimal speed along a path,
 * Bobrow, Dubowsky & Gibson 1985 (from memory), with a friction ellipse.
 */
export const profileRoute = (
  curve: RouteCurve,
  power: RoutePower,
  run: RouteRun,
): RouteProfile | None<'neverGetsThere'> => {
  const count = curve.xM.length;
  const goalMps =
    power.topSpeedMps *
    run.effortRatio *
    (run.facing === 'backward' ? power.backwardRatio : 1) *
    (run.withPuck ? power.carryRatio : 1);
  const turns = run.facingBefore !== undefined && run.facingBefore !== run.facing;
  const delayS = turns && run.startSpeedMps < TURNS_ON_THE_SPOT_BELOW_MPS ? power.transitionS : 0;
  const numbers = new Float64Array(2 * count);
  const speedMps = numbers.subarray(0, count);
  const timeS = numbers.subarray(count);
  timeS[0] = delayS;
  const tightestRadiusM = curve.sharpestPerM > 0 ? 1 / curve.sharpestPerM : Number.POSITIVE_INFINITY;
  let startExcessMps = 0;
  if (curve.lengthM > 0) {
    const glideM = turns && delayS === 0 ? run.startSpeedMps * power.transitionS : 0;
    brakePass(speedMps, curve, power.stopDecelMps2, power.lateralAccelMps2, run.stops);
    const allowedSq = speedMps[0]!;
    startExcessMps = Math.max(0, run.startSpeedMps - Math.sqrt(allowedSq));
    speedMps[0] = Math.min(run.startSpeedMps ** 2, allowedSq);
    const mode = { topSpeedMps: goalMps, tauS: power.tauS };
    const arrives = pushPass(speedMps, timeS, curve, mode, power.lateralAccelMps2, glideM);
    if (!arrives) return noneBecause('neverGetsThere');
  }
  const durationS = timeS[count - 1]!;
  return {
    curve,
    durationS,
    speedMps,
    timeS,
    startExcessMps,
    tightestRadiusM,
    isTooTight: tightestRadiusM < power.minTurnRadiusM,
    stateAt: atS => stateOn(curve, speedMps, timeS, atS),
  };
};

const stateOn = (curve: RouteCurve, speedMps: Float64Array, timeS: Float64Array, atS: number): RouteState => {
  const last = timeS.length - 1;
  const i = sampleBefore(timeS, atS);
  if (atS <= timeS[0]! || i >= last) {
    const sM = i >= last ? curve.lengthM : 0;
    const place = routePlaceAt(curve, sM);
    return { atM: place.atM, headingRad: place.headingRad, speedMps: speedMps[i >= last ? last : 0]!, sM };
  }
  const intoS = atS - timeS[i]!;
  const from = speedMps[i]!;
  const to = speedMps[i + 1]!;
  const spanS = timeS[i + 1]! - timeS[i]!;
  const u = intoS / spanS;
  // Cubic with the samples' places and speeds; exactly the even acceleration where the span is that of one.
  const bend = (from + to) * spanS - 2 * curve.stepM;
  const slope = 3 * curve.stepM - (2 * from + to) * spanS;
  const sM = i * curve.stepM + u * (from * spanS + u * (slope + u * bend));
  const place = routePlaceAt(curve, sM);
  const speed = from + (u * (2 * slope + 3 * u * bend)) / spanS;
  return { atM: place.atM, headingRad: place.headingRad, speedMps: Math.max(0, speed), sM };
};

/** Index of the last sample not after `atS`. */
const sampleBefore = (timeS: Float64Array, atS: number): number => {
  let low = 0;
  let high = timeS.length - 1;
  if (atS >= timeS[high]!) return high;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (timeS[middle]! <= atS) low = middle;
    else high = middle;
  }
  return low;
};
