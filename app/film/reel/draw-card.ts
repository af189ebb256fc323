import { filmPenOn, type OverContext, unitOf } from '../marks/draw-over-film.ts';

/** A title card: what the moment is about, large, and below it where it stands; on paper, with a graduated rule. */
export const drawCard = (
  context: OverContext,
  widthPx: number,
  heightPx: number,
  [title = '', ...lines]: readonly string[],
): void => {
  const unit = unitOf(widthPx, heightPx);
  const pen = filmPenOn(context);
  context.fillStyle = PAPER;
  context.fillRect(0, 0, widthPx, heightPx);
  const leftPx = widthPx / 12;
  const roomPx = widthPx - 2 * leftPx;
  const size = 58 * unit;
  const titleLines = wrapped(title, words => pen.measure('filmTitle', words, size) <= roomPx);
  let y = heightPx / 2 - (titleLines.length - 1) * 0.6 * size;
  for (const words of titleLines) {
    pen.text('filmTitle', words, leftPx, y, { size });
    y += 1.15 * size;
  }
  y += 0.1 * size;
  for (const words of lines) {
    pen.text('filmTitleSmall', words, leftPx, y, { size: 26 * unit });
    y += 38 * unit;
  }
  rule(context, leftPx, heightPx - 64 * unit, roomPx, unit);
};

const PAPER = '#f2f5f6';
const INK = '#10233a';

const rule = (context: OverContext, leftPx: number, yPx: number, widthPx: number, unit: number): void => {
  const count = 12;
  const height = 6 * unit;
  context.strokeStyle = INK;
  context.fillStyle = INK;
  context.lineWidth = 1.4 * unit;
  context.setLineDash([]);
  for (let i = 0; i < count; i++) {
    const x = leftPx + (i * widthPx) / count;
    if (i % 2 === 0) context.fillRect(x, yPx, widthPx / count, height);
    context.strokeRect(x, yPx, widthPx / count, height);
  }
};

/** As few lines as fit, broken between words. */
const wrapped = (words: string, fits: (line: string) => boolean): string[] => {
  const lines: string[] = [];
  for (const word of words.split(/\s+/).filter(Boolean)) {
    const last = lines[lines.length - 1];
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && fits(longer)) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines.slice(0, 4);
};
