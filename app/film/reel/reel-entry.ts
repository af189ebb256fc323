import type { Moment } from '@icewright/book';
import type { FilmHolds } from '../holds/film-holds.ts';
import { type CardLine, type CardWords, cardLinesOf } from './card-lines.ts';
import type { ReelItem } from './reel-plan.ts';
import { RATES_OF, type ReelSpeed } from './reel-speed.ts';

/** Something that can go into a reel, as its list shows it. */
export interface ReelEntry extends Pick<ReelItem, 'film' | 'fromFrame' | 'toFrame'> {
  readonly id: string;
  /** The picture it is about. */
  readonly aboutFrame: number;
  readonly holds: FilmHolds;
  /** Seconds of its stretch. */
  readonly lengthS: number;
  /** Where in its film it is, in words. */
  readonly at: string;
  readonly verdict?: Moment['verdict'];
  readonly card: CardWords;
}

export const reelItemOf = (
  { film, fromFrame, toFrame, holds, card }: ReelEntry,
  speed: ReelSpeed,
  lines: ReadonlySet<CardLine>,
): ReelItem => ({
  film,
  fromFrame,
  toFrame,
  holds,
  rates: RATES_OF[speed],
  words: cardLinesOf(card, lines),
});
