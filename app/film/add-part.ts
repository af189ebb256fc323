import { type FilmPart, type Game, newId, rankAtEnd } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { edit } from '../shell/book.ts';
import { labelFor } from './part-label.ts';

/** Adds a film file to a game; the same file twice stays one part. Gives the part's id. */
export const addPart = (
  gameId: string,
  part: Omit<FilmPart, 'rank' | 'label' | 'as'>,
  films: Game['films'],
  as: 'part' | 'camera' = 'part',
): Id<'film'> => {
  const known = Object.entries(films).find(([, one]) => one.hash === part.hash);
  if (known) return known[0] as Id<'film'>;
  const id = newId<'film'>();
  edit(gameId).set(['films', id], { ...part, rank: rankAtEnd(films), label: labelFor(films, as), as });
  return id;
};
