import { type FilmHolds, holdsOf } from '../../film/holds/film-holds.ts';
import type { ShownFilm, ShownItem } from '../shown-item.ts';

/** Where the film of an item stands when nobody presses: at its freezes, and where the meeting stops. */
export const itemHoldsOf = ({ item, game, partId }: ShownFilm & Pick<ShownItem, 'item'>): FilmHolds => {
  const holds = new Map(holdsOf(game.freezes, partId));
  if (item.stop) holds.set(item.stop.frameIndex, item.stop.seconds ?? STANDS_S);
  return holds;
};

/** In a meeting it stands until somebody presses; in a file, long enough to look round once. Our own choice. */
export const STANDS_S = 3;
