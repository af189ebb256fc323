import { type None, noneBecause } from '../units/none.ts';
import { angleFactor, type ContestRates, speedFactor } from './contest.ts';

/** One contest a team has tagged: how long the stick was on the carrier, from where, how fast past, and whether it won the puck. */
export interface TaggedContest {
  /** Seconds within reach, > 0; to the moment it was won when it was. */
  readonly inReachS: number;
  /** Where the opponent was as the carrier faces, 0 before, ±π behind. */
  readonly angleRad: number;
  /** Relative speed, m/s ≥ 0. */
  readonly relativeMps: number;
  readonly won: boolean;
}

/** A fitted figure with its standard error; `ratePerS` in 1/s, the others ratios. */
export interface FittedRate {
  readonly value: number;
  readonly lower: number;
  readonly upper: number;
}

export interface FittedContest {
  readonly ratePerS: FittedRate;
  readonly sideRatio: FittedRate;
  readonly behindRatio: FittedRate;
  readonly logLikelihood: number;
  readonly contestCount: number;
  readonly wonCount: number;
}

/** Fewer won contests than this say nothing about three figures. */
const LEAST_WON = 10;
const NEWTON_STEPS = 100;
const NORMAL_95 = 1.959963984540054;

/**
 * Rate, side and behind factor of the contest hazard from a team's own tagged contests, by greatest likelihood, with 95 %
 * intervals (metres, seconds, radians). Each contest is a wait of `inReachS` at the hazard rate × speed × angle, ended by the win or
 * not: log L = Σ won·ln h − h·t, a log-linear model of exposure, concave in ln rate, ln side, ln behind; solved by Newton steps, with the
 * inverse information as covariance (exponential regression with censoring: Cox & Oakes 1984, Analysis of Survival Data,
 * ch. 6). `tooFewWon`: fewer than ten won. `oneSided`: contests from too few sides to tell the factors apart.
 */
export const fitContest = (
  contests: readonly TaggedContest[],
): FittedContest | None<'tooFewWon' | 'oneSided' | 'notANumber'> => {
  const isNumber = contests.every(
    ({ inReachS, angleRad, relativeMps }) =>
      inReachS > 0 && Number.isFinite(inReachS + angleRad + relativeMps),
  );
  if (!isNumber) return noneBecause('notANumber');
  const wonCount = contests.filter(({ won }) => won).length;
  if (wonCount < LEAST_WON) return noneBecause('tooFewWon');
  const waits = contests.map(waitOf);
  const exposureS = waits.reduce((sum, wait) => sum + wait.exposureS, 0);
  let at: Three = [Math.log(wonCount / exposureS), 0, 0];
  for (let step = 0; step < NEWTON_STEPS; step++) {
    const { slope, information } = slopeAt(waits, at);
    const move = solved(information, slope);
    if (!move) return noneBecause('oneSided');
    // Half steps until the likelihood grows: the function is concave, so one of them does.
    let part = 1;
    const before = logLikelihoodAt(waits, at);
    let next = moved(at, move, part);
    while (part > 1e-6 && !(logLikelihoodAt(waits, next) >= before)) {
      part /= 2;
      next = moved(at, move, part);
    }
    at = next;
    if (Math.max(...move.map(Math.abs)) * part < 1e-10) break;
  }
  const { information } = slopeAt(waits, at);
  const spread = ([0, 1, 2] as const).map(i => {
    const column = solved(information, [i === 0 ? 1 : 0, i === 1 ? 1 : 0, i === 2 ? 1 : 0]);
    return column ? Math.sqrt(column[i]) : Number.NaN;
  });
  if (spread.some(sd => !(sd < WIDEST_LN))) return noneBecause('oneSided');
  const fitted = (i: 0 | 1 | 2): FittedRate => ({
    value: Math.exp(at[i]),
    lower: Math.exp(at[i] - NORMAL_95 * spread[i]!),
    upper: Math.exp(at[i] + NORMAL_95 * spread[i]!),
  });
  return {
    ratePerS: fitted(0),
    sideRatio: fitted(1),
    behindRatio: fitted(2),
    logLikelihood: logLikelihoodAt(waits, at),
    contestCount: contests.length,
    wonCount,
  };
};

/** A figure known to no better than a factor of e³ either way is not known. */
const WIDEST_LN = 3;

/** The hazard of a tagged contest per second, as the run has it for a stick that is fully on the carrier. */
export const taggedPerS = ({ angleRad, relativeMps }: TaggedContest, rates: ContestRates): number =>
  rates.ratePerS * speedFactor(relativeMps) * angleFactor(Math.cos(angleRad), rates);

type Three = readonly [number, number, number];

/** ln h = x · (ln rate, ln side, ln behind) + ln speed factor. */
interface Wait {
  readonly x: Three;
  /** Time in reach by the speed factor, seconds. */
  readonly exposureS: number;
  readonly won: boolean;
}

const waitOf = ({ inReachS, angleRad, relativeMps, won }: TaggedContest): Wait => {
  const cos = Math.cos(angleRad);
  return {
    x: [1, 1 - Math.abs(cos), Math.max(0, -cos)],
    exposureS: inReachS * speedFactor(relativeMps),
    won,
  };
};

const lnRate = (x: Three, at: Three): number => x[0] * at[0] + x[1] * at[1] + x[2] * at[2];

const logLikelihoodAt = (waits: readonly Wait[], at: Three): number =>
  waits.reduce((sum, { x, exposureS, won }) => {
    const ln = lnRate(x, at);
    return sum + (won ? ln + Math.log(exposureS) : 0) - Math.exp(ln) * exposureS;
  }, 0);

const slopeAt = (waits: readonly Wait[], at: Three) => {
  const slope: [number, number, number] = [0, 0, 0];
  const information = [
    [0, 0, 0],
    [0, 0, 0],
    [0, 0, 0],
  ];
  for (const { x, exposureS, won } of waits) {
    const expected = Math.exp(lnRate(x, at)) * exposureS;
    for (let i = 0; i < 3; i++) {
      slope[i as 0 | 1 | 2] += x[i]! * ((won ? 1 : 0) - expected);
      for (let j = 0; j < 3; j++) information[i]![j]! += x[i]! * x[j]! * expected;
    }
  }
  return { slope: slope as Three, information };
};

const moved = (at: Three, by: Three, part: number): Three => [
  at[0] + part * by[0],
  at[1] + part * by[1],
  at[2] + part * by[2],
];

/** Solves a symmetric system of three by Cramer's rule; null when its determinant vanishes beside its entries. */
const solved = (m: readonly (readonly number[])[], b: Three): Three | null => {
  const [[p, q, r], [, s, t], [, , u]] = m as [
    [number, number, number],
    [number, number, number],
    [number, number, number],
  ];
  const determinant = p * (s * u - t * t) - q * (q * u - t * r) + r * (q * t - s * r);
  if (!(determinant > 1e-9 * p * s * u)) return null;
  const [x, y, z] = b;
  return [
    (x * (s * u - t * t) - q * (y * u - t * z) + r * (y * t - s * z)) / determinant,
    (p * (y * u - t * z) - x * (q * u - t * r) + r * (q * z - y * r)) / determinant,
    (p * (s * z - y * t) - q * (q * z - y * r) + x * (q * t - s * r)) / determinant,
  ];
};
