import { lazy } from 'react';
import './carry/carry.css';
import './game-list.css';
import './film-room.css';
import './picture.css';
import './pulse.css';
import './holds/holds.css';
import './marks/marks.css';
import './marks/marks-strip.css';
import './moments/moments.css';
import './moments/moments-more.css';
import './live/live.css';
import './film-narrow.css';
import './picture-stands.css';
import './freeze-marks.css';
import './ice-map.css';
import './freeze-margin.css';
import { GamesList } from './games-list.tsx';

// Most of the film room's weight is needed only once a game is open, not for the list that is the first page of all.
const GameRoom = lazy(async () => ({ default: (await import('./game-room.tsx')).GameRoom }));

/** Film: the list of games, and the film room of one of them. */
export function FilmPlace({ gameId }: { readonly gameId?: string }) {
  return gameId === undefined ? <GamesList /> : <GameRoom gameId={gameId} />;
}
