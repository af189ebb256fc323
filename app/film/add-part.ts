import { type FilmPart, type Game, newId, rankAtEnd } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { edit } from '../shell/book.ts';

/** Adds a film file to a game; the same file twice stays one part. Gives the part's id. */
export const addPart = (
  gameId: string,
  part: Omit<FilmPart, 'rank' | 'label'>,
  films: Game['films'],
): Id<'film'> => {
  const known = Object.entries(films).find(([, one]) => one.hash === part.hash);
  if (known) return known[0] as Id<'film'>;
  const id = newId<'film'>();
  const rank = rankAtEnd(films);
  const label = Object.keys(films).length === 0 ? 'whole game' : `part ${Object.keys(films).length + 1}`;
  edit(gameId).set(['films', id], { ...part, rank, label });
  return id;
};
