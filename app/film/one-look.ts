import { useEffect, useRef, useState } from 'react';

/** What was looked for in one freeze, and how far that is. */
export interface Looking {
  /** The freeze it was looked for in. */
  readonly on: string;
  readonly state: 'looking' | 'looked';
}

/** A look through the frozen picture by a worker of its own, and what the coach did since with what it found. */
export interface OneLook<Looked extends Looking> {
  /** Absent where nothing was looked for in this freeze. */
  readonly looked: Looked | undefined;
  change(part: Partial<Looked>): void;
  /** What lies there goes; a look under way ends. */
  putAway(): void;
  /** Begins with what is known before; the answer takes what the worker says, until that says that it has looked. */
  begin(worker: Worker, first: Looked): (part: Partial<Looked>) => void;
}

/** One look at a time, forgotten with its freeze's page. */
export const useOneLook = <Looked extends Looking>(freezeId: string | undefined): OneLook<Looked> => {
  const [kept, setKept] = useState<Looked>();
  const worker = useRef<Worker | null>(null);
  const end = () => {
    worker.current?.terminate();
    worker.current = null;
  };
  useEffect(() => () => worker.current?.terminate(), []);
  const changeOn = (on: string | undefined, part: Partial<Looked>) =>
    setKept(now => (now && now.on === on ? { ...now, ...part } : now));
  return {
    looked: kept?.on === freezeId ? kept : undefined,
    change: part => changeOn(freezeId, part),
    putAway: () => {
      end();
      setKept(undefined);
    },
    begin: (made, first) => {
      end();
      worker.current = made;
      setKept(first);
      return part => {
        if (worker.current !== made) return;
        if (part.state === 'looked') end();
        changeOn(first.on, part);
      };
    },
  };
};
