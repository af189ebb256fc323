import { newcombeDifference, type RateDifference } from '../statistics/rates.ts';
import { type None, noneBecause } from '../units/none.ts';
import type { Row } from '../units/provenance.ts';
import { moreChancesToShow, smallestShown, wouldShow } from './chances-needed.ts';

export const CHANGE_WORDS = ['moved up', 'moved down', 'no sign yet', 'cannot tell'] as const;
export type ChangeWord = (typeof CHANGE_WORDS)[number];

export type ChangeReason = 'leavesZeroOut' | 'chancesEnough' | 'tooFewChances' | 'noChances' | 'judgesDiffer';

export interface HabitChange {
  readonly word: ChangeWord;
  readonly why: ChangeReason;
  /** After minus before, −1 to 1, with Newcombe's interval at `confidence`; none when one side has no chances. */
  readonly change: RateDifference | None<'noTrials'>;
  readonly confidence: number;
  /** The smallest change that these chances would have shown in 8 of 10 such seasons; none when not even 0 against 1. */
  readonly smallestShownRatio: number | None<'tooFewForAny'>;
  /** The change that is looked for, and how many more chances would show it; null: too few before, none would. */
  readonly lookedForRatio: number;
  readonly moreChances: number | null;
}

export const CHANGE_TO_SEE: Row = {
  name: 'change of a rate that chances must be enough for',
  value: 0.2,
  unit: '',
  range: [0.1, 0.3],
  source: 'our choice: from 50 to 70 % takes about 94 chances a side',
  status: 'estimate',
};

export const LEAST_KAPPA: Row = {
  name: 'agreement of two judges below which nothing is told',
  value: 0.4,
  unit: '',
  range: [0.2, 0.6],
  source: 'Landis & Koch 1977: 0.41 and up is moderate (from memory)',
  status: 'sourced',
};

export interface HabitCounts {
  readonly doneCount: number;
  readonly chanceCount: number;
}

/**
 * Whether a habit moved. `moved up` or `moved down`: the interval of the change leaves zero out. `no sign yet`: it
 * does not, though a change of `lookedForRatio` would have been seen with 80 % power. `cannot tell`: too few chances,
 * or two judges agree too little (`judgesKappa`). It shows that a rate moved, not why.
 *
 * `looks` (≥ 1) is how often the change has been, or will be, looked at with the same before: once a game after it,
 * in a ledger that is open all season. Each look is a chance to be fooled, so the confidence rises with them, that
 * "moved" is said of a habit that did not move in at most 5 of 100 seasons and not in 5 of 100 looks. Source: Newcombe
 * 1998, Stat Med 17:873; the confidence of repeated looks as `alphaOfLooks` below says.
 */
export const habitChange = (
  before: HabitCounts,
  after: HabitCounts,
  options: { readonly looks?: number; readonly lookedForRatio?: number; readonly judgesKappa?: number } = {},
): HabitChange => {
  const { looks = 1, lookedForRatio = CHANGE_TO_SEE.value, judgesKappa } = options;
  const alpha = alphaOfLooks(looks);
  const change = newcombeDifference(
    { successCount: after.doneCount, trialCount: after.chanceCount },
    { successCount: before.doneCount, trialCount: before.chanceCount },
    1 - alpha,
  );
  const base = { change, confidence: 1 - alpha, lookedForRatio };
  if ('kind' in change) {
    return {
      ...base,
      word: 'cannot tell',
      why: 'noChances',
      smallestShownRatio: noneBecause('tooFewForAny'),
      moreChances: null,
    };
  }
  const seen = {
    beforeCount: before.chanceCount,
    afterCount: after.chanceCount,
    overallRatio: (before.doneCount + after.doneCount) / (before.chanceCount + after.chanceCount),
  };
  const rest = {
    ...base,
    smallestShownRatio: smallestShown(seen, alpha),
    moreChances: moreChancesToShow(seen, lookedForRatio, alpha),
  };
  if (judgesKappa !== undefined && judgesKappa < LEAST_KAPPA.value) {
    return { ...rest, word: 'cannot tell', why: 'judgesDiffer' };
  }
  if (change.lowerRatio > 0) return { ...rest, word: 'moved up', why: 'leavesZeroOut' };
  if (change.upperRatio < 0) return { ...rest, word: 'moved down', why: 'leavesZeroOut' };
  return wouldShow(seen, lookedForRatio, alpha)
    ? { ...rest, word: 'no sign yet', why: 'chancesEnough' }
    : { ...rest, word: 'cannot tell', why: 'tooFewChances' };
};

/**
 * Two-sided level of each look, so that all of them together are fooled in 5 %. Source: Pocock 1977, Biometrika
 * 64:191, for equal steps (from memory; a test plays seasons against it). Over 20 looks: in proportion. One look gets
 * 0.045: summed exactly over all outcomes, Newcombe's interval at 95 % is left in 5.0 to 5.5 % at such counts.
 */
const LEVELS: readonly (readonly [looks: number, alpha: number])[] = [
  [1, 0.045],
  [2, 0.0294],
  [3, 0.0221],
  [4, 0.0182],
  [5, 0.0158],
  [6, 0.0142],
  [7, 0.013],
  [8, 0.012],
  [9, 0.0112],
  [10, 0.0106],
  [15, 0.0086],
  [20, 0.0075],
];

const alphaOfLooks = (looks: number): number => {
  if (!(looks >= 1)) throw new RangeError(`a change is looked at once or more, not ${looks} times`);
  const row = LEVELS.find(([most]) => looks <= most);
  return row === undefined ? (0.0075 * 20) / looks : row[1];
};
