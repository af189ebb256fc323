import { useEffect, useState, useSyncExternalStore } from 'react';
import type { OpenFilm } from './open-film.ts';
import { Player, type PlayerState } from './player.ts';

/** One player for one open film; closed with the page. */
export const usePlayer = (film: OpenFilm | undefined): Player | undefined => {
  const [player, setPlayer] = useState<Player>();
  useEffect(() => {
    if (!film) return;
    const made = new Player(film);
    setPlayer(made);
    return () => {
      setPlayer(undefined);
      made.close();
    };
  }, [film]);
  return player;
};

export const usePlayerState = (player: Player): PlayerState =>
  useSyncExternalStore(player.subscribe, player.now);

/** Only what is needed of it, so that a page part is not drawn again with every picture. */
export const usePlayerPart = <Part extends string | number | boolean>(
  player: Player,
  part: (state: PlayerState) => Part,
): Part => useSyncExternalStore(player.subscribe, () => part(player.now()));
