import type { FilmPart, Game, Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import type { ReactNode } from 'react';

/** What a page is given of a game that was marked live and has no film yet. */
export interface WithoutFilm {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Team;
  readonly partId: Id<'film'>;
  readonly part: FilmPart;
  readonly above: ReactNode;
  readonly openFilm: ReactNode;
}
