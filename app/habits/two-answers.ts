import type { Moment } from '@icewright/book';
import type { Judgement } from '@icewright/engine';

/** What was said of a moment, where its freeze measures otherwise, and which of the two counts. */
export interface TwoAnswers {
  readonly word: 'done' | 'missed';
  /** Initials of who said it; empty where nobody wrote them. */
  readonly wordBy: string;
  readonly measure: 'done' | 'missed' | 'cannotTell';
  readonly counts: 'word' | 'measure';
  /** Initials of who settled it, empty where nobody wrote them; absent: nobody has settled it, and the measure counts. */
  readonly settledBy?: string;
}

/** Undefined where both say the same, where the freeze has no say, and where it could not be seen. */
export function twoAnswersOf(
  { verdict, by, settled }: Pick<Moment, 'verdict' | 'by' | 'settled'>,
  judgement: Judgement | undefined,
): TwoAnswers | undefined {
  if (judgement === undefined || verdict === 'cannotSee' || !hasSay(judgement)) return undefined;
  const measure = MEASURED[judgement.answer];
  if (measure === verdict) return undefined;
  return {
    word: verdict,
    wordBy: by,
    measure,
    counts: settled?.counts ?? 'measure',
    ...(settled ? { settledBy: settled.by } : {}),
  };
}

/**
 * Whether a freeze answers: yes, no, or that its ± reaches over the limit. One that lacks something (no puck, nobody placed, not all of those
 * who count) says nothing, and what the person saw stands.
 */
export const hasSay = ({ answer, why }: Judgement): boolean =>
  answer !== 'cannotTell' || why === 'straddles' || why === 'whoIsUnsure';

export const MEASURED = { yes: 'done', no: 'missed', cannotTell: 'cannotTell' } as const;

/** AB said missed; measured: done, and that counts. */
export function twoAnswersSaid({ word, wordBy, measure, counts, settledBy }: TwoAnswers): string {
  const said = wordBy === '' ? `Marked ${word}` : `${wordBy} said ${word}`;
  const settled =
    settledBy === undefined ? '' : settledBy === '' ? ' (settled)' : ` (settled by ${settledBy})`;
  const measured = `measured: ${measure === 'cannotTell' ? 'cannot tell' : measure}`;
  if (counts === 'word') return `${said}, and that counts${settled}; ${measured}.`;
  const counted = measure === 'cannotTell' ? 'so it is left out of the count' : 'and that counts';
  return `${said}; ${measured}, ${counted}${settled}.`;
}
