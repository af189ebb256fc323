import { NO_PART } from './not-ice.ts';

/** The mean weight of what is seen in a rectangle, and which share of the rectangle is seen; share 0 where hardly any of it is. */
export type MeanIn = (
  left: number,
  top: number,
  right: number,
  bottom: number,
) => readonly [mean: number, share: number];

/** Means over rectangles of a picture, by sums that are worked out once. Source: summed-area table, Crow 1984 (from memory). */
export const meansBySums = (
  weights: Float32Array,
  mask: Uint8Array,
  width: number,
  height: number,
): MeanIn => {
  const across = width + 1;
  const sums = new Float64Array(across * (height + 1));
  const seen = new Int32Array(across * (height + 1));
  for (let y = 0; y < height; y++) {
    let [sum, count] = [0, 0];
    for (let x = 0; x < width; x++) {
      const at = y * width + x;
      sum += weights[at]!;
      if (mask[at] !== NO_PART) count++;
      const to = (y + 1) * across + x + 1;
      sums[to] = sums[to - across]! + sum;
      seen[to] = seen[to - across]! + count;
    }
  }
  const over = (table: Float64Array | Int32Array, [left, top, right, bottom]: Cells): number =>
    table[bottom * across + right]! -
    table[top * across + right]! -
    table[bottom * across + left]! +
    table[top * across + left]!;
  return meanIn(width, height, cells => [over(sums, cells), over(seen, cells)]);
};

/** The same, counted anew each time: for weights that change. */
export const meansByCounting = (
  weights: Float32Array,
  mask: Uint8Array,
  width: number,
  height: number,
): MeanIn =>
  meanIn(width, height, ([left, top, right, bottom]) => {
    let [sum, count] = [0, 0];
    for (let y = top; y < bottom; y++) {
      for (let at = y * width + left; at < y * width + right; at++) {
        sum += weights[at]!;
        if (mask[at] !== NO_PART) count++;
      }
    }
    return [sum, count];
  });

type Cells = readonly [left: number, top: number, right: number, bottom: number];

const meanIn =
  (width: number, height: number, totals: (cells: Cells) => readonly [sum: number, count: number]): MeanIn =>
  (left, top, right, bottom) => {
    const cells = [
      within(left, width),
      within(top, height),
      within(right, width),
      within(bottom, height),
    ] as const;
    if (cells[2] <= cells[0] || cells[3] <= cells[1]) return NONE;
    const [sum, count] = totals(cells);
    const whole = Math.max(1, (right - left) * (bottom - top));
    return count < LEAST_SEEN * whole ? NONE : [sum / count, Math.min(1, count / whole)];
  };
const NONE = [0, 0] as const;
const LEAST_SEEN = 0.15;

const within = (value: number, most: number): number => Math.max(0, Math.min(most, Math.round(value)));
