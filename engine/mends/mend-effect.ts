import type { RateInterval } from '../statistics/rates.ts';
import { MEND_CHANGES_DRILL } from './mend-rows.ts';

/** What a mend does to what is wanted of the drill: its share of reps (0 to 1, with its 95 % interval) before and after; null when no rep comes to it. */
export interface MendEffect {
  readonly before: RateInterval | null;
  readonly after: RateInterval | null;
}

/**
 * Whether a mend takes away more than what was amiss: the share moves by more than `MEND_CHANGES_DRILL`, or the question comes in no rep
 * any more, or only now does. Our own judgement.
 */
export const changesDrill = ({ before, after }: MendEffect): boolean => {
  if (before === null || after === null) return before !== after;
  return Math.abs(after.rateRatio - before.rateRatio) > MEND_CHANGES_DRILL.value;
};

/** Whether there is anything to ask: one that changes only how reps follow each other leaves every rep as it is. */
export const changesReps = (writes: readonly { readonly path: readonly string[] }[]): boolean =>
  writes.some(({ path: [part] }) => part === 'spots' || part === 'pucks' || part === 'gear');
