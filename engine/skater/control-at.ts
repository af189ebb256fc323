import type { Side } from '../units/ends.ts';

/** What the race at one place needs of each contestant. */
export interface RaceEntry {
  readonly side: Side;
  readonly arrivalS: number;
  readonly spreadS: number;
  readonly controlRatePerS: number;
}

export interface Control {
  readonly us: number;
  readonly them: number;
}

/** Turns a standard deviation into the scale of a logistic. */
export const LOGISTIC_PER_SD = Math.PI / Math.sqrt(3);

const TOLERANCE = 1e-9;
const DEEPEST_HALVING = 40;

/**
 * Chance that we, and that they, get a puck that is at a place from `puckArrivalS` on, within `horizonS` seconds.
 * Spearman 2018: contestant j is there by T with f_j(T), a logistic about the arrival time, and then controls at rate λ_j:
 * dP_j/dT = (1 − ΣP) f_j λ_j. Solved exactly for the sum, 1 − ΣP = exp(−Σ λ ∫f), whose integral is closed; the share of
 * each side is one adaptive quadrature. Arrival times may be Infinity (never). Times ≥ 0, `horizonS` > 0.
 */
export const controlAt = (entries: readonly RaceEntry[], puckArrivalS: number, horizonS: number): Control => {
  const freeAt = (timeS: number): number => {
    let hazard = 0;
    for (const entry of entries) {
      hazard += entry.controlRatePerS * (presenceS(entry, timeS) - presenceS(entry, puckArrivalS));
    }
    return Math.exp(-hazard);
  };
  const rateAt = (timeS: number): number => {
    let us = 0;
    for (const entry of entries) {
      if (entry.side === 'us') us += entry.controlRatePerS * presentAt(entry, timeS);
    }
    return us === 0 ? 0 : us * freeAt(timeS);
  };
  const endS = puckArrivalS + horizonS;
  let us = 0;
  // Pieces of a quarter second: no arrival is sharper than that, and each is then halved as far as it needs.
  const pieces = Math.max(1, Math.ceil(horizonS / 0.25));
  for (let piece = 0; piece < pieces; piece++) {
    const fromS = puckArrivalS + (horizonS * piece) / pieces;
    const toS = puckArrivalS + (horizonS * (piece + 1)) / pieces;
    us += integral(rateAt, fromS, toS, TOLERANCE / pieces, DEEPEST_HALVING);
    if (freeAt(toS) < TOLERANCE / 10) break;
  }
  const taken = 1 - freeAt(endS);
  return { us: Math.min(us, taken), them: Math.max(0, taken - us) };
};

/** Chance of being there by T. */
const presentAt = (entry: RaceEntry, timeS: number): number =>
  1 / (1 + Math.exp((-LOGISTIC_PER_SD * (timeS - entry.arrivalS)) / entry.spreadS));

/** ∫ of `presentAt` up to T: the expected time of having been there, s. */
const presenceS = (entry: RaceEntry, timeS: number): number => {
  const x = (LOGISTIC_PER_SD * (timeS - entry.arrivalS)) / entry.spreadS;
  const soft = x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x));
  return (entry.spreadS / LOGISTIC_PER_SD) * soft;
};

/** Gauss–Legendre with five points, halved until two halves agree with the whole. */
const integral = (
  f: (at: number) => number,
  from: number,
  to: number,
  tolerance: number,
  depth: number,
  whole = gauss5(f, from, to),
): number => {
  const middle = (from + to) / 2;
  const left = gauss5(f, from, middle);
  const right = gauss5(f, middle, to);
  if (depth === 0 || Math.abs(left + right - whole) < tolerance) return left + right;
  return (
    integral(f, from, middle, tolerance / 2, depth - 1, left) +
    integral(f, middle, to, tolerance / 2, depth - 1, right)
  );
};

const GAUSS5 = [
  [0, 128 / 225],
  [Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, (322 + 13 * Math.sqrt(70)) / 900],
  [-Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, (322 + 13 * Math.sqrt(70)) / 900],
  [Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3, (322 - 13 * Math.sqrt(70)) / 900],
  [-Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3, (322 - 13 * Math.sqrt(70)) / 900],
] as const;

const gauss5 = (f: (at: number) => number, from: number, to: number): number => {
  const half = (to - from) / 2;
  const middle = (from + to) / 2;
  let sum = 0;
  for (const [node, weight] of GAUSS5) sum += weight * f(middle + half * node);
  return half * sum;
};
