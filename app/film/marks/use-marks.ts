import type { Game, Team } from '@icewright/book';
import type { PinFit, Rink } from '@icewright/engine';
import { useMemo } from 'react';
import { clockText } from '../film-clock.ts';
import { gameTitle } from '../game-words.ts';
import type { Player } from '../player.ts';
import { tieOfFilm } from './film-tie.ts';
import { useMarksDesk } from './use-marks-desk.ts';

/** What the film room needs of marks: the desk they lie on, and how the pictures are tied to the ice. */
export const useMarks = ({
  gameId,
  game,
  film,
  player,
  team,
  rink,
  carriedAt,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly film: string;
  readonly player: Player;
  readonly team: Team;
  readonly rink: Rink;
  readonly carriedAt: (frameIndex: number) => PinFit | undefined;
}) => {
  const desk = useMarksDesk(gameId, game);
  const { freezes } = game;
  const tie = useMemo(() => tieOfFilm(freezes, film, rink, carriedAt), [freezes, film, rink, carriedAt]);
  return {
    game,
    film,
    player,
    tie,
    team,
    desk,
    /** What a still is called. */
    get title() {
      return `${gameTitle(game)}, ${clockText(player.timeS, 1)}`;
    },
    toggle: () => {
      if (!desk.isOpen) player.pause();
      desk.setOpen(!desk.isOpen);
    },
  };
};
