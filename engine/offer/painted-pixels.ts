import type { PaintedPixels } from './find-lines.ts';

/** Pixels of one paint map of at least so much paint (> 0), their centres in pixels. */
export const paintedPixels = (paint: Float32Array, widthPx: number, least: number): PaintedPixels => {
  const [x, y, strength]: [number[], number[], number[]] = [[], [], []];
  for (let at = 0; at < paint.length; at++) {
    if (paint[at]! < least) continue;
    const column = at % widthPx;
    x.push(column + 0.5);
    y.push((at - column) / widthPx + 0.5);
    strength.push(Math.min(FULL, paint[at]!));
  }
  return { xPx: Float64Array.from(x), yPx: Float64Array.from(y), strength: Float64Array.from(strength) };
};

/** Paint stronger than this says no more. */
const FULL = 0.4;
