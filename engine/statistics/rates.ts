import { type None, noneBecause } from '../units/none.ts';
import { normalQuantile } from './normal.ts';

/** A rate (0–1) with its interval. */
export interface RateInterval {
  readonly rateRatio: number;
  readonly lowerRatio: number;
  readonly upperRatio: number;
}

export interface RateDifference {
  readonly differenceRatio: number;
  readonly lowerRatio: number;
  readonly upperRatio: number;
}

/** How often something was done: `successCount` of `trialCount`, whole numbers, 0 ≤ successes ≤ trials. */
export interface Tally {
  readonly successCount: number;
  readonly trialCount: number;
}

export const DEFAULT_CONFIDENCE = 0.95;

/**
 * Wilson's interval of a rate, without continuity correction; `confidence` two-sided, between 0 and 1. None without trials.
 * Source: Wilson 1927, J Am Stat Assoc 22:209.
 */
export const wilsonInterval = (
  { successCount, trialCount }: Tally,
  confidence = DEFAULT_CONFIDENCE,
): RateInterval | None<'noTrials'> => {
  if (trialCount <= 0) return noneBecause('noTrials');
  const z = normalQuantile((1 + confidence) / 2);
  const rate = successCount / trialCount;
  const sq = (z * z) / trialCount;
  const middle = rate + sq / 2;
  const half = z * Math.sqrt((rate * (1 - rate)) / trialCount + sq / (4 * trialCount));
  return {
    rateRatio: rate,
    lowerRatio: successCount === 0 ? 0 : (middle - half) / (1 + sq),
    upperRatio: successCount === trialCount ? 1 : (middle + half) / (1 + sq),
  };
};

/**
 * First rate minus second, with Newcombe's hybrid score interval (his method 10); `confidence` two-sided,
 * between 0 and 1. None when either has no trials.
 * Source: Newcombe 1998, Stat Med 17:873.
 */
export const newcombeDifference = (
  first: Tally,
  second: Tally,
  confidence = DEFAULT_CONFIDENCE,
): RateDifference | None<'noTrials'> => {
  const one = wilsonInterval(first, confidence);
  const two = wilsonInterval(second, confidence);
  if ('kind' in one || 'kind' in two) return noneBecause('noTrials');
  const difference = one.rateRatio - two.rateRatio;
  return {
    differenceRatio: difference,
    lowerRatio: difference - Math.hypot(one.rateRatio - one.lowerRatio, two.upperRatio - two.rateRatio),
    upperRatio: difference + Math.hypot(one.upperRatio - one.rateRatio, two.rateRatio - two.lowerRatio),
  };
};
