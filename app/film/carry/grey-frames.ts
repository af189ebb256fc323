import { ALL_FORMATS, BlobSource, Input, UrlSource, VideoSampleSink } from 'mediabunny';
import { frameBeginningAt } from '../frame-index.ts';
import type { FilmSource } from '../open-film.ts';
import { type Grey, greyOf, shownGrey } from './grey-of.ts';

/** A film as a worker needs it to decode pictures of its own. */
export interface GreyFilm {
  readonly source: FilmSource;
  /** Of the whole film: the number of a frame is the rank of its time. */
  readonly timesS: Float64Array;
  readonly endS: number;
  readonly rotationDeg: 0 | 90 | 180 | 270;
  readonly flipped: boolean;
}

/**
 * Every wanted frame of a stretch, both ends counted, in the order of showing, grey and as it is shown. Answers why it could not. Runs in a worker.
 */
export const greyFrames = async (
  { source, timesS, endS, rotationDeg, flipped }: GreyFilm,
  fromFrame: number,
  toFrame: number,
  isWanted: (frameIndex: number) => boolean,
  onFrame: (frameIndex: number, grey: Grey) => void,
): Promise<string | undefined> => {
  const index = { timesS, endS, frameCount: timesS.length };
  const input = new Input({
    formats: ALL_FORMATS,
    source: 'file' in source ? new BlobSource(source.file) : new UrlSource(source.url),
  });
  try {
    const track = await input.getPrimaryVideoTrack();
    if (!track) return 'the film has no picture';
    let last = -1;
    const until = toFrame + 1 < timesS.length ? timesS[toFrame + 1]! : endS + 1;
    for await (const sample of new VideoSampleSink(track).samples(timesS[fromFrame]!, until)) {
      const at = frameBeginningAt(index, sample.timestamp);
      if (at < fromFrame || at > toFrame || at === last || !isWanted(at)) {
        sample.close();
        continue;
      }
      last = at;
      const frame = sample.toVideoFrame();
      sample.close();
      const coded = await greyOf(frame);
      frame.close();
      onFrame(at, shownGrey(coded, rotationDeg, flipped));
    }
    return undefined;
  } finally {
    input.dispose();
  }
};
