import type { ReactNode } from 'react';
import { MomentsAlone } from '../moments/moments-alone.tsx';
import { FilmToCome } from './film-to-come.tsx';
import { LiveClock } from './live-clock.tsx';
import type { WithoutFilm } from './without-film.ts';

/** A game that was marked live and is over: what was marked, and the way to its film. */
export function GameOver({
  gameId,
  game,
  team,
  partId,
  part,
  head,
  above,
  openFilm,
}: WithoutFilm & { readonly head: () => ReactNode }) {
  return (
    <>
      {head()}
      <main className="place">
        <LiveClock gameId={gameId} filmId={partId} part={part} moments={game.moments} />
        {above}
        <FilmToCome films={game.films}>{openFilm}</FilmToCome>
      </main>
      <MomentsAlone gameId={gameId} game={game} team={team} partId={partId} />
    </>
  );
}
