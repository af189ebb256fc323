import type { Bodies } from '../bodies/find-bodies.ts';
import { drawFrame } from '../draw-frame.ts';
import { bodiesBefore, drawOverFilm, type OverFilm } from '../marks/draw-over-film.ts';
import { drawCard } from './draw-card.ts';
import { framesOf } from './frames-of.ts';
import type { ReelFilms } from './reel-films.ts';
import type { ReelItem, ReelStep } from './reel-plan.ts';

/** Puts the pictures of the steps on the canvas of a reel. */
export class ReelPainter {
  /** Pictures that a film could not give: the one before stands in for them. */
  goneCount = 0;
  private readonly context: CanvasRenderingContext2D;
  private readonly own = document.createElement('canvas');
  private frames: ReturnType<typeof framesOf> | undefined;
  private run = '';
  private bodies: { readonly key: string; readonly found: Bodies | undefined } | undefined;
  private ahead: { readonly frameIndex: number; readonly frame: VideoFrame } | undefined;

  constructor(
    private readonly items: readonly ReelItem[],
    private readonly films: ReelFilms,
    private readonly canvas: HTMLCanvasElement,
  ) {
    this.context = canvas.getContext('2d', { alpha: false })!;
  }

  async paint(step: ReelStep): Promise<void> {
    const item = this.items[step.item]!;
    const { width, height } = this.canvas;
    if (step.kind === 'card') return drawCard(this.context, width, height, item.words);
    const { film, overAt } = this.films.get(item.film)!;
    const run = `${step.item}.${step.pass}`;
    if (this.run !== run) {
      this.close();
      this.run = run;
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
    const over = overAt(step.frameIndex);
    const bodies = await this.bodiesBefore(run, step.frameIndex, over);
    this.within(film.widthPx, film.heightPx, () => {
      this.context.drawImage(this.own, 0, 0);
      drawOverFilm(this.context, over, film.widthPx, film.heightPx, bodies);
    });
  }

  /** While a picture is held it is looked through once. */
  private async bodiesBefore(run: string, frameIndex: number, over: OverFilm): Promise<Bodies | undefined> {
    const key = `${run}.${frameIndex}`;
    if (this.bodies?.key !== key) this.bodies = { key, found: await bodiesBefore(this.own, over) };
    return this.bodies.found;
  }

  close(): void {
    this.ahead?.frame.close();
    this.ahead = undefined;
    void this.frames?.return(undefined);
  }

  /** Draws in the film's own pixels: a film of another size stands whole in the middle, on black. */
  private within(widthPx: number, heightPx: number, draw: () => void): void {
    const { context, canvas } = this;
    const scale = Math.min(canvas.width / widthPx, canvas.height / heightPx);
    const [besidePx, belowPx] = [canvas.width - widthPx, canvas.height - heightPx];
    if (besidePx >= 0 && besidePx <= 1 && belowPx >= 0 && belowPx <= 1) {
      draw();
      return;
    }
    context.fillStyle = 'black';
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.save();
    context.translate((canvas.width - scale * widthPx) / 2, (canvas.height - scale * heightPx) / 2);
    context.scale(scale, scale);
    draw();
    context.restore();
  }

  private async next() {
    const step = await this.frames?.next();
    return step && !step.done ? step.value : undefined;
  }
}
