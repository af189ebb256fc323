import { cameraTrackerOf, lensTermOf, type TrackedFrame } from '@icewright/engine';
import { ALL_FORMATS, BlobSource, Input, UrlSource, VideoSampleSink } from 'mediabunny';
import { frameBeginningAt } from '../frame-index.ts';
import type { CarryAsk, CarrySaid } from './carry-messages.ts';
import { greyOf, shownGrey } from './grey-of.ts';

const SEED = 4;

/** Follows the camera through a stretch of film; whoever no longer wants it ends the worker. */
addEventListener('message', ({ data }: MessageEvent<CarryAsk>) => {
  follow(data).catch((error: unknown) =>
    say({ kind: 'failed', why: error instanceof Error ? error.message : String(error) }),
  );
});

const say = (said: CarrySaid): void => postMessage(said);

const follow = async (ask: CarryAsk): Promise<void> => {
  const { source, timesS, endS, fromFrame, toFrame } = ask;
  const index = { timesS, endS, frameCount: timesS.length };
  const input = new Input({
    formats: ALL_FORMATS,
    source: 'file' in source ? new BlobSource(source.file) : new UrlSource(source.url),
  });
  try {
    const track = await input.getPrimaryVideoTrack();
    if (!track) return say({ kind: 'failed', why: 'the film has no picture' });
    const tracker = cameraTrackerOf({ seed: SEED, leftOut: [] });
    const frames: TrackedFrame[] = [];
    const until = toFrame + 1 < timesS.length ? timesS[toFrame + 1]! : endS + 1;
    for await (const sample of new VideoSampleSink(track).samples(timesS[fromFrame]!, until)) {
      const at = frameBeginningAt(index, sample.timestamp);
      if (at < fromFrame || at > toFrame || at === frames[frames.length - 1]?.frameIndex) {
        sample.close();
        continue;
      }
      const frame = sample.toVideoFrame();
      sample.close();
      const coded = await greyOf(frame);
      frame.close();
      const { grey, width, height } = shownGrey(coded, ask.rotationDeg, ask.flipped);
      const tracked = tracker.next(at, { widthPx: width, heightPx: height, grey });
      frames.push(inShownPixels(tracked, ask.widthPx / width, ask.heightPx / height));
      say({ kind: 'followed', frameCount: frames.length });
    }
    const picture = { widthPx: ask.widthPx, heightPx: ask.heightPx };
    say({ kind: 'done', frames, lens: lensTermOf({ frames, picture }) });
  } finally {
    input.dispose();
  }
};

/** Films whose pixels are not square are shown wider or higher than they are coded. */
const inShownPixels = (tracked: TrackedFrame, across: number, down: number): TrackedFrame =>
  across === 1 && down === 1
    ? tracked
    : { ...tracked, pairs: tracked.pairs.map((value, i) => value * (i % 2 === 0 ? across : down)) };
