import { wrapWords } from '../card/wrap-words.ts';
import { type DrillDrawn, drawDrillAt } from '../drill/draw-drill-at.ts';
import { drawKey } from '../drill/key.ts';
import { drawnMarks } from '../drill/used-marks.ts';
import { rinkViewBox } from '../ice/rink.ts';
import { measuringPen } from '../pen/measuring-pen.ts';
import type { Pen } from '../pen/pen.ts';

/** A drill as one picture, px: its title, the drawing, the key of the marks used. */
export interface DrillPictured extends DrillDrawn {
  readonly title: string;
  readonly says: string;
}

const MARGIN = 24;
const WIDTH = 1200;
const TALLEST = 1000;
const TITLE_LINE = 34;
const SAYS_LINE = 22;
const KEY_SCALE = 7;

interface Layout {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly left: number;
  readonly top: number;
  readonly keyY: number;
}

/** Width and height of the picture, px. `pen` measures the words of the key. */
export const drillPictureSize = (
  pen: Pen,
  drawn: DrillPictured,
): { readonly width: number; readonly height: number } => layoutOf(pen, drawn);

export const drawDrillPicture = (pen: Pen, drawn: DrillPictured): void => {
  const layout = layoutOf(pen, drawn);
  const { title, says } = wordsOf(pen, drawn);
  pen.path('halo', sink => sink.rect(0, 0, layout.width, layout.height));
  title.forEach((words, index) => {
    pen.text('sectionTitle', words, MARGIN, MARGIN + index * TITLE_LINE + 22);
  });
  says.forEach((words, index) => {
    pen.text('caption', words, MARGIN, MARGIN + title.length * TITLE_LINE + index * SAYS_LINE + 14);
  });
  drawDrillAt(
    pen,
    drawn,
    { left: layout.left, top: layout.top, scale: layout.scale, k: 1 },
    { scaleBar: true, findings: [] },
  );
  keyAt(pen, drawn, layout.keyY);
};

/** In as many lines as they take; a word wider than the picture ends in an ellipsis. */
const wordsOf = (pen: Pen, { title, says }: DrillPictured) => ({
  title: wrapWords(pen, 'sectionTitle', title, WIDTH - 2 * MARGIN),
  says: wrapWords(pen, 'caption', says, WIDTH - 2 * MARGIN),
});

const layoutOf = (pen: Pen, drawn: DrillPictured): Layout => {
  const [, , width, length] = rinkViewBox(drawn.rink);
  const room = WIDTH - 2 * MARGIN;
  const scale = Math.min(room / width, TALLEST / length);
  const { title, says } = wordsOf(pen, drawn);
  const top = MARGIN + title.length * TITLE_LINE + says.length * SAYS_LINE + 8;
  const keyY = top + length * scale + 14 + KEY_SCALE * 1.45;
  const keyHeight = keyAt(measuringPen(pen), drawn, keyY);
  return {
    width: WIDTH,
    height: Math.ceil(keyY + keyHeight + MARGIN - KEY_SCALE * 1.45),
    scale,
    left: MARGIN + (room - width * scale) / 2,
    top,
    keyY,
  };
};

const keyAt = (pen: Pen, drawn: DrillPictured, y: number): number => {
  const used = drawnMarks([drawn], { ticks: true });
  if (used.length === 0) return 0;
  return drawKey(pen, used, {
    x: MARGIN,
    y,
    width: WIDTH - 2 * MARGIN,
    lettering: 'caption',
    scale: KEY_SCALE,
  });
};
