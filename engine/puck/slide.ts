import type { PuckModel } from './puck-model.ts';

/**
 * A puck that slides straight: dv/dt = −(a + k v²), a = μg ≥ 0 (m/s²), k = drag (1/m). Every closed form below is
 * written so that it keeps its digits when k, a or both go to 0 (the textbook forms divide by them). k may also be
 * negative, which a spinning puck on a corner needs; then a stop may lie at infinity.
 * Source: separation of variables; checked against numerical integration in checks/data/puck.json.
 */
export interface Slowing {
  readonly constantMps2: number;
  readonly dragPerM: number;
}

/** What slows a puck of this model on the ice: μg (m/s²) and k (1/m), as `dv/dt = −(μg + k v²)`. */
export const slowingOf = (model: PuckModel): Slowing => ({
  constantMps2: model.frictionRatio * model.gravityMps2,
  dragPerM: model.dragPerM,
});

/**
 * Speed (m/s) after `distanceM` ≥ 0, NaN when the puck has stopped before. Source: closed form of dv/dt = −(μg + kv²),
 * checks/data/puck.json.
 */
export const slideSpeedAtDistance = (slowing: Slowing, startMps: number, distanceM: number): number => {
  const { constantMps2: a, dragPerM: k } = slowing;
  const squared =
    startMps * startMps * Math.exp(-2 * k * distanceM) - 2 * a * distanceM * decayMean(2 * k * distanceM);
  return squared >= 0 ? Math.sqrt(squared) : Number.NaN;
};

/** Time (s) to slide `distanceM` ≥ 0, NaN when the puck stops before. Source: as `slideSpeedAtDistance`. */
export const slideTimeAtDistance = (slowing: Slowing, startMps: number, distanceM: number): number => {
  const { constantMps2: a, dragPerM: k } = slowing;
  const speed = slideSpeedAtDistance(slowing, startMps, distanceM);
  if (!(startMps > 0)) return distanceM === 0 ? 0 : Number.NaN;
  const both = a + k * startMps * speed;
  if (both === 0) return distanceM / startMps;
  const lost =
    (2 * distanceM * decayMean(2 * k * distanceM) * (k * startMps * startMps + a)) / (startMps + speed);
  const y = lost / both;
  return y * atanOver(a * k * y * y);
};

/** Speed (m/s) after `timeS` ≥ 0; 0 once it has stopped. Source: as `slideSpeedAtDistance`. */
export const slideSpeedAtTime = (slowing: Slowing, startMps: number, timeS: number): number => {
  const { constantMps2: a, dragPerM: k } = slowing;
  const z = a * k * timeS * timeS;
  if (z >= QUARTER_TURN_SQ) return 0;
  const t = timeS * tanOver(z);
  return Math.max(0, (startMps - a * t) / (1 + k * startMps * t));
};

/** Distance (m) after `timeS` ≥ 0; the stopping distance once it has stopped. Source: as `slideSpeedAtDistance`. */
export const slideDistanceAtTime = (slowing: Slowing, startMps: number, timeS: number): number => {
  const { constantMps2: a, dragPerM: k } = slowing;
  const z = a * k * timeS * timeS;
  if (z >= QUARTER_TURN_SQ) return slideStopDistance(slowing, startMps);
  const t = timeS * tanOver(z);
  const speed = (startMps - a * t) / (1 + k * startMps * t);
  if (speed <= 0) return slideStopDistance(slowing, startMps);
  const rest = a + k * speed * speed;
  if (rest === 0) return startMps * timeS;
  const gained = ((startMps + speed) * t * (a + k * startMps * startMps)) / (1 + k * startMps * t);
  return (gained / (2 * rest)) * log1pOver((k * gained) / rest);
};

/** Distance (m) to the stop; Infinity when nothing stops it. `startMps` ≥ 0. Source: as `slideSpeedAtDistance`. */
export const slideStopDistance = (slowing: Slowing, startMps: number): number => {
  const { constantMps2: a, dragPerM: k } = slowing;
  if (startMps === 0) return 0;
  if (a === 0) return Number.POSITIVE_INFINITY;
  const ratio = (k * startMps * startMps) / a;
  if (ratio <= -1) return Number.POSITIVE_INFINITY;
  return ((startMps * startMps) / (2 * a)) * log1pOver(ratio);
};

/** Time (s) to the stop; Infinity when nothing stops it. `startMps` ≥ 0. Source: as `slideSpeedAtDistance`. */
export const slideStopTime = (slowing: Slowing, startMps: number): number => {
  const { constantMps2: a, dragPerM: k } = slowing;
  if (startMps === 0) return 0;
  if (a === 0) return Number.POSITIVE_INFINITY;
  const y = startMps / a;
  return (k * startMps * startMps) / a <= -1 ? Number.POSITIVE_INFINITY : y * atanOver(a * k * y * y);
};

const QUARTER_TURN_SQ = (Math.PI / 2) ** 2;

/** (1 − e^(−x))/x, 1 at 0. */
const decayMean = (x: number): number => (x === 0 ? 1 : -Math.expm1(-x) / x);

/** ln(1 + x)/x, 1 at 0. */
const log1pOver = (x: number): number => (x === 0 ? 1 : Math.log1p(x) / x);

/** tan(√z)/√z, continued to z < 0 as tanh; a series near 0, where the root would lose digits. */
const tanOver = (z: number): number => {
  if (Math.abs(z) < 1e-4) return 1 + z / 3 + (2 * z * z) / 15 + (17 * z * z * z) / 315;
  const x = Math.sqrt(Math.abs(z));
  return z > 0 ? Math.tan(x) / x : Math.tanh(x) / x;
};

/** atan(√z)/√z, continued to z < 0 as atanh. */
const atanOver = (z: number): number => {
  if (Math.abs(z) < 1e-4) return 1 - z / 3 + (z * z) / 5 - (z * z * z) / 7;
  const x = Math.sqrt(Math.abs(z));
  return z > 0 ? Math.atan(x) / x : Math.atanh(x) / x;
};
