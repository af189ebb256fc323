import type { IcePoint } from '../units/points.ts';
import { routeCurveOf } from './route-curve.ts';
import type { RoutePower } from './route-profile.ts';

const FINE_STEP_M = 0.004;
const BISECT_STEPS = 40;

/**
 * Slow and plain: the fastest time over the same drawn points on a grid twelve times finer, each step by bisection
 * for the highest speed that keeps the limits at the step's far end (the fast pass takes the step's middle). Forward,
 * without puck, full effort. Seconds.
 */
export const routeTimeReference = (
  pointsM: readonly IcePoint[],
  power: RoutePower,
  startSpeedMps: number,
  stops: boolean,
): number => {
  const curve = routeCurveOf(pointsM, { stepM: FINE_STEP_M });
  const count = curve.xM.length;
  const bends = Array.from(curve.curvaturePerM, turn => Math.abs(turn) / power.lateralAccelMps2);
  const grip = (speedSq: number, i: number): number => Math.sqrt(Math.max(0, 1 - (speedSq * bends[i]!) ** 2));
  const limit = (i: number): number => (bends[i]! > 0 ? Math.min(900, 1 / bends[i]!) : 900);

  const allowed: number[] = new Array(count).fill(0);
  allowed[count - 1] = stops ? 0 : limit(count - 1);
  for (let i = count - 2; i >= 0; i--) {
    const ahead = allowed[i + 1]!;
    allowed[i] = highest(
      limit(i),
      speedSq => speedSq - ahead <= 2 * curve.stepM * power.stopDecelMps2 * grip(speedSq, i),
    );
  }
  let speedSq = Math.min(startSpeedMps ** 2, allowed[0]!);
  let timeS = 0;
  for (let i = 1; i < count; i++) {
    const from = speedSq;
    const push = (2 * curve.stepM * (power.topSpeedMps - Math.sqrt(from))) / power.tauS;
    const next =
      push < 0
        ? from + push
        : highest(Math.min(allowed[i]!, from + push), sq => sq - from <= push * grip(sq, i));
    speedSq = Math.max(0, Math.min(next, allowed[i]!));
    timeS += (2 * curve.stepM) / (Math.sqrt(from) + Math.sqrt(speedSq));
  }
  return timeS;
};

/** Highest v² up to `most` that is possible; the possible ones are those below some value. */
const highest = (most: number, isPossible: (speedSq: number) => boolean): number => {
  if (isPossible(most)) return most;
  let low = 0;
  let high = most;
  for (let step = 0; step < BISECT_STEPS; step++) {
    const middle = (low + high) / 2;
    if (isPossible(middle)) low = middle;
    else high = middle;
  }
  return low;
};
