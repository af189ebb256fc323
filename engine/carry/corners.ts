import type { PicturePoints, PictureRect } from './grey-picture.ts';
import type { PyramidLevel } from './pyramid.ts';

/** What makes a corner worth following. */
export interface CornerChoice {
  /** At most so many in each square cell of the picture, so that they lie everywhere. */
  readonly perCell: number;
  readonly cellPx: number;
  /** Least smaller eigenvalue of the gradients' mean product, (grey/px)². */
  readonly leastStrength: number;
  /** No corner nearer than this to the edge of the picture or of what is left out. */
  readonly marginPx: number;
  readonly leftOut: readonly PictureRect[];
}

/**
 * Corners of a picture, pixels of the shown picture: places where the smaller eigenvalue of the mean gradient product
 * over 5 × 5 px is a local maximum, the strongest of each cell. Empty when there are none. Source: Shi & Tomasi 1994, Good Features to
 * Track (from memory).
 */
export const cornersOf = (picture: PyramidLevel, choice: CornerChoice): PicturePoints => {
  const { width, height } = picture;
  const strength = cornerStrengthOf(picture);
  const { cellPx, perCell, leastStrength, marginPx } = choice;
  const margin = Math.max(3, Math.ceil(marginPx));
  const across = Math.ceil(width / cellPx);
  const cells: { x: number; y: number; s: number }[][] = Array.from(
    { length: across * Math.ceil(height / cellPx) },
    () => [],
  );
  for (let y = margin; y < height - margin; y++) {
    for (let x = margin; x < width - margin; x++) {
      const s = strength[y * width + x]!;
      if (s < leastStrength || !isPeak(strength, width, x, y, s)) continue;
      if (isLeftOut(choice, x + 0.5, y + 0.5)) continue;
      cells[across * Math.floor(y / cellPx) + Math.floor(x / cellPx)]!.push({ x, y, s });
    }
  }
  const chosen = cells.flatMap(cell => strongestApart(cell, perCell, cellPx / (perCell + 1)));
  return {
    xPx: Float64Array.from(chosen, ({ x }) => x + 0.5),
    yPx: Float64Array.from(chosen, ({ y }) => y + 0.5),
  };
};

/** The smaller eigenvalue everywhere; 0 within 3 px of the edge. */
const cornerStrengthOf = ({ width, height, grey }: PyramidLevel): Float32Array => {
  const size = width * height;
  const xx = new Float32Array(size);
  const xy = new Float32Array(size);
  const yy = new Float32Array(size);
  for (let y = 1; y < height - 1; y++) {
    for (let i = y * width + 1, end = (y + 1) * width - 1; i < end; i++) {
      const byX = (grey[i + 1]! - grey[i - 1]!) / 2;
      const byY = (grey[i + width]! - grey[i - width]!) / 2;
      xx[i] = byX * byX;
      xy[i] = byX * byY;
      yy[i] = byY * byY;
    }
  }
  for (const plane of [xx, xy, yy]) meanOverFive(plane, width, height);
  for (let i = 0; i < size; i++) {
    const half = (xx[i]! - yy[i]!) / 2;
    xx[i] = (xx[i]! + yy[i]!) / 2 - Math.sqrt(half * half + xy[i]! * xy[i]!);
  }
  for (let y = 0; y < height; y++) {
    if (y < 3 || y >= height - 3) xx.fill(0, y * width, (y + 1) * width);
    else {
      xx.fill(0, y * width, y * width + 3);
      xx.fill(0, (y + 1) * width - 3, (y + 1) * width);
    }
  }
  return xx;
};

/** Mean over 5 × 5, in place; the outer two pixels are not meant. */
const meanOverFive = (plane: Float32Array, width: number, height: number): void => {
  const row = new Float32Array(width);
  for (let y = 0; y < height; y++) {
    const at = y * width;
    for (let x = 2; x < width - 2; x++) {
      const i = at + x;
      row[x] = plane[i - 2]! + plane[i - 1]! + plane[i]! + plane[i + 1]! + plane[i + 2]!;
    }
    plane.set(row, at);
  }
  const last = [0, 1, 2, 3].map(() => new Float32Array(width));
  for (let y = 0; y < height; y++) {
    const own = plane.slice(y * width, (y + 1) * width);
    if (y >= 4) {
      const [a, b, c, d] = last as [Float32Array, Float32Array, Float32Array, Float32Array];
      const at = (y - 2) * width;
      for (let x = 0; x < width; x++) plane[at + x] = (a[x]! + b[x]! + c[x]! + d[x]! + own[x]!) / 25;
    }
    last.shift();
    last.push(own);
  }
};

const isPeak = (s: Float32Array, width: number, x: number, y: number, own: number): boolean => {
  for (let dy = -1; dy <= 1; dy++) {
    for (let dx = -1; dx <= 1; dx++) {
      const other = s[(y + dy) * width + x + dx]!;
      // Of two equal neighbours the later one stays.
      if (other > own || (other === own && (dy > 0 || (dy === 0 && dx > 0)))) return false;
    }
  }
  return true;
};

const isLeftOut = ({ leftOut, marginPx }: CornerChoice, xPx: number, yPx: number): boolean =>
  leftOut.some(
    rect =>
      xPx > rect.leftPx - marginPx &&
      xPx < rect.rightPx + marginPx &&
      yPx > rect.topPx - marginPx &&
      yPx < rect.bottomPx + marginPx,
  );

const strongestApart = <Corner extends { x: number; y: number; s: number }>(
  cell: Corner[],
  most: number,
  apartPx: number,
): Corner[] => {
  cell.sort((a, b) => b.s - a.s);
  const chosen: Corner[] = [];
  for (const corner of cell) {
    if (chosen.length === most) break;
    if (chosen.every(({ x, y }) => Math.hypot(x - corner.x, y - corner.y) >= apartPx)) chosen.push(corner);
  }
  return chosen;
};
