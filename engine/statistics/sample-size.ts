import { type None, noneBecause } from '../units/none.ts';
import { normalQuantile } from './normal.ts';

export interface SampleSizeQuestion {
  readonly rate1: number;
  readonly rate2: number;
  /** Wanted chance to see the difference, 0–1. */
  readonly power: number;
  /** Two-sided chance of a false alarm, 0–1. */
  readonly alphaTwoSided: number;
}

/**
 * Chances needed in each of two equal groups to tell two rates (0–1) apart; not rounded. None: the rates are equal.
 * Source: normal approximation with pooled variance under no difference, Fleiss 1981.
 */
export const sampleSizePerGroup = (question: SampleSizeQuestion): number | None<'sameRate'> => {
  const { rate1, rate2, power, alphaTwoSided } = question;
  if (rate1 === rate2) return noneBecause('sameRate');
  const zAlpha = normalQuantile(1 - alphaTwoSided / 2);
  const zBeta = normalQuantile(power);
  const pooled = (rate1 + rate2) / 2;
  const spread = rate1 * (1 - rate1) + rate2 * (1 - rate2);
  const top = zAlpha * Math.sqrt(2 * pooled * (1 - pooled)) + zBeta * Math.sqrt(spread);
  return (top / (rate1 - rate2)) ** 2;
};
