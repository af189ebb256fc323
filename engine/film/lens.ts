import type { FilmPoint } from '../units/points.ts';

/**
 * A lens with one term: a point that a straight camera would draw at distance r of the picture's middle, in half
 * diagonals, is shown at r (1 + k1 r²). k1 < 0 pulls corners inwards.
 */
export interface Lens {
  readonly k1: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

/**
 * Where a straight camera would draw a shown point, pixels; any point. By Newton's steps on r, which settle for |k1| < 0.148 (from there on
 * r (1 + k1 r²) turns back) in the picture. Source: by definition of `Lens`.
 */
export const straightOf = ({ k1, widthPx, heightPx }: Lens, { xPx, yPx }: FilmPoint): FilmPoint => {
  if (k1 === 0) return { xPx, yPx };
  const dx = xPx - widthPx / 2;
  const dy = yPx - heightPx / 2;
  const shown = (2 * Math.hypot(dx, dy)) / Math.hypot(widthPx, heightPx);
  if (shown === 0) return { xPx, yPx };
  let r = shown;
  for (let step = 0; step < 40; step++) {
    const by = (r * (1 + k1 * r * r) - shown) / (1 + 3 * k1 * r * r);
    r -= by;
    if (Math.abs(by) < 1e-12) break;
  }
  const scale = r / shown;
  return { xPx: widthPx / 2 + dx * scale, yPx: heightPx / 2 + dy * scale };
};

/** Where a lens shows what a straight camera would draw at a point, pixels; any point. Source: by definition of `Lens`. */
export const shownOf = ({ k1, widthPx, heightPx }: Lens, { xPx, yPx }: FilmPoint): FilmPoint => {
  const dx = xPx - widthPx / 2;
  const dy = yPx - heightPx / 2;
  const rSq = (4 * (dx * dx + dy * dy)) / (widthPx * widthPx + heightPx * heightPx);
  return { xPx: widthPx / 2 + dx * (1 + k1 * rSq), yPx: heightPx / 2 + dy * (1 + k1 * rSq) };
};
