import type { Game, Team } from '@icewright/book';
import { carryOfAll, pinsSaid } from '../carry/carried-frames.ts';
import type { FollowedStretch } from '../carry/kept-stretches.ts';
import { rinkOfSheet, sheetOfGame } from '../fit-of-freeze.ts';
import { type FilmTie, tieOfFilm } from './film-tie.ts';

/** How a film's pictures are tied to the ice outside the film room: by its freezes, and by stretches that were followed in this browser. */
export const keptTieOf = (
  game: Game,
  team: Team,
  film: string,
  stretches: readonly FollowedStretch[],
): FilmTie => {
  const rink = rinkOfSheet(sheetOfGame(game, team));
  return tieOfFilm(game.freezes, film, rink, carryOfAll(stretches, pinsSaid(game, film), rink).fitAt);
};
