import type { ShownFilm } from '../shown-item.ts';

/** A film of a game: the same film can lie in two games, with other marks over it. */
export const reelKeyOf = ({ gameId, partId }: Pick<ShownFilm, 'gameId' | 'partId'>): string =>
  `${gameId} ${partId}`;
