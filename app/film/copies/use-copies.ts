import { useCallback, useEffect, useState } from 'react';
import type { Player } from '../player.ts';
import { CopyKeeper } from './copy-keeper.ts';
import { watchStillness } from './when-still.ts';
import type { WholeState } from './whole-film.ts';

/**
 * Keeps copies of the open film for as long as it is open: round its moments, and of all of it where that was asked. Gives how far they
 * are, and a way to ask.
 */
export const useCopies = (player: Player, hash: string, moments: readonly number[]): Kept => {
  const [kept, setKept] = useState<Omit<Kept, 'askWhole'>>({ byteCount: 0, waitingCount: 0 });
  const [keeper, setKeeper] = useState<CopyKeeper>();
  useEffect(() => {
    const still = watchStillness(window, () => performance.now());
    const stop = player.subscribe(still.acted);
    const isQuiet = () => !player.now().playing && still.forMs() > QUIET_MS;
    const made = new CopyKeeper(player.film, hash, isQuiet, () =>
      setKept({ byteCount: made.byteCount, waitingCount: made.waitingCount, whole: made.wholeState }),
    );
    player.copies = made;
    setKeeper(made);
    return () => {
      stop();
      still.stop();
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
  const askWhole = useCallback(async (isAsked: boolean) => keeper?.askWhole(isAsked), [keeper]);
  return { ...kept, askWhole };
};

interface Kept {
  readonly byteCount: number;
  /** Round how many stretches copies are still to be made. */
  readonly waitingCount: number;
  /** Undefined until the film is looked through. */
  readonly whole?: WholeState;
  /** Gives why it cannot be, in words. */
  readonly askWhole: (isAsked: boolean) => Promise<string | undefined>;
}

const QUIET_MS = 3000;
