import type { HabitChange } from '@icewright/engine';
import { pointsSaid } from '../parts/figures.ts';
import type { LedgerLine } from './ledger-lines.ts';

/** What is said of a change, in three lines: the word, the figure with its interval, and what it would take to know more. */
export interface LineWords {
  readonly word: HabitChange['word'] | 'in no practice yet';
  readonly figure: string | null;
  readonly more: string;
}

export function wordsOf({ change, before, after }: LedgerLine): LineWords {
  if (change === null)
    return { word: 'in no practice yet', figure: null, more: 'there is no before and after' };
  if ('kind' in change.change) {
    const isAfterMissing = after.chanceCount === 0;
    return {
      word: 'cannot tell',
      figure: null,
      more: isAfterMissing
        ? `${before.chanceCount === 0 ? 'no chance' : 'no chance since'} judged yet`
        : 'no chance judged before its first practice',
    };
  }
  const { differenceRatio, lowerRatio, upperRatio } = change.change;
  return {
    word: change.word,
    figure: `${pointsSaid(differenceRatio)} (${pointsSaid(lowerRatio)} to ${pointsSaid(upperRatio)})`,
    more: moreOf(change),
  };
}

function moreOf(change: HabitChange): string {
  const lookedFor = pointsSaid(change.lookedForRatio);
  switch (change.why) {
    case 'leavesZeroOut':
      return change.word === 'moved up' ? 'keep it: a little each week' : 'worth another look on film';
    case 'chancesEnough':
      return `${lookedFor} would have shown`;
    case 'judgesDiffer':
      return 'the judges differ';
    default:
      return change.moreChances === null
        ? `too few before to show ${lookedFor}`
        : `${change.moreChances} more would show ${lookedFor}`;
  }
}
