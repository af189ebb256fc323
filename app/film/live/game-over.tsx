import type { FilmPart, Game, Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import type { ReactNode } from 'react';
import { MomentsAlone } from '../moments/moments-alone.tsx';
import { FilmToCome } from './film-to-come.tsx';
import { LiveClock } from './live-clock.tsx';

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
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Team;
  readonly partId: Id<'film'>;
  readonly part: FilmPart;
  readonly head: () => ReactNode;
  readonly above: ReactNode;
  readonly openFilm: ReactNode;
}) {
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
