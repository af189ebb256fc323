import type { LensTerm, TrackedStretch } from '@icewright/engine';
import { useEffect, useRef, useState } from 'react';
import type { OpenFilm } from '../open-film.ts';
import type { CarryAsk, CarrySaid } from './carry-messages.ts';

/** How far the following of the camera is. */
export type CarryState =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'following';
      readonly frameCount: number;
      readonly ofCount: number;
      readonly leftS?: number;
    }
  | { readonly kind: 'followed'; readonly stretch: TrackedStretch; readonly lens: LensTerm }
  | { readonly kind: 'failed'; readonly why: string };

export interface Following {
  readonly state: CarryState;
  readonly start: (fromFrame: number, toFrame: number) => void;
  readonly stop: () => void;
}

/** The camera of one open film, followed in a worker of its own that ends when it is stopped or the film is closed. */
export const useFollowing = (film: OpenFilm): Following => {
  const [state, setState] = useState<CarryState>({ kind: 'none' });
  const worker = useRef<Worker | null>(null);
  const end = () => {
    worker.current?.terminate();
    worker.current = null;
  };
  useEffect(() => () => worker.current?.terminate(), []);
  const start = (fromFrame: number, toFrame: number) => {
    end();
    const { source, index, rotationDeg, flipped, widthPx, heightPx } = film;
    const ofCount = toFrame - fromFrame + 1;
    setState({ kind: 'following', frameCount: 0, ofCount });
    const beganMs = performance.now();
    const made = new Worker(new URL('./carry.worker.ts', import.meta.url), { type: 'module' });
    worker.current = made;
    made.addEventListener('message', ({ data }: MessageEvent<CarrySaid>) => {
      if (worker.current !== made) return;
      if (data.kind === 'followed') {
        // A word at every picture would draw the page as often.
        if (data.frameCount % SAY_EVERY === 0)
          setState({
            ...{ kind: 'following', frameCount: data.frameCount, ofCount },
            leftS: leftSOf(performance.now() - beganMs, data.frameCount, ofCount),
          });
        return;
      }
      end();
      if (data.kind === 'failed') setState(data);
      else {
        const stretch = { frames: data.frames, picture: { widthPx, heightPx } };
        setState({ kind: 'followed', stretch, lens: data.lens });
      }
    });
    made.addEventListener('error', ({ message }) => {
      if (worker.current !== made) return;
      end();
      setState({ kind: 'failed', why: message });
    });
    const ask: CarryAsk = {
      source,
      timesS: index.timesS,
      endS: index.endS,
      fromFrame,
      toFrame,
      rotationDeg,
      flipped,
      widthPx,
      heightPx,
    };
    made.postMessage(ask);
  };
  const stop = () => {
    end();
    setState({ kind: 'none' });
  };
  return { state, start, stop };
};

const SAY_EVERY = 5;

/** At the pace so far. */
const leftSOf = (passedMs: number, frameCount: number, ofCount: number): number =>
  ((passedMs / frameCount) * (ofCount - frameCount)) / 1000;
