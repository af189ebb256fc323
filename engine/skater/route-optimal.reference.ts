import type { IcePoint } from '../units/points.ts';
import { type RouteCurve, routeCurveOf } from './route-curve.ts';
import type { RoutePower } from './route-profile.ts';

/**
 * The fastest time over drawn points by dynamic programming (Bellman): the time still to go T(s, v) on a grid of places along
 * the curve and speeds, from the end back, the best of many accelerations at every node. It knows nothing of passes, and assumes
 * nothing of how the fastest way looks: it tries. Seconds.
 */
export const routeTimeByProgramming = (
  pointsM: readonly IcePoint[],
  power: RoutePower,
  goalMps: number,
  startSpeedMps: number,
  stops: boolean,
): number => {
  const curve = routeCurveOf(pointsM, { stepM: STEP_M });
  const last = curve.xM.length - 1;
  const mostMps = Math.max(goalMps, startSpeedMps);
  const speedAt = (j: number): number => (mostMps * j) / SPEEDS;
  let ahead = Float64Array.from({ length: SPEEDS + 1 }, (_, j) =>
    overLimit(curve, power, last, speedAt(j), stops ? 0 : mostMps),
  );
  for (let i = last - 1; i >= 0; i--) {
    const next = ahead;
    ahead = Float64Array.from({ length: SPEEDS + 1 }, (_, j) => {
      const fromMps = Math.min(speedAt(j), limitAt(curve, power, i));
      const bestS = bestFrom(curve, power, goalMps, i, fromMps, mps =>
        interpolated(next, (mps / mostMps) * SPEEDS),
      );
      return bestS + FINE_S_PER_MPS * (speedAt(j) - fromMps);
    });
  }
  return interpolated(ahead, (startSpeedMps / mostMps) * SPEEDS);
};

/** With half of both the times found move by 0.3 % at most, towards the profile's. */
const STEP_M = 0.05;
const SPEEDS = 500;
const TRIES = 12;

/** What a speed over the limit costs for every m/s: more than it can ever gain, so nobody chooses it, and small enough to interpolate. */
const FINE_S_PER_MPS = 2;

const bestFrom = (
  curve: RouteCurve,
  power: RoutePower,
  goalMps: number,
  i: number,
  fromMps: number,
  toGoS: (speedMps: number) => number,
): number => {
  const bendPerM = Math.abs(curve.curvaturePerM[i]! + curve.curvaturePerM[i + 1]!) / 2;
  const sideways = Math.min(1, (fromMps ** 2 * bendPerM) / power.lateralAccelMps2);
  const grip = Math.sqrt(1 - sideways ** 2);
  const lackMps = goalMps - fromMps;
  const pushMps2 = (lackMps / power.tauS) * (lackMps > 0 ? grip : 1);
  const brakeMps2 = Math.max(power.stopDecelMps2 * grip, -pushMps2);
  let bestS = Number.POSITIVE_INFINITY;
  for (let k = 0; k <= TRIES; k++) {
    const accelMps2 = -brakeMps2 + ((pushMps2 + brakeMps2) * k) / TRIES;
    const toMps = Math.sqrt(Math.max(0, fromMps ** 2 + 2 * accelMps2 * curve.stepM));
    if (fromMps + toMps <= 0) continue;
    bestS = Math.min(bestS, (2 * curve.stepM) / (fromMps + toMps) + toGoS(toMps));
  }
  return bestS;
};

const limitAt = (curve: RouteCurve, power: RoutePower, i: number): number =>
  Math.sqrt(power.lateralAccelMps2 / Math.max(1e-9, Math.abs(curve.curvaturePerM[i]!)));

const overLimit = (
  curve: RouteCurve,
  power: RoutePower,
  i: number,
  speedMps: number,
  mostMps: number,
): number => FINE_S_PER_MPS * Math.max(0, speedMps - Math.min(mostMps, limitAt(curve, power, i)));

const interpolated = (values: Float64Array, place: number): number => {
  const j = Math.min(values.length - 2, Math.floor(place));
  return values[j]! + (place - j) * (values[j + 1]! - values[j]!);
};
