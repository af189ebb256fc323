import type { Shown } from './edit/held.ts';
import type { Write } from './write.ts';

/** What a hand holds: the drill would be left with these writes, and this is drawn beside the hand. */
export interface InHand {
  readonly writes: readonly Write[];
  readonly shown: Shown | null;
}

export const EMPTY: InHand = { writes: [], shown: null };

/**
 * What is to be shown next. A hand that is drawn to a line of the ice or to another's place moves on and leaves everything where it is: what would be
 * written stays the very same value then, so that nothing is run or drawn again for it.
 */
export function heldAfter(before: InHand, next: InHand): InHand {
  if (before === EMPTY || !isSame(before.writes, next.writes)) return next;
  return isSame(before.shown, next.shown) ? before : { writes: before.writes, shown: next.shown };
}

/** Writes and places are plain values of a few numbers. */
const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);
