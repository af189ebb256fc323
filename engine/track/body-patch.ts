import { type FrameCrop, greyAt } from './frame-crop.ts';
import { BODY_HALF_WIDTH, BODY_HEIGHT } from './track-rows.ts';
import type { Upright } from './upright.ts';

/** One sample every so many metres across and up. */
export const GRID_M = 0.0625;
/** Samples to each side of the feet's middle, below the feet, and above them. */
export const ASIDE = 12;
const BELOW = 4;
const ABOVE = 30;
export const COLUMNS = 2 * ASIDE + 1;
export const ROWS = BELOW + ABOVE + 1;

/** What stands over a foot point, `margin` samples wider all round, row by row from below; not a number outside the crop. */
export const bodyPatch = (
  crop: FrameCrop,
  { footPx, acrossPx, upPx }: Upright,
  margin: number,
): Float32Array => {
  const columns = COLUMNS + 2 * margin;
  const rows = ROWS + 2 * margin;
  const patch = new Float32Array(columns * rows);
  for (let row = 0, at = 0; row < rows; row++) {
    const up = (row - margin - BELOW) * GRID_M;
    for (let column = 0; column < columns; column++, at++) {
      const across = (column - margin - ASIDE) * GRID_M;
      patch[at] = greyAt(
        crop,
        footPx.xPx + across * acrossPx[0] + up * upPx[0],
        footPx.yPx + across * acrossPx[1] + up * upPx[1],
      );
    }
  }
  return patch;
};

/** The grey of what surrounds a body: the median of a patch's left and right edge. */
export const groundGrey = (patch: Float32Array): number => {
  const edge: number[] = [];
  for (let row = 0; row < ROWS; row++) {
    for (const column of [0, 1, COLUMNS - 2, COLUMNS - 1]) {
      const value = patch[row * COLUMNS + column]!;
      if (!Number.isNaN(value)) edge.push(value);
    }
  }
  edge.sort((a, b) => a - b);
  return edge[edge.length >> 1] ?? Number.NaN;
};

/** How much each sample counts: more within the body's outline, and where it stands out from its ground. */
export const bodyWeights = (patch: Float32Array, ground: number): Float32Array => {
  const weights = new Float32Array(COLUMNS * ROWS);
  for (let row = 0, at = 0; row < ROWS; row++) {
    const up = (row - BELOW) * GRID_M;
    const byHeight =
      up < 0
        ? Math.exp(-((up / 0.15) ** 2))
        : up > BODY_HEIGHT.value
          ? Math.exp(-(((up - BODY_HEIGHT.value) / 0.15) ** 2))
          : 1;
    for (let column = 0; column < COLUMNS; column++, at++) {
      const across = ((column - ASIDE) * GRID_M) / BODY_HALF_WIDTH.value;
      const value = patch[at]!;
      const stands = Number.isNaN(value) ? 0 : Math.abs(value - ground);
      weights[at] = byHeight * Math.exp(-across * across) * (FAINT + stands / (stands + CLEAR_GREY));
    }
  }
  return weights;
};
const FAINT = 0.15;
const CLEAR_GREY = 20;
