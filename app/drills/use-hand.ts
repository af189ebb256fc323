import type { Drill } from '@icewright/book';
import { useCallback, useMemo, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { edit, endStep } from '../shell/book.ts';
import { afterWrites, type Write } from './write.ts';

/** The drill with what the hand is doing to it: shown at once, kept when the hand lets go, one step of undo. */
export interface Hand {
  readonly drill: Drill;
  /** As the document has it, without what is held. */
  readonly kept: Drill;
  /** True while something is held: the document still has the old place. */
  readonly isHolding: boolean;
  /** Shows the drill as these writes would leave it; nothing is kept yet. At most once a frame. */
  readonly hold: (writes: readonly Write[]) => void;
  /** Keeps what is held. */
  readonly letGo: () => void;
  /** Puts it back where it was. */
  readonly putBack: () => void;
  /** Keeps a change at once. */
  readonly keep: (writes: readonly Write[]) => void;
}

export function useHand(id: string, kept: Drill): Hand {
  const [held, setHeld] = useState<readonly Write[]>([]);
  const latest = useRef<readonly Write[]>([]);
  const frame = useRef(0);
  const drill = useMemo(() => (held.length === 0 ? kept : afterWrites(kept, held)), [kept, held]);

  const show = useCallback((writes: readonly Write[]) => {
    latest.current = writes;
    cancelAnimationFrame(frame.current);
    // Within this very frame: left to its own schedule the page would show it one picture later.
    frame.current = requestAnimationFrame(() => flushSync(() => setHeld(latest.current)));
  }, []);
  const clear = useCallback(() => {
    cancelAnimationFrame(frame.current);
    latest.current = [];
    setHeld([]);
  }, []);
  const keep = useCallback((writes: readonly Write[]) => keepWrites(id, writes), [id]);
  const letGo = useCallback(() => {
    keepWrites(id, latest.current);
    clear();
  }, [id, clear]);

  return { drill, kept, isHolding: held.length > 0, hold: show, letGo, putBack: clear, keep };
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
