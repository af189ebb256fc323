import type { Game } from '@icewright/book';
import { useEffect, useRef, useSyncExternalStore } from 'react';
import { setRemoved } from '../shell/book.ts';
import { isLive } from './live/live-part.ts';

/** No film, nothing marked, nothing written: a game that was begun and left again. A live clock alone is nothing to keep. */
export const isEmptyGame = (game: Game): boolean =>
  game.opponent === '' &&
  game.note === '' &&
  game.score === undefined &&
  Object.values(game.films).every(isLive) &&
  [game.moments, game.freezes].every(list => Object.keys(list).length === 0);

/** The game that was last left empty and is not kept; the list says so. */
export const useLeftEmpty = (): string | undefined => useSyncExternalStore(subscribe, () => leftId);

/** Takes a game that was just made out of the list again when its room is left with nothing in it. */
export function useLeaveEmpty(gameId: string, game: Game, isNew: boolean): void {
  const last = useRef({ game, isNew });
  last.current = { game, isNew: last.current.isNew || isNew };
  useEffect(() => {
    rooms.set(gameId, (rooms.get(gameId) ?? 0) + 1);
    return () => {
      rooms.set(gameId, (rooms.get(gameId) ?? 1) - 1);
      // A room that is only drawn anew opens again at once.
      setTimeout(() => {
        if (rooms.get(gameId) !== 0 || !last.current.isNew || !isEmptyGame(last.current.game)) return;
        setRemoved(gameId, true);
        leftId = gameId;
        for (const tell of listeners) tell();
      });
    };
  }, [gameId]);
}

const rooms = new Map<string, number>();
let leftId: string | undefined;
const listeners = new Set<() => void>();
const subscribe = (listener: () => void) => {
  listeners.add(listener);
  return () => void listeners.delete(listener);
};
