import { sampleSizePerGroup } from '../statistics/sample-size.ts';
import { type None, noneBecause } from '../units/none.ts';
import type { Row } from '../units/provenance.ts';

export const POWER: Row = {
  name: 'chance to see a change that is there',
  value: 0.8,
  unit: '',
  range: [0.7, 0.95],
  source: 'convention of study planning (Cohen 1988, from memory)',
  status: 'sourced',
};

/** Chances on both sides, and what was done of all of them (0–1). */
export interface ChancesSeen {
  readonly beforeCount: number;
  readonly afterCount: number;
  readonly overallRatio: number;
}

/**
 * Whether these chances would have shown a change of `changeRatio` (0–1) with the chance `POWER`. Counts ≥ 0. Source: the
 * sample size of Fleiss 1981, turned round.
 */
export const wouldShow = (seen: ChancesSeen, changeRatio: number, alpha: number): boolean =>
  evenCountOf(seen) >= neededPerSide(seen.overallRatio, changeRatio, alpha);

/**
 * The smallest change (0–1) that these chances would have shown, to 0.0003; none when they would not even have shown
 * all against none. Source: as `wouldShow`, by bisection.
 */
export const smallestShown = (seen: ChancesSeen, alpha: number): number | None<'tooFewForAny'> => {
  let [low, high] = [0, 1];
  if (!wouldShow(seen, high, alpha)) return noneBecause('tooFewForAny');
  for (let step = 0; step < 12; step++) {
    const middle = (low + high) / 2;
    if (wouldShow(seen, middle, alpha)) high = middle;
    else low = middle;
  }
  return high;
};

/**
 * How many more chances after it would show a change of `changeRatio`; 0 when there are enough, null when no number
 * of them would, because there were too few before. Counts ≥ 0, `changeRatio` between 0 and 1. Source: as `wouldShow`.
 */
export const moreChancesToShow = (seen: ChancesSeen, changeRatio: number, alpha: number): number | null => {
  const needed = neededPerSide(seen.overallRatio, changeRatio, alpha);
  if (evenCountOf(seen) >= needed) return 0;
  const share = 2 / needed - 1 / seen.beforeCount;
  return share > 0 ? Math.ceil(1 / share - seen.afterCount) : null;
};

/** Two unequal groups tell as much as two of their harmonic mean. */
const evenCountOf = ({ beforeCount, afterCount }: ChancesSeen): number =>
  beforeCount > 0 && afterCount > 0 ? 2 / (1 / beforeCount + 1 / afterCount) : 0;

/** Per side, for two rates `changeRatio` apart about the overall one, moved into 0–1 where they reach over it. */
const neededPerSide = (overallRatio: number, changeRatio: number, alpha: number): number => {
  const rate1 = Math.min(Math.max(0, overallRatio - changeRatio / 2), 1 - changeRatio);
  const needed = sampleSizePerGroup({
    rate1,
    rate2: rate1 + changeRatio,
    power: POWER.value,
    alphaTwoSided: alpha,
  });
  return typeof needed === 'number' ? needed : Number.POSITIVE_INFINITY;
};
