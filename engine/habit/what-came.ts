import { type MedianInterval, medianInterval } from '../statistics/median.ts';
import { type RateInterval, wilsonInterval } from '../statistics/rates.ts';
import { isNone } from '../units/none.ts';

/** What was seen after a moment, at its time in the film. */
export interface SeenStep<Step extends string> {
  readonly step: Step;
  readonly timeS: number;
}

/** How often one thing followed another, and how long it took. */
export interface WhatCame {
  /** Moments in which the first was seen. */
  readonly startedCount: number;
  /** Of those, in how many the second came after it. */
  readonly cameCount: number;
  /** Null while nothing has started. */
  readonly share: RateInterval | null;
  /** Seconds from the first to the second, the shortest first; only of those where it came. */
  readonly secondsS: readonly number[];
  /** Null below six. */
  readonly median: MedianInterval | null;
}

/**
 * What came of moments: in how many, and after how many seconds, `second` was seen after the first `first` of each.
 * `moments`: for each its steps with times in seconds of one film clock, in any order. A `second` at the same time or
 * before counts as not come. With no moment in which `first` was seen, counts are 0 and `share` and `median` null.
 * Shares with Wilson's interval, the median with that of order statistics.
 * Source: Wilson 1927, J Am Stat Assoc 22:209; David & Nagaraja, Order Statistics (3rd ed.), §7.1.
 */
export const whatCameOf = <Step extends string>(
  moments: readonly (readonly SeenStep<Step>[])[],
  first: Step,
  second: Step,
): WhatCame => {
  let startedCount = 0;
  const secondsS: number[] = [];
  for (const steps of moments) {
    const startS = earliestS(steps, first, Number.NEGATIVE_INFINITY);
    if (startS === undefined) continue;
    startedCount += 1;
    const endS = earliestS(steps, second, startS);
    if (endS !== undefined) secondsS.push(endS - startS);
  }
  secondsS.sort((a, b) => a - b);
  const median = medianInterval(secondsS);
  const share = wilsonInterval({ successCount: secondsS.length, trialCount: startedCount });
  return {
    startedCount,
    cameCount: secondsS.length,
    share: isNone(share) ? null : share,
    secondsS,
    median: isNone(median) ? null : median,
  };
};

const earliestS = <Step extends string>(
  steps: readonly SeenStep<Step>[],
  wanted: Step,
  afterS: number,
): number | undefined => {
  let found: number | undefined;
  for (const { step, timeS } of steps) {
    if (step === wanted && timeS > afterS && (found === undefined || timeS < found)) found = timeS;
  }
  return found;
};
