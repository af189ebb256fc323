import type { Team } from '@icewright/book';
import { findStretches } from '../../film/carry/kept-stretches.ts';
import { keptTieOf } from '../../film/marks/kept-tie.ts';
import { overFilmOf } from '../../film/marks/over-film-of.ts';
import type { OpenFilm } from '../../film/open-film.ts';
import type { ReelFilm } from '../../film/reel/reel-films.ts';
import type { ShownFilm } from '../shown-item.ts';

/** The film of an item with the marks that lie over it, where its pictures are tied to the ice. */
export const reelFilmOf = async (
  { game, partId, part }: Pick<ShownFilm, 'game' | 'partId' | 'part'>,
  film: OpenFilm,
  team: Team,
): Promise<ReelFilm> => {
  const tie = keptTieOf(game, team, partId, await findStretches(part.hash));
  return { film, ...overFilmOf(game, partId, film.index, tie, team) };
};
