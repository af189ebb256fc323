import { useMemo } from 'react';
import { rinkOfSheet, sheetOfGame } from '../../film/fit-of-freeze.ts';
import { useHolds } from '../../film/holds/use-holds.ts';
import { tieOfFilm } from '../../film/marks/film-tie.ts';
import '../../film/marks/marks.css';
import { MarksLayer } from '../../film/marks/marks-layer.tsx';
import { useMarksDesk } from '../../film/marks/use-marks-desk.ts';
import type { Player } from '../../film/player.ts';
import { useDocument, useTeam } from '../../shell/book.ts';

/** What the film room drew over this film, where its pictures are tied to the ice, and the freezes that hold it. */
export function MarksOver(props: {
  readonly gameId: string;
  readonly film: string;
  readonly player: Player;
  readonly filmPerScreen: number;
}) {
  const { value: game } = useDocument('game', props.gameId);
  const { value: team } = useTeam();
  if (game === undefined || team === undefined) return null;
  return <OfGame {...props} game={game} team={team} />;
}

function OfGame({
  gameId,
  film,
  player,
  filmPerScreen,
  game,
  team,
}: Parameters<typeof MarksOver>[0] & {
  readonly game: NonNullable<ReturnType<typeof useDocument<'game'>>['value']>;
  readonly team: NonNullable<ReturnType<typeof useTeam>['value']>;
}) {
  const desk = useMarksDesk(gameId);
  const rink = rinkOfSheet(sheetOfGame(game, team));
  // Pins are carried in the film room only: that takes longer than a meeting waits.
  const tie = useMemo(() => tieOfFilm(game.freezes, film, rink, () => undefined), [game.freezes, film, rink]);
  useHolds(player, game.freezes, film);
  return (
    <MarksLayer
      game={game}
      film={film}
      player={player}
      tie={tie}
      lengths={team.lengths}
      desk={desk}
      filmPerScreen={filmPerScreen}
    />
  );
}
