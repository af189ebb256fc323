import './film.css';
import './freeze.css';
import { GameRoom } from './game-room.tsx';
import { GamesList } from './games-list.tsx';

/** Film: the list of games, and the film room of one of them. */
export function FilmPlace({ gameId }: { readonly gameId?: string }) {
  return gameId === undefined ? <GamesList /> : <GameRoom gameId={gameId} />;
}
