import { type Idea, type NoProblem, ranked } from '@icewright/engine';
import { useEffect, useRef, useState } from 'react';
import type { IdeasAsk, IdeasSaid } from './ideas.worker.ts';

export interface Ideas {
  readonly isComputing: boolean;
  /** The best first once all have come or it was stopped; until then as they came, so that none moves under a hand. */
  readonly ideas: readonly Idea[];
  readonly none: NoProblem | null;
  readonly start: (ask: IdeasAsk) => void;
  readonly stop: () => void;
}

/** Ideas are played in a worker of their own, which ends when it is stopped or when nobody looks any more. */
export function useIdeas(): Ideas {
  const [ideas, setIdeas] = useState<readonly Idea[]>([]);
  const [none, setNone] = useState<NoProblem | null>(null);
  const [isComputing, setComputing] = useState(false);
  const worker = useRef<Worker | null>(null);
  const stop = () => {
    worker.current?.terminate();
    worker.current = null;
    setIdeas(ranked);
    setComputing(false);
  };
  useEffect(() => () => worker.current?.terminate(), []);
  const start = (ask: IdeasAsk) => {
    stop();
    setIdeas([]);
    setNone(null);
    setComputing(true);
    const made = new Worker(new URL('./ideas.worker.ts', import.meta.url), { type: 'module' });
    worker.current = made;
    made.addEventListener('message', ({ data }: MessageEvent<IdeasSaid>) => {
      if (worker.current !== made) return;
      if (data.kind === 'idea') setIdeas(before => [...before, data.idea]);
      else if (data.kind === 'none') setNone(data.reason);
      if (data.kind !== 'idea') stop();
    });
    made.addEventListener('error', stop);
    made.postMessage(ask);
  };
  return { isComputing, ideas, none, start, stop };
}
