import {
  CanvasSource,
  Mp4OutputFormat,
  Output,
  QUALITY_HIGH,
  StreamTarget,
  WebMOutputFormat,
} from 'mediabunny';
import { drawFrame } from '../draw-frame.ts';
import { drawOverFilm, lettersReady, type OverFilm } from '../marks/draw-over-film.ts';
import type { OpenFilm } from '../open-film.ts';
import { drawCard } from './draw-card.ts';
import { framesOf } from './frames-of.ts';
import { even, type ReelKind, reelCodec } from './reel-kinds.ts';
import { type ReelItem, type ReelPlan, type ReelStep, usualFrameS, writesOf } from './reel-plan.ts';
import { soundWriterOf } from './reel-sound.ts';
import type { ReelTarget } from './reel-target.ts';

export interface ReelWish {
  readonly film: OpenFilm;
  readonly items: readonly ReelItem[];
  readonly plan: ReelPlan;
  readonly kind: ReelKind;
  readonly target: ReelTarget;
  /** What stands over a picture of the film. */
  readonly overAt: (frameIndex: number) => OverFilm;
  readonly withSound: boolean;
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
  const { film, plan, kind, target, signal } = wish;
  const [widthPx, heightPx] = [even(film.widthPx), even(film.heightPx)];
  const codec = await reelCodec(kind, widthPx, heightPx);
  if (codec === null)
    throw new Error(`this browser writes no ${kind === 'mp4' ? 'H.264' : 'WebM'} of this size`);
  await lettersReady();
  const canvas = document.createElement('canvas');
  canvas.width = widthPx;
  canvas.height = heightPx;
  const frameS = usualFrameS(film.index);
  let byteCount = 0;
  const pictures = new CanvasSource(canvas, {
    codec,
    quality: QUALITY_HIGH,
    keyFrameInterval: 2,
    onEncodedPacket: packet => {
      byteCount += packet.byteLength;
    },
  });
  const output = new Output({
    format: kind === 'mp4' ? new Mp4OutputFormat({ fastStart: false }) : new WebMOutputFormat(),
    target: new StreamTarget(target.writable, { chunked: true }),
  });
  const sound = wish.withSound ? await soundWriterOf(film.source, plan.sounds, kind) : undefined;
  output.addVideoTrack(pictures);
  if (sound) output.addAudioTrack(sound.source);
  const painter = new ReelPainter(wish, canvas);
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

/** Puts the pictures of the steps on the canvas. */
class ReelPainter {
  goneCount = 0;
  private readonly context: CanvasRenderingContext2D;
  private readonly own = document.createElement('canvas');
  private frames: ReturnType<typeof framesOf> | undefined;
  private item = -1;
  private ahead: { readonly frameIndex: number; readonly frame: VideoFrame } | undefined;

  constructor(
    private readonly wish: ReelWish,
    private readonly canvas: HTMLCanvasElement,
  ) {
    this.context = canvas.getContext('2d', { alpha: false })!;
  }

  async paint(step: ReelStep): Promise<void> {
    const { items, film, overAt } = this.wish;
    const item = items[step.item]!;
    const { width, height } = this.canvas;
    if (step.kind === 'card') return drawCard(this.context, width, height, item.words);
    if (this.item !== step.item) {
      this.close();
      this.item = step.item;
      this.frames = framesOf(film, item.fromFrame, item.toFrame);
      this.ahead = await this.next();
    }
    while (this.ahead && this.ahead.frameIndex < step.frameIndex) {
      this.ahead.frame.close();
      this.ahead = await this.next();
    }
    if (this.ahead?.frameIndex === step.frameIndex) {
      drawFrame(this.own, this.ahead.frame, film);
      this.ahead.frame.close();
      this.ahead = await this.next();
    } else this.goneCount++;
    this.context.drawImage(this.own, 0, 0);
    drawOverFilm(this.context, overAt(step.frameIndex), film.widthPx, film.heightPx);
  }

  close(): void {
    this.ahead?.frame.close();
    this.ahead = undefined;
    void this.frames?.return(undefined);
  }

  private async next() {
    const step = await this.frames?.next();
    return step && !step.done ? step.value : undefined;
  }
}

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
