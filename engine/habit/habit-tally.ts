import { type RateInterval, wilsonInterval } from '../statistics/rates.ts';
import type { None } from '../units/none.ts';

/** What was seen of a habit. Those that could not be seen are no chances: they say nothing of how often it is done. */
export interface HabitTally {
  readonly doneCount: number;
  readonly missedCount: number;
  readonly cannotSeeCount: number;
  /** Done and missed. */
  readonly chanceCount: number;
  /** Done of the chances with Wilson's 95 % interval, 0–1; none without chances. */
  readonly rate: RateInterval | None<'noTrials'>;
}

/** Counts the moments of one habit. By definition: done and missed count as chances, not seen does not. */
export const habitTally = (
  moments: readonly { readonly verdict: 'done' | 'missed' | 'cannotSee' }[],
): HabitTally => {
  const countOf = (verdict: 'done' | 'missed' | 'cannotSee') =>
    moments.filter(moment => moment.verdict === verdict).length;
  const doneCount = countOf('done');
  const missedCount = countOf('missed');
  const chanceCount = doneCount + missedCount;
  return {
    doneCount,
    missedCount,
    cannotSeeCount: countOf('cannotSee'),
    chanceCount,
    rate: wilsonInterval({ successCount: doneCount, trialCount: chanceCount }),
  };
};
