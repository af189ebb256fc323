import { type None, noneBecause } from '../units/none.ts';

export interface MedianInterval {
  readonly median: number;
  readonly low: number;
  readonly high: number;
  /** What the interval really covers, at least what was asked for: it can only end at values that were seen. */
  readonly confidence: number;
  readonly count: number;
}

/**
 * Median of a sample, in the unit of its values, with the interval between two of its own values that holds the true
 * median at least as often as asked, whatever the distribution: the k-th smallest to the k-th largest, where fewer than
 * k of n fair coins fall heads with at most (1 − confidence)/2. `values` finite, any order; `confidence` between 0 and
 * 1, throws otherwise. None: no values, or too few for the confidence (6 are needed for 95 %).
 * Source: David & Nagaraja, Order Statistics (3rd ed.), §7.1.
 */
export const medianInterval = (
  values: readonly number[],
  confidence = 0.95,
): MedianInterval | None<'noData' | 'tooFew'> => {
  if (!(confidence > 0 && confidence < 1))
    throw new RangeError(`confidence must be between 0 and 1, got ${confidence}`);
  const count = values.length;
  if (count === 0) return noneBecause('noData');
  const sorted = [...values].sort((a, b) => a - b);
  let outside = 0;
  let rank = 0;
  for (let heads = 0, share = 0.5 ** count; outside + share <= (1 - confidence) / 2; heads += 1) {
    outside += share;
    rank = heads + 1;
    share *= (count - heads) / (heads + 1);
  }
  if (rank === 0) return noneBecause('tooFew');
  return {
    median: medianOf(sorted),
    low: sorted[rank - 1]!,
    high: sorted[count - rank]!,
    confidence: 1 - 2 * outside,
    count,
  };
};

/** Median of sorted values, of which there is at least one: the middle one, or halfway between the middle two. */
const medianOf = (sorted: readonly number[]): number => {
  const half = (sorted.length - 1) / 2;
  return (sorted[Math.floor(half)]! + sorted[Math.ceil(half)]!) / 2;
};
