import {
  CanvasSource,
  Mp4OutputFormat,
  Output,
  QUALITY_HIGH,
  QUALITY_MEDIUM,
  StreamTarget,
  WebMOutputFormat,
} from 'mediabunny';
import { lettersReady } from '../marks/draw-over-film.ts';
import type { ReelFilms } from './reel-films.ts';
import { even, type ReelKind, reelCodec } from './reel-kinds.ts';
import { ReelPainter } from './reel-painter.ts';
import { type ReelItem, type ReelPlan, usualFrameS, writesOf } from './reel-plan.ts';
import type { ReelSize } from './reel-size.ts';
import { soundWriterOf } from './reel-sound.ts';
import type { ReelTarget } from './reel-target.ts';

export interface ReelWish {
  readonly films: ReelFilms;
  readonly items: readonly ReelItem[];
  readonly plan: ReelPlan;
  readonly kind: ReelKind;
  readonly size: ReelSize;
  readonly target: Pick<ReelTarget, 'writable'>;
  readonly withSound: boolean;
  /** For a screen on a wall, or for a phone. */
  readonly quality: 'high' | 'medium';
  readonly signal: AbortSignal;
  readonly onProgress: (done: ReelProgress) => void;
}

export interface ReelProgress {
  /** Seconds of the reel that are written. */
  readonly atS: number;
  readonly byteCount: number;
}

export interface ReelMade {
  readonly sound: 'copied' | 'coded' | 'none';
  /** Pictures that the film could not give: the one before stands in for them. */
  readonly goneCount: number;
}

/** Codes a reel into its target, picture by picture. Undefined when it was called off; the target then holds nothing whole. */
export const makeReel = async (wish: ReelWish): Promise<ReelMade | undefined> => {
  const { films, items, plan, kind, target, signal } = wish;
  const [widthPx, heightPx] = [even(wish.size.widthPx), even(wish.size.heightPx)];
  const codec = await reelCodec(kind, widthPx, heightPx);
  if (codec === null)
    throw new Error(`this browser writes no ${kind === 'mp4' ? 'H.264' : 'WebM'} of this size`);
  await lettersReady();
  const canvas = document.createElement('canvas');
  canvas.width = widthPx;
  canvas.height = heightPx;
  const frameS = Math.min(...[...films.values()].map(({ film }) => usualFrameS(film.index)));
  let byteCount = 0;
  const pictures = new CanvasSource(canvas, {
    codec,
    quality: wish.quality === 'high' ? QUALITY_HIGH : QUALITY_MEDIUM,
    keyFrameInterval: 2,
    onEncodedPacket: packet => {
      byteCount += packet.byteLength;
    },
  });
  const output = new Output({
    format: kind === 'mp4' ? new Mp4OutputFormat({ fastStart: false }) : new WebMOutputFormat(),
    target: new StreamTarget(target.writable, { chunked: true }),
  });
  const sound = wish.withSound ? await soundWriterOf(films, plan.sounds, kind) : undefined;
  output.addVideoTrack(pictures);
  if (sound) output.addAudioTrack(sound.source);
  const painter = new ReelPainter(items, films, canvas);
  try {
    await output.start();
    for (const step of plan.steps) {
      await painter.paint(step);
      for (const { atS, lengthS } of writesOf(step, frameS)) {
        if (signal.aborted) {
          await output.cancel();
          return undefined;
        }
        await sound?.writeUntil(atS + SOUND_AHEAD_S);
        await pictures.add(atS, lengthS);
        await breath();
      }
      wish.onProgress({ atS: step.atS + step.lengthS, byteCount });
    }
    await sound?.writeUntil(Number.POSITIVE_INFINITY);
    await output.finalize();
    return { sound: sound?.how ?? 'none', goneCount: painter.goneCount };
  } catch (error) {
    if (output.state === 'started') await output.cancel();
    throw error;
  } finally {
    painter.close();
    sound?.close();
  }
};

/** Sound and pictures are written side by side, so that neither waits in memory for the other. */
const SOUND_AHEAD_S = 0.5;

/** The page answers between two pictures, or nobody could call it off; not by a timer, which a hidden page runs once a second. */
const breath = (): Promise<void> =>
  new Promise(resolve => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(0);
  });
