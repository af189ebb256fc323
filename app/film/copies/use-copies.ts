import { useEffect, useState } from 'react';
import type { Player } from '../player.ts';
import { CopyKeeper } from './copy-keeper.ts';

/** Keeps copies round the moments of the open film for as long as it is open. Gives how many bytes they take, and round how many stretches they are still to be made. */
export const useCopies = (player: Player, hash: string, moments: readonly number[]): Kept => {
  const [kept, setKept] = useState<Kept>({ byteCount: 0, waitingCount: 0 });
  const [keeper, setKeeper] = useState<CopyKeeper>();
  useEffect(() => {
    let actedMs = performance.now();
    const stop = player.subscribe(() => {
      actedMs = performance.now();
    });
    const isQuiet = () => !player.now().playing && performance.now() - actedMs > QUIET_MS;
    const made = new CopyKeeper(player.film, hash, isQuiet, () =>
      setKept({ byteCount: made.byteCount, waitingCount: made.waitingCount }),
    );
    player.copies = made;
    setKeeper(made);
    return () => {
      stop();
      player.copies = undefined;
      made.close();
    };
  }, [player, hash]);
  const frames = moments.join();
  useEffect(() => {
    let isOver = false;
    void player.film.whole
      .then(async () => {
        if (!isOver) await keeper?.follow(frames === '' ? [] : frames.split(',').map(Number));
      })
      .catch(() => undefined);
    return () => {
      isOver = true;
    };
  }, [player, keeper, frames]);
  return kept;
};

interface Kept {
  readonly byteCount: number;
  readonly waitingCount: number;
}

const QUIET_MS = 3000;
