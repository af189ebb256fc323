import { useHolds } from '../../film/holds/use-holds.ts';
import { MarksShown } from '../../film/marks/marks-shown.tsx';
import type { Player } from '../../film/player.ts';
import { useDocument } from '../../shell/book.ts';

/** What the film room drew over this film, where its pictures are tied to the ice, and the freezes that hold it. */
export function MarksOver({
  gameId,
  film,
  player,
  filmPerScreen,
}: {
  readonly gameId: string;
  readonly film: string;
  readonly player: Player;
  readonly filmPerScreen: number;
}) {
  const { value: game } = useDocument('game', gameId);
  useHolds(player, game?.freezes ?? NONE, film);
  return <MarksShown gameId={gameId} filmId={film} player={player} filmPerScreen={filmPerScreen} />;
}

const NONE = {};
