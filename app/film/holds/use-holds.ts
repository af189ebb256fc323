import type { Game } from '@icewright/book';
import { useEffect } from 'react';
import type { Player } from '../player.ts';
import { holdsOf } from './film-holds.ts';

/** Playback stands where the freezes of this film say so. */
export const useHolds = (player: Player, freezes: Game['freezes'], film: string): void => {
  useEffect(() => {
    player.holds = holdsOf(freezes, film);
  }, [player, freezes, film]);
};
