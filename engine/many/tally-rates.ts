import { type RateInterval, wilsonInterval } from '../statistics/rates.ts';
import type { ContestTally, OutcomeTally, PassTally } from './many-tally.ts';
import type { WhereWhen } from './where-when.ts';

/**
 * How often a wanted outcome came, of those of `repCount` ≥ 0 reps that came to where it is asked, with its 95 % interval (Wilson);
 * undefined without such reps.
 */
export const outcomeRate = (tally: OutcomeTally, repCount: number): RateInterval | undefined =>
  rateOf(tally.yes, repCount - tally.unaskedCount);

/** Of the passes that were made, those received by whom they were meant for; undefined when none was made. */
export const passRate = (tally: PassTally): RateInterval | undefined =>
  rateOf(tally.received, tally.madeCount);

/** Of the chases or steals that started, those that caught or won; undefined when none started. */
export const contestRate = (tally: ContestTally): RateInterval | undefined =>
  rateOf(tally.won, tally.startedCount);

const rateOf = (of: WhereWhen, trialCount: number): RateInterval | undefined => {
  const interval = wilsonInterval({ successCount: of.count, trialCount });
  return 'kind' in interval ? undefined : interval;
};
