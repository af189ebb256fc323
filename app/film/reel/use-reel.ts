import { useEffect, useRef, useState } from 'react';
import type { ReelProgress, ReelWish } from './make-reel.ts';
import type { ReelKind } from './reel-kinds.ts';
import { openReelTarget } from './reel-target.ts';
import { sizeWords } from './reel-words.ts';

/** A reel on its way. */
export interface Making extends ReelProgress {
  readonly kind: ReelKind;
  readonly lengthS: number;
  readonly beganMs: number;
}

/** Making one reel at a time: how far it is, calling it off, and what came of the last. */
export const useReel = () => {
  const [making, setMaking] = useState<Making>();
  const [said, setSaid] = useState('');
  const stop = useRef<AbortController | null>(null);
  useEffect(() => () => stop.current?.abort(), []);
  const make = async (
    wish: Omit<ReelWish, 'target' | 'signal' | 'onProgress'>,
    fileName: string,
  ): Promise<void> => {
    setSaid('');
    // The file is asked for in the very press, or the browser refuses.
    const target = await openReelTarget(fileName, wish.kind);
    if (!target) return;
    stop.current = new AbortController();
    const { signal } = stop.current;
    const begun = { kind: wish.kind, lengthS: wish.plan.lengthS, beganMs: performance.now() };
    let toldMs = 0;
    const onProgress = (done: ReelProgress) => {
      const nowMs = performance.now();
      if (nowMs - toldMs < TELL_MS) return;
      toldMs = nowMs;
      setMaking({ ...begun, ...done });
    };
    setMaking({ ...begun, atS: 0, byteCount: 0 });
    try {
      const { makeReel } = await import('./make-reel.ts');
      const made = await makeReel({ ...wish, target, signal, onProgress });
      if (!made) {
        await target.drop();
        setSaid('Called off. Nothing was kept.');
      } else {
        const size = await target.keep();
        setSaid(
          [
            `Made: ${fileName}, ${sizeWords(size)}.`,
            made.sound === 'none' && wish.withSound && wish.plan.sounds.length > 0
              ? 'The film has no sound that could be taken along.'
              : '',
            made.goneCount > 0
              ? `${made.goneCount} damaged ${made.goneCount === 1 ? 'picture was' : 'pictures were'} left as the one before.`
              : '',
          ]
            .filter(Boolean)
            .join(' '),
        );
      }
    } catch (error) {
      await target.drop();
      setSaid(`The reel could not be made: ${(error as Error).message}. Nothing was kept.`);
    }
    setMaking(undefined);
  };
  return { making, said, make, cancel: () => stop.current?.abort() };
};

const TELL_MS = 250;
