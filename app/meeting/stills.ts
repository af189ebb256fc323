import { drawFrame } from '../film/draw-frame.ts';
import { FrameReader } from '../film/frame-reader.ts';
import type { OpenFilm } from '../film/open-film.ts';

/** Small standing pictures of one film: read one after the other by a reader of their own, and kept. */
export class Stills {
  private readonly reader: FrameReader;
  private readonly kept = new Map<number, Promise<HTMLCanvasElement | undefined>>();
  private turn: Promise<unknown> = Promise.resolve();
  private isClosed = false;

  constructor(
    private readonly film: OpenFilm,
    private readonly mostPx: number = WIDTH_PX,
  ) {
    this.reader = new FrameReader(film);
  }

  /** Undefined when the film has no such picture. */
  at(frameIndex: number): Promise<HTMLCanvasElement | undefined> {
    const found = this.kept.get(frameIndex);
    if (found) return found;
    const made = this.turn.then(() => this.make(frameIndex)).catch(() => undefined);
    this.turn = made;
    this.kept.set(frameIndex, made);
    return made;
  }

  close(): void {
    this.isClosed = true;
    this.reader.close();
  }

  private async make(frameIndex: number): Promise<HTMLCanvasElement | undefined> {
    if (this.isClosed) return undefined;
    const answer = await this.reader.read(frameIndex);
    // Nobody steps on from here: what lies around it need not be decoded.
    this.reader.callOff();
    if (answer.kind !== 'picture') return undefined;
    const whole = document.createElement('canvas');
    drawFrame(whole, answer.picture, this.film);
    const small = document.createElement('canvas');
    small.width = Math.min(this.mostPx, whole.width);
    small.height = Math.round((small.width * whole.height) / whole.width);
    small.getContext('2d')?.drawImage(whole, 0, 0, small.width, small.height);
    return small;
  }
}

/** Twice the width at which the largest of them stands. */
const WIDTH_PX = 720;
