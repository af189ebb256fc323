import type { PaintMaps } from './paint-maps.ts';

/** Where paint lies across a line of the picture, pixels from the point looked at along its normal; NaN where none stands out. */
export interface Crossing {
  offPx: number;
  /** How much more paint there is than beside it. */
  contrast: number;
}

const MOST = 512;
const sums = new Float64Array(MOST + 1);

/**
 * The place of a painted line of half width `halfPx` (≥ 0) across the normal (length 1) through (xPx, yPx), at most
 * `reachPx` off, into `into`: the window with the most paint against both its sides, then the middle of the paint in it. False when
 * it leaves the picture or nothing stands out. Source: our own rule.
 */
export const crossingInto = (
  { widthPx, heightPx }: PaintMaps,
  paint: Float32Array,
  xPx: number,
  yPx: number,
  normalX: number,
  normalY: number,
  halfPx: number,
  reachPx: number,
  into: Crossing,
): boolean => {
  const half = Math.max(1, Math.round(halfPx / STEP_PX));
  const side = Math.max(3, Math.min(8, half));
  const reach = Math.round(reachPx / STEP_PX);
  const ends = reach + half + GAP + side;
  const count = 2 * ends + 1;
  if (count > MOST) return false;
  const x0 = xPx - normalX * ends * STEP_PX;
  const y0 = yPx - normalY * ends * STEP_PX;
  const x1 = xPx + normalX * ends * STEP_PX;
  const y1 = yPx + normalY * ends * STEP_PX;
  if (!(Math.min(x0, x1) >= 0 && Math.min(y0, y1) >= 0)) return false;
  if (!(Math.max(x0, x1) < widthPx && Math.max(y0, y1) < heightPx)) return false;
  for (let k = 0; k < count; k++) {
    const at = Math.floor(y0 + k * normalY * STEP_PX) * widthPx + Math.floor(x0 + k * normalX * STEP_PX);
    sums[k + 1] = sums[k]! + paint[at]!;
  }
  let best = 0;
  let bestAt = -1;
  for (let s = -reach; s <= reach; s++) {
    const middle = ends + s;
    const line = (sums[middle + half + 1]! - sums[middle - half]!) / (2 * half + 1);
    const left = (sums[middle - half - GAP]! - sums[middle - half - GAP - side]!) / side;
    const right = (sums[middle + half + 1 + GAP + side]! - sums[middle + half + 1 + GAP]!) / side;
    const contrast = line - Math.max(left, right);
    // A little dearer farther off, so that the nearer of two like lines is taken.
    const worth = contrast * (1 - (0.3 * Math.abs(s)) / (reach + 1));
    if (worth <= best) continue;
    best = worth;
    bestAt = middle;
    into.contrast = contrast;
  }
  if (bestAt < 0) return false;
  let [sum, moment] = [0, 0];
  for (let k = bestAt - half - 2; k <= bestAt + half + 2; k++) {
    const value = sums[k + 1]! - sums[k]!;
    sum += value;
    moment += value * (k - ends);
  }
  into.offPx = (moment / sum) * STEP_PX;
  return true;
};

const STEP_PX = 0.5;
/** Steps between a line and what counts as beside it: its blurred edge. */
const GAP = 3;
