import { findRankBetween, inOrder, type Practice, rankAtEnd } from '@icewright/book';

type Blocks = Readonly<Record<string, Pick<Practice['blocks'][never], 'rank' | 'drill'>>>;

/**
 * The rank at which a drill is put into a practice: at its end, and before the talk with which it closes. A talk is a block without a
 * drill.
 */
export function rankPutIn(blocks: Blocks): number {
  const ordered = inOrder(blocks);
  const last = ordered.at(-1)?.[1];
  const before = ordered.at(-2)?.[1];
  if (last === undefined || last.drill !== undefined || before === undefined) return rankAtEnd(blocks);
  return findRankBetween(before.rank, last.rank) ?? rankAtEnd(blocks);
}
