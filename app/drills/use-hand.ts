import type { Drill } from '@icewright/book';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { edit, endStep } from '../shell/book.ts';
import type { Shown } from './edit/held.ts';
import { EMPTY, heldAfter } from './in-hand.ts';
import { stillFits } from './still-fits.ts';
import { afterWrites, type Write } from './write.ts';

/** The drill with what the hand is doing to it: shown at once, kept when the hand lets go, one step of undo. */
export interface Hand {
  readonly drill: Drill;
  /** As the document has it, without what is held. */
  readonly kept: Drill;
  /** True while something is held: the document still has the old place. */
  readonly isHolding: boolean;
  /** What is drawn beside the hand while it holds something. */
  readonly shown: Shown | null;
  /**
   * Shows the drill as these writes would leave it; nothing is kept yet. At most once a frame. False when what is held is no longer
   * there: then the hand is empty.
   */
  readonly hold: (writes: readonly Write[], shown?: Shown) => boolean;
  /** Keeps what is held, or puts it back where it may not stay. Says why it went back. */
  readonly letGo: () => string | null;
  /** Puts it back where it was. */
  readonly putBack: () => void;
  /** Keeps a change at once. */
  readonly keep: (writes: readonly Write[]) => void;
}

export function useHand(id: string, kept: Drill): Hand {
  const [held, setHeld] = useState(EMPTY);
  const latest = useRef(EMPTY);
  /** What the last picture showed. */
  const drawn = useRef(EMPTY);
  const frame = useRef(0);
  const now = useRef(kept);
  now.current = kept;
  const isThere = useMemo(() => stillFits(kept, held.writes), [kept, held.writes]);
  const { writes, shown } = isThere ? held : EMPTY;
  const drill = useMemo(() => (writes.length === 0 ? kept : afterWrites(kept, writes)), [kept, writes]);

  const putBack = useCallback(() => {
    cancelAnimationFrame(frame.current);
    latest.current = EMPTY;
    drawn.current = EMPTY;
    setHeld(EMPTY);
  }, []);
  useEffect(() => {
    if (!isThere) putBack();
  }, [isThere, putBack]);
  const hold = useCallback(
    (writes: readonly Write[], shown: Shown | null = null) => {
      if (!stillFits(now.current, writes)) {
        putBack();
        return false;
      }
      latest.current = { writes, shown };
      cancelAnimationFrame(frame.current);
      frame.current = requestAnimationFrame(() => {
        const next = heldAfter(drawn.current, latest.current);
        if (next === drawn.current) return;
        drawn.current = next;
        // Within this very frame: left to its own schedule the page would show it one picture later.
        flushSync(() => setHeld(next));
      });
      return true;
    },
    [putBack],
  );
  const keep = useCallback((writes: readonly Write[]) => keepWrites(id, writes), [id]);
  const letGo = useCallback(() => {
    const { writes, shown } = latest.current;
    const refusal = shown?.refusal ?? null;
    if (refusal === null && stillFits(now.current, writes)) keepWrites(id, writes);
    putBack();
    return refusal === null ? null : refusal.said;
  }, [id, putBack]);

  const isHolding = held !== EMPTY && isThere;
  return useMemo(
    () => ({ drill, kept, isHolding, shown, hold, letGo, putBack, keep }),
    [drill, kept, isHolding, shown, hold, letGo, putBack, keep],
  );
}

function keepWrites(id: string, writes: readonly Write[]): void {
  if (writes.length === 0) return;
  const document = edit(id);
  endStep(id);
  document.transact(() => {
    for (const { path, value } of writes)
      value === undefined ? document.remove(path) : document.set(path, value);
  });
  endStep(id);
}
