import type { Drill } from '@icewright/book';
import { type Lengths, type Run, rinkOf } from '@icewright/engine';
import {
  BLACK_PALETTE,
  canvasPen,
  drawDrillOnly,
  drawMoment,
  drawRink,
  type Pen,
  rinkViewBox,
} from '@icewright/picture';

/** Pixels of the film. Both even: encoders take colours by twos. */
const WIDTH_PX = 1280;
const HEAD_PX = 56;
const MARGIN_PX = 20;
/** Routes and start places stay in sight, pale, below those who move. */
const PALE = 0.38;
export const FRAMES_A_SECOND = 30;

const FAMILIES = {
  words: '"Newsreader Variable", Georgia, serif',
  figures: '"Encode Sans Variable", Arial, sans-serif',
};

export interface FilmPicture {
  readonly canvas: HTMLCanvasElement;
  /** Where a point of the ice lies in a frame, px. */
  readonly pixelOf: (xM: number, yM: number) => { readonly x: number; readonly y: number };
  readonly draw: (timeS: number) => void;
}

/** A canvas that shows the rep at any time: the sheet and the drill once, everybody anew. */
export async function filmPictureOf(drill: Drill, run: Run, lengths: Lengths): Promise<FilmPicture> {
  await Promise.all([
    document.fonts.load(`16px ${FAMILIES.figures}`),
    document.fonts.load(`16px ${FAMILIES.words}`),
  ]);
  const rink = rinkOf(drill.rink);
  const [boxX, boxY, boxWidth, boxHeight] = rinkViewBox(rink);
  const scale = (WIDTH_PX - 2 * MARGIN_PX) / boxWidth;
  const height = 2 * Math.ceil((HEAD_PX + boxHeight * scale + MARGIN_PX) / 2);
  const at = { x: MARGIN_PX - boxX * scale, y: HEAD_PX - boxY * scale, scale, k: 1, thinFloor: 0.1 };
  const onIce = (target: HTMLCanvasElement, draw: (pen: Pen) => void) =>
    penOn(target, pen => pen.place(at, () => draw(pen)));

  const ground = canvasOf(height);
  const context = ground.getContext('2d')!;
  context.fillStyle = BLACK_PALETTE.paper;
  context.fillRect(0, 0, WIDTH_PX, height);
  penOn(ground, pen => pen.text('sectionTitle', drill.title, MARGIN_PX, 36));
  onIce(ground, pen => drawRink(pen, rink, { scaleBar: true }));
  const routes = canvasOf(height);
  onIce(routes, pen => drawDrillOnly(pen, drill, rink, { run, lengths, findings: [], ticks: false }));
  context.globalAlpha = PALE;
  context.drawImage(routes, 0, 0);

  const canvas = canvasOf(height);
  const draw = (timeS: number) => {
    canvas.getContext('2d')!.drawImage(ground, 0, 0);
    onIce(canvas, pen => drawMoment(pen, drill, run, timeS));
    penOn(canvas, pen =>
      pen.text('verdict', `${timeS.toFixed(1)} s`, WIDTH_PX - MARGIN_PX, 36, { anchor: 'end' }),
    );
  };
  return { canvas, draw, pixelOf: (xM, yM) => ({ x: at.x + xM * scale, y: at.y - yM * scale }) };
}

function canvasOf(height: number): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = WIDTH_PX;
  canvas.height = height;
  return canvas;
}

function penOn(target: HTMLCanvasElement, draw: (pen: Pen) => void): void {
  draw(canvasPen(target.getContext('2d')!, FAMILIES));
}
