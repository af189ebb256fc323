import type { Drill } from '@icewright/book';
import type { Lengths, Run } from '@icewright/engine';
import {
  BufferTarget,
  CanvasSource,
  getFirstEncodableVideoCodec,
  Mp4OutputFormat,
  Output,
  QUALITY_HIGH,
  WebMOutputFormat,
} from 'mediabunny';
import { FRAMES_A_SECOND, filmPictureOf } from './film-frames.ts';

export type FilmKind = 'webm' | 'mp4';

/** H.264 alone in an MP4: with another codec in it the phone that asked for an MP4 shows nothing. */
const CODECS = { webm: ['vp9', 'vp8', 'av1'], mp4: ['avc'] } as const;

/** Which films this browser can write. */
export async function findFilmKinds(): Promise<readonly FilmKind[]> {
  if (typeof VideoEncoder === 'undefined') return [];
  const found = await Promise.all(
    (['webm', 'mp4'] as const).map(async kind => [kind, await codecFor(kind)] as const),
  );
  return found.filter(([, codec]) => codec !== null).map(([kind]) => kind);
}

export interface FilmWish {
  readonly drill: Drill;
  readonly run: Run;
  readonly lengths: Lengths;
  readonly kind: FilmKind;
  /** Seconds of the rep in a second of film. */
  readonly speedRatio: 1 | 0.5;
  readonly signal: AbortSignal;
  /** Share of the frames that are done. */
  readonly onProgress: (doneRatio: number) => void;
}

/** The rep as a film, 30 frames a second. Null when it was cancelled. */
export async function drillFilm(wish: FilmWish): Promise<Blob | null> {
  const codec = await codecFor(wish.kind);
  if (codec === null) throw new Error(`this browser writes no ${wish.kind}`);
  const picture = await filmPictureOf(wish.drill, wish.run, wish.lengths);
  const output = new Output({
    format: wish.kind === 'webm' ? new WebMOutputFormat() : new Mp4OutputFormat({ fastStart: 'in-memory' }),
    target: new BufferTarget(),
  });
  const source = new CanvasSource(picture.canvas, { codec, quality: QUALITY_HIGH, keyFrameInterval: 1 });
  output.addVideoTrack(source, { frameRate: FRAMES_A_SECOND });
  await output.start();
  const frameCount = frameCountOf(wish.run.durationS, wish.speedRatio);
  for (let frame = 0; frame < frameCount; frame += 1) {
    if (wish.signal.aborted) {
      await output.cancel();
      return null;
    }
    picture.draw(Math.min(wish.run.durationS, (frame / FRAMES_A_SECOND) * wish.speedRatio));
    await source.add(frame / FRAMES_A_SECOND, 1 / FRAMES_A_SECOND);
    wish.onProgress((frame + 1) / frameCount);
    // The page answers between the frames, or nobody could cancel.
    if (frame % 5 === 0) await new Promise(done => setTimeout(done));
  }
  await output.finalize();
  return new Blob([output.target.buffer!], { type: wish.kind === 'webm' ? 'video/webm' : 'video/mp4' });
}

/** From the whistle to the end of the rep, the last moment too. */
export const frameCountOf = (durationS: number, speedRatio: number): number =>
  Math.ceil((durationS / speedRatio) * FRAMES_A_SECOND) + 1;

const codecFor = (kind: FilmKind) =>
  getFirstEncodableVideoCodec([...CODECS[kind]], { width: 1280, height: 640 });
