import { type None, noneBecause } from '../units/none.ts';

/** What the sprint law needs of a skater. */
export interface SprintPower {
  readonly topSpeedMps: number;
  readonly tauS: number;
}

/**
 * Speed along a straight line after `timeS` ≥ 0 at constant effort: v = EV − (EV − u)e^(−t/τ), m/s.
 * `startSpeedMps` may be negative (gliding backwards first) or above EV (slowing down).
 * Source: mono-exponential sprint law, Furusawa, Hill & Parkinson 1927.
 */
export const sprintSpeedAt = (
  power: SprintPower,
  timeS: number,
  startSpeedMps = 0,
  effortRatio = 1,
): number => {
  const goal = power.topSpeedMps * effortRatio;
  return goal - (goal - startSpeedMps) * Math.exp(-timeS / power.tauS);
};

/**
 * Distance after `timeS` ≥ 0 of the same law: x = EVt − (EV − u)τ(1 − e^(−t/τ)), metres. Source: as `sprintSpeedAt`.
 */
export const sprintDistanceAt = (
  power: SprintPower,
  timeS: number,
  startSpeedMps = 0,
  effortRatio = 1,
): number => {
  const goal = power.topSpeedMps * effortRatio;
  return goal * timeS + (goal - startSpeedMps) * power.tauS * Math.expm1(-timeS / power.tauS);
};

const NEWTON_STEPS = 100;
const TIME_PRECISION_S = 1e-13;

/**
 * First t ≥ 0 at which the skater has gone `distanceM` ≥ 0, seconds. None: effort 0 (or less) and the glide ends before.
 * After a start with u < 0 the skater passes x = 0 a second time; the answer is the first time at `distanceM`. Source: as
 * `sprintSpeedAt`.
 */
export const sprintTimeTo = (
  power: SprintPower,
  distanceM: number,
  startSpeedMps = 0,
  effortRatio = 1,
): number | None<'neverGetsThere'> => {
  if (distanceM <= 0) return 0;
  const goal = power.topSpeedMps * effortRatio;
  if (goal <= 0) {
    const glideM = startSpeedMps * power.tauS;
    if (goal < 0 || distanceM >= glideM) return noneBecause('neverGetsThere');
    return -power.tauS * Math.log1p(-distanceM / glideM);
  }
  // x(t) ≥ EV·t − max(EV − u, 0)·τ and ≤ max(u, EV)·t bracket the root; Newton inside, bisection when it leaves.
  let low = distanceM / Math.max(goal, startSpeedMps);
  let high = distanceM / goal + (Math.max(0, goal - startSpeedMps) * power.tauS) / goal;
  let time = (low + high) / 2;
  for (let step = 0; step < NEWTON_STEPS; step++) {
    const over = sprintDistanceAt(power, time, startSpeedMps, effortRatio) - distanceM;
    if (over > 0) high = time;
    else low = time;
    const speed = sprintSpeedAt(power, time, startSpeedMps, effortRatio);
    const next = time - over / speed;
    const inside = speed > 0 && next > low && next < high;
    const moved = inside ? next : (low + high) / 2;
    if (Math.abs(moved - time) <= TIME_PRECISION_S * (1 + time)) return moved;
    time = moved;
  }
  return time;
};
