import type { PicturePoints } from './grey-picture.ts';
import { HALF_WINDOW, type Patches, sampleInto, WINDOW_AREA } from './patches.ts';
import type { PyramidLevel } from './pyramid.ts';

/** Where patches were found in another picture. */
export interface Followed extends PicturePoints {
  /** 1 where the point was found, 0 where it was not. */
  readonly found: Uint8Array;
  /** Mean absolute difference of grey between patch and place, 0–255. */
  readonly difference: Float64Array;
}

/** A step this short, px of the level, ends the search there; coarse levels only lead to the finer. */
const SETTLED_PX = 0.01;
const SETTLED_COARSE_PX = 0.05;
const MOST_STEPS = 30;

/**
 * Looks for patches in another picture, from the guessed places on, coarse to fine; pixels of the shown picture. A point is not
 * found when its patch says nothing, the search does not settle, or its place leaves the picture. Guesses may be anything; far ones
 * are reached over `2^(levels − 1) · 10` px at most. Source: Lucas & Kanade 1981; Bouguet 2000 (from memory).
 */
export const followPatches = (
  patches: Patches,
  pyramid: readonly PyramidLevel[],
  guess: PicturePoints,
): Followed => {
  const count = patches.points.xPx.length;
  const xPx = Float64Array.from(guess.xPx);
  const yPx = Float64Array.from(guess.yPx);
  const found = new Uint8Array(count);
  const difference = new Float64Array(count);
  const seen = new Float32Array(WINDOW_AREA);
  const [base] = pyramid;
  const place = new Float64Array(2);
  const depthCount = Math.min(patches.levels.length, pyramid.length);
  for (let point = 0; point < count; point++) {
    place[0] = xPx[point]! - 0.5;
    place[1] = yPx[point]! - 0.5;
    let isFound = Number.isFinite(place[0]) && Number.isFinite(place[1]);
    for (let depth = depthCount - 1; depth >= 0 && isFound; depth--) {
      const settled = searchLevel(patches, point, depth, pyramid[depth]!, place, seen);
      // A coarse level may see too little; only the finest must answer.
      if (depth === 0) isFound = settled;
    }
    const [x, y] = [place[0]!, place[1]!];
    isFound = isFound && x >= 0 && y >= 0 && x <= base!.width - 1 && y <= base!.height - 1;
    xPx[point] = x + 0.5;
    yPx[point] = y + 0.5;
    found[point] = isFound ? 1 : 0;
    difference[point] = isFound ? differenceAt(patches, point, base!, x, y, seen) : Number.POSITIVE_INFINITY;
  }
  return { xPx, yPx, found, difference };
};

/** Moves `place` (array places of the finest level) on one level; false when it is blind there or does not settle. */
const searchLevel = (
  patches: Patches,
  point: number,
  depth: number,
  level: PyramidLevel,
  place: Float64Array,
  seen: Float32Array,
): boolean => {
  const { grey, slopeX, slopeY, inverse } = patches.levels[depth]!;
  const ixx = inverse[3 * point]!;
  const ixy = inverse[3 * point + 1]!;
  const iyy = inverse[3 * point + 2]!;
  if (Number.isNaN(ixx)) return false;
  const factor = 2 ** depth;
  let x = place[0]! / factor;
  let y = place[1]! / factor;
  const settled = depth === 0 ? SETTLED_PX : SETTLED_COARSE_PX;
  const from = point * WINDOW_AREA;
  let [lastX, lastY] = [0, 0];
  for (let step = 0; step < MOST_STEPS; step++) {
    if (!(x > -HALF_WINDOW && y > -HALF_WINDOW)) return false;
    if (!(x < level.width + HALF_WINDOW && y < level.height + HALF_WINDOW)) return false;
    sampleInto(seen, level, x - HALF_WINDOW, y - HALF_WINDOW, 2 * HALF_WINDOW + 1);
    let bx = 0;
    let by = 0;
    for (let i = 0, at = from; i < WINDOW_AREA; i++, at++) {
      const miss = grey[at]! - seen[i]!;
      bx += miss * slopeX[at]!;
      by += miss * slopeY[at]!;
    }
    let dx = ixx * bx + ixy * by;
    let dy = ixy * bx + iyy * by;
    // Between two places that throw it back and forth the middle is right.
    const swings = step > 0 && Math.abs(dx + lastX) < settled && Math.abs(dy + lastY) < settled;
    if (swings) {
      dx /= 2;
      dy /= 2;
    }
    x += dx;
    y += dy;
    [lastX, lastY] = [dx, dy];
    if (swings || dx * dx + dy * dy < settled * settled) break;
  }
  place[0] = x * factor;
  place[1] = y * factor;
  return Number.isFinite(x) && Number.isFinite(y);
};

const differenceAt = (
  patches: Patches,
  point: number,
  level: PyramidLevel,
  x: number,
  y: number,
  seen: Float32Array,
): number => {
  sampleInto(seen, level, x - HALF_WINDOW, y - HALF_WINDOW, 2 * HALF_WINDOW + 1);
  const { grey } = patches.levels[0]!;
  let sum = 0;
  for (let i = 0, at = point * WINDOW_AREA; i < WINDOW_AREA; i++, at++) sum += Math.abs(grey[at]! - seen[i]!);
  return sum / WINDOW_AREA;
};
