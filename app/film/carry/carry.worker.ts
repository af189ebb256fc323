import { cameraTrackerOf, lensTermOf, type TrackedFrame } from '@icewright/engine';
import type { CarryAsk, CarrySaid } from './carry-messages.ts';
import { greyFrames } from './grey-frames.ts';

const SEED = 4;

/** Follows the camera through a stretch of film; whoever no longer wants it ends the worker. */
addEventListener('message', ({ data }: MessageEvent<CarryAsk>) => {
  follow(data).catch((error: unknown) =>
    say({ kind: 'failed', why: error instanceof Error ? error.message : String(error) }),
  );
});

const say = (said: CarrySaid): void => postMessage(said);

const follow = async (ask: CarryAsk): Promise<void> => {
  const tracker = cameraTrackerOf({ seed: SEED, leftOut: [] });
  const frames: TrackedFrame[] = [];
  const every = () => true;
  const why = await greyFrames(ask, ask.fromFrame, ask.toFrame, every, (at, { grey, width, height }) => {
    const tracked = tracker.next(at, { widthPx: width, heightPx: height, grey });
    frames.push(inShownPixels(tracked, ask.widthPx / width, ask.heightPx / height));
    say({ kind: 'followed', frameCount: frames.length });
  });
  if (why !== undefined) return say({ kind: 'failed', why });
  const picture = { widthPx: ask.widthPx, heightPx: ask.heightPx };
  say({ kind: 'done', frames, lens: lensTermOf({ frames, picture }) });
};

/** Films whose pixels are not square are shown wider or higher than they are coded. */
const inShownPixels = (tracked: TrackedFrame, across: number, down: number): TrackedFrame =>
  across === 1 && down === 1
    ? tracked
    : { ...tracked, pairs: tracked.pairs.map((value, i) => value * (i % 2 === 0 ? across : down)) };
