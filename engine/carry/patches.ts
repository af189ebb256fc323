import type { PicturePoints } from './grey-picture.ts';
import type { PyramidLevel } from './pyramid.ts';

/** Half the side of the square that is followed, without its middle: 21 × 21 px in all. */
export const HALF_WINDOW = 10;
const SIDE = 2 * HALF_WINDOW + 1;
export const WINDOW_AREA = SIDE * SIDE;

/** What surrounds each point on each level, ready to be looked for in any other picture. */
export interface Patches {
  readonly points: PicturePoints;
  readonly levels: readonly PatchLevel[];
}

/** All points of one level one after the other: grey, its slopes, and the inverse of the slopes' sum of products. */
export interface PatchLevel {
  readonly grey: Float32Array;
  readonly slopeX: Float32Array;
  readonly slopeY: Float32Array;
  /** Three numbers a point: xx, xy, yy of the inverse; not a number where the patch has no two directions. */
  readonly inverse: Float64Array;
}

/**
 * Cuts out the surroundings of points, on every level of a pyramid. Slopes are Scharr's. A patch whose smaller eigenvalue, per
 * pixel, is under `leastStrength` (≥ 0, (grey/px)²) cannot be followed on that level.
 * Source: Bouguet 2000, Pyramidal Implementation of the Lucas Kanade Feature Tracker (from memory).
 */
export const patchesOf = (
  pyramid: readonly PyramidLevel[],
  points: PicturePoints,
  leastStrength: number,
): Patches => ({
  points,
  levels: pyramid.map((level, depth) => patchLevelOf(level, 2 ** depth, points, leastStrength)),
});

const patchLevelOf = (
  level: PyramidLevel,
  factor: number,
  { xPx, yPx }: PicturePoints,
  leastStrength: number,
): PatchLevel => {
  const count = xPx.length;
  const grey = new Float32Array(count * WINDOW_AREA);
  const slopeX = new Float32Array(count * WINDOW_AREA);
  const slopeY = new Float32Array(count * WINDOW_AREA);
  const inverse = new Float64Array(3 * count);
  const wide = new Float32Array((SIDE + 2) * (SIDE + 2));
  for (let point = 0; point < count; point++) {
    const x = (xPx[point]! - 0.5) / factor;
    const y = (yPx[point]! - 0.5) / factor;
    sampleInto(wide, level, x - HALF_WINDOW - 1, y - HALF_WINDOW - 1, SIDE + 2);
    let [xx, xy, yy] = [0, 0, 0];
    for (let row = 0, at = point * WINDOW_AREA; row < SIDE; row++) {
      for (let column = 0, i = (row + 1) * (SIDE + 2) + 1; column < SIDE; column++, i++, at++) {
        const above = i - SIDE - 2;
        const below = i + SIDE + 2;
        const byX =
          (3 * (wide[above + 1]! - wide[above - 1]! + wide[below + 1]! - wide[below - 1]!) +
            10 * (wide[i + 1]! - wide[i - 1]!)) /
          32;
        const byY =
          (3 * (wide[below - 1]! - wide[above - 1]! + wide[below + 1]! - wide[above + 1]!) +
            10 * (wide[below]! - wide[above]!)) /
          32;
        grey[at] = wide[i]!;
        slopeX[at] = byX;
        slopeY[at] = byY;
        xx += byX * byX;
        xy += byX * byY;
        yy += byY * byY;
      }
    }
    const smaller = ((xx + yy) / 2 - Math.hypot((xx - yy) / 2, xy)) / WINDOW_AREA;
    const determinant = xx * yy - xy * xy;
    const isBlind = !(smaller >= leastStrength) || !(determinant > 0);
    inverse[3 * point] = isBlind ? Number.NaN : yy / determinant;
    inverse[3 * point + 1] = isBlind ? Number.NaN : -xy / determinant;
    inverse[3 * point + 2] = isBlind ? Number.NaN : xx / determinant;
  }
  return { grey, slopeX, slopeY, inverse };
};

/** `side` × `side` samples from (x, y) on, in array places (pixel centres are whole numbers); edges are repeated. */
export const sampleInto = (
  into: Float32Array,
  { width, height, grey }: PyramidLevel,
  x: number,
  y: number,
  side: number,
): void => {
  const left = Math.floor(x);
  const top = Math.floor(y);
  const fx = x - left;
  const fy = y - top;
  const isInside = left >= 0 && top >= 0 && left + side < width && top + side < height;
  for (let row = 0, at = 0; row < side; row++) {
    const upper = width * (isInside ? top + row : clamp(top + row, height));
    const lower = width * (isInside ? top + row + 1 : clamp(top + row + 1, height));
    const first = isInside ? left : clamp(left, width);
    let before = grey[upper + first]! * (1 - fy) + grey[lower + first]! * fy;
    for (let column = 1; column <= side; column++, at++) {
      const i = isInside ? left + column : clamp(left + column, width);
      const own = grey[upper + i]! * (1 - fy) + grey[lower + i]! * fy;
      into[at] = before * (1 - fx) + own * fx;
      before = own;
    }
  }
};

const clamp = (index: number, count: number): number => (index < 0 ? 0 : index >= count ? count - 1 : index);
