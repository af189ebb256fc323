import type { None } from '../units/none.ts';
import { noneBecause } from '../units/none.ts';
import type { Row } from '../units/provenance.ts';
import type { HabitCounts } from './habit-change.ts';

export const HALF_TIME: Row = {
  name: 'days after which a habit wants half of its practice again',
  value: 14,
  unit: 'd',
  range: [5, 40],
  source: 'our choice',
  status: 'estimate',
};

export interface HabitNeed {
  /** shortfall × cost × time: goals a chance, ordered by it and not more. */
  readonly need: number;
  /** Wanted rate less the rate done, 0–1; 0 when it is done as often as wanted. */
  readonly shortfallRatio: number;
  /** Goals a miss is thought to cost: the coach's estimate. */
  readonly costGoals: number;
  /** 0 on the day it was practised, ½ after `HALF_TIME`, towards 1; 1 when it never was. */
  readonly timeRatio: number;
}

/**
 * How much a habit wants practice: shortfall × cost × time since it was practised, each term given for "why".
 * `daysSincePractised` is null when it never was. None when there was no chance to see it. Our own measure: it orders
 * habits, it is no physical quantity.
 */
export const habitNeed = (habit: {
  readonly seen: HabitCounts;
  readonly wantedRatio: number;
  readonly costGoals: number;
  readonly daysSincePractised: number | null;
}): HabitNeed | None<'noChances'> => {
  const { seen, wantedRatio, costGoals, daysSincePractised } = habit;
  if (seen.chanceCount <= 0) return noneBecause('noChances');
  const shortfallRatio = Math.max(0, wantedRatio - seen.doneCount / seen.chanceCount);
  const timeRatio =
    daysSincePractised === null ? 1 : 1 - 2 ** (-Math.max(0, daysSincePractised) / HALF_TIME.value);
  return { need: shortfallRatio * costGoals * timeRatio, shortfallRatio, costGoals, timeRatio };
};
