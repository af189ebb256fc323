import type { Team } from '@icewright/book';
import type { OverFilm } from '../../film/marks/draw-over-film.ts';
import type { OpenFilm } from '../../film/open-film.ts';
import { makeReel } from '../../film/reel/make-reel.ts';
import { memoryTarget } from '../../film/reel/memory-target.ts';
import { findReelKinds } from '../../film/reel/reel-kinds.ts';
import { type ReelItem, reelPlanOf } from '../../film/reel/reel-plan.ts';
import { reelSizeOf } from '../../film/reel/reel-size.ts';
import { itemFramesOf } from '../item-frames.ts';
import { itemHoldsOf } from '../reel/item-holds.ts';
import { reelFilmOf } from '../reel/reel-film-of.ts';
import type { HisItem } from './his-items.ts';

/** No wider than a phone shows: the page carries its film with it. */
const WIDTH_PX = 960;

/**
 * The stretch of one item as a film of its own, with the marks over it and standing where it stands, from its first to its last
 * picture, without sound: what was shouted on the bench is nobody's handout. Undefined when it was stopped; throws when the
 * browser cannot.
 */
export async function cutStretch(
  film: OpenFilm,
  item: HisItem,
  of: {
    readonly team: Team;
    /** Words of marks as this player may read them. */
    readonly said: (words: string) => string;
    readonly signal: AbortSignal;
    readonly onShare: (doneRatio: number) => void;
  },
): Promise<Blob | undefined> {
  const size = reelSizeOf([film], WIDTH_PX);
  // MP4 where it can be: every phone plays it.
  const [kind] = await findReelKinds(size.widthPx, size.heightPx);
  if (kind === undefined) throw new Error('this browser writes no film');
  const { first, last } = itemFramesOf(item, film.index);
  const items: ReelItem[] = [
    { film: ITS, fromFrame: first, toFrame: last, holds: itemHoldsOf(item), rates: [1], words: [] },
  ];
  const plan = reelPlanOf(items, () => film.index, 0);
  const target = memoryTarget();
  const its = await reelFilmOf(item, film, of.team);
  const made = await makeReel({
    films: new Map([[ITS, { ...its, overAt: frame => saidSo(its.overAt(frame), of.said) }]]),
    items,
    plan,
    kind,
    size,
    target,
    withSound: false,
    quality: 'medium',
    signal: of.signal,
    onProgress: ({ atS }) => of.onShare(atS / plan.lengthS),
  });
  return made && target.whole(kind === 'mp4' ? 'video/mp4' : 'video/webm');
}

const ITS = 'its';

const saidSo = (over: OverFilm, said: (words: string) => string): OverFilm => ({
  ...over,
  marks: over.marks.map(mark => ({ ...mark, words: said(mark.words) })),
});
