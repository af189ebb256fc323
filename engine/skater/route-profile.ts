import { type None, noneBecause } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import type { SkaterModel } from './model.ts';
import { type RouteCurve, routePlaceAt } from './route-curve.ts';

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

/** A skater slower than this turns round on the spot before pushing off. Our choice, an estimate. */
const TURNS_ON_THE_SPOT_BELOW_MPS = 1;

/**
 * The fastest way to skate the curve: (a_t/a_max)² + (v²κ/a_lat)² ≤ 1 at every sample, with a_max = (V_mode − v)/τ when
 * speeding up and the stop deceleration when braking; V_mode = V × effort × backward ratio × carry ratio. One forward and
 * one backward pass over v². A start above V_mode eases down by the same law. None: effort 0 (or no top speed) and the
 * glide ends before the route does.
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
  const speedMps = new Float64Array(count);
  const timeS = new Float64Array(count).fill(delayS);
  const sharpest = sharpestOf(curve.curvaturePerM);
  const tightestRadiusM = sharpest > 0 ? 1 / sharpest : Number.POSITIVE_INFINITY;
  let startExcessMps = 0;
  if (curve.lengthM > 0) {
    const glideM = turns && delayS === 0 ? run.startSpeedMps * power.transitionS : 0;
    brakePass(speedMps, curve, power, run.stops);
    const allowedSq = speedMps[0]!;
    startExcessMps = Math.max(0, run.startSpeedMps - Math.sqrt(allowedSq));
    speedMps[0] = Math.min(run.startSpeedMps ** 2, allowedSq);
    if (!pushPass(speedMps, timeS, curve, power, goalMps, glideM)) return noneBecause('neverGetsThere');
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

const sharpestOf = (curvaturePerM: Float64Array): number => {
  let sharpest = 0;
  for (let i = 0; i < curvaturePerM.length; i++) {
    const turn = curvaturePerM[i]!;
    if (turn > sharpest) sharpest = turn;
    else if (-turn > sharpest) sharpest = -turn;
  }
  return sharpest;
};

/** Fills `speedSq` with the highest v² from which everything ahead can still be braked for. */
const brakePass = (speedSq: Float64Array, curve: RouteCurve, power: RoutePower, stops: boolean): void => {
  const turn = curve.curvaturePerM;
  const last = speedSq.length - 1;
  const gain = 2 * curve.stepM * power.stopDecelMps2;
  const lateral = power.lateralAccelMps2;
  let bend = Math.abs(turn[last]!) / lateral;
  let sq = stops ? 0 : bend > 0 ? 1 / bend : Number.POSITIVE_INFINITY;
  speedSq[last] = sq;
  for (let i = last - 1; i >= 0; i--) {
    const nextBend = Math.abs(turn[i]!) / lateral;
    const middle = (bend + nextBend) / 2;
    bend = nextBend;
    if (sq < FASTEST_SQ) {
      const share = sq * middle;
      const grip = share < 1 ? 1 - share * share : 0;
      // Midpoint rule: the share of grip left for braking, halfway through the step.
      const half = (sq + 0.5 * gain * Math.sqrt(grip)) * middle;
      sq += half < 1 ? gain * Math.sqrt(1 - half * half) : 0;
    }
    if (sq * nextBend > 1) sq = 1 / nextBend;
    speedSq[i] = sq;
  }
};

/** Above any skater's v²: braking from there needs no following. */
const FASTEST_SQ = 1e4;

/** Turns allowed v² into driven speeds and times; false when the skater comes to rest on the way. */
const pushPass = (
  speedSq: Float64Array,
  timeS: Float64Array,
  curve: RouteCurve,
  power: RoutePower,
  goalMps: number,
  glideM: number,
): boolean => {
  const turn = curve.curvaturePerM;
  const last = speedSq.length - 1;
  const step = curve.stepM;
  const gain = (2 * step) / power.tauS;
  const lateral = power.lateralAccelMps2;
  const glideSteps = Math.ceil(glideM / step);
  let sq = speedSq[0]!;
  let speed = Math.sqrt(sq);
  let time = timeS[0]!;
  let bend = Math.abs(turn[0]!) / lateral;
  speedSq[0] = speed;
  for (let i = 1; i <= last; i++) {
    const nextBend = Math.abs(turn[i]!) / lateral;
    const middle = (bend + nextBend) / 2;
    bend = nextBend;
    const lack = goalMps - speed;
    let nextSq = sq;
    if (i > glideSteps || lack < 0) {
      const share = sq * middle;
      const grip = lack < 0 ? 1 : share < 1 ? Math.sqrt(1 - share * share) : 0;
      const halfSq = Math.max(0, sq + 0.5 * gain * lack * grip);
      const halfLack = goalMps - Math.sqrt(halfSq);
      const half = halfSq * middle;
      nextSq += gain * halfLack * (lack < 0 ? 1 : half < 1 ? Math.sqrt(1 - half * half) : 0);
    }
    const allowed = speedSq[i]!;
    sq = Math.min(nextSq, allowed);
    const next = sq > 0 ? Math.sqrt(sq) : 0;
    if (!(speed + next > 0)) return false;
    time += (2 * step) / (speed + next);
    speed = next;
    speedSq[i] = next;
    timeS[i] = time;
  }
  return true;
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
  const rate = (to - from) / (timeS[i + 1]! - timeS[i]!);
  const sM = i * curve.stepM + intoS * (from + 0.5 * rate * intoS);
  const place = routePlaceAt(curve, sM);
  return { atM: place.atM, headingRad: place.headingRad, speedMps: from + rate * intoS, sM };
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
