import { type MeanIn, meansByCounting, meansBySums } from './area-sums.ts';
import { ICE, NO_PART } from './not-ice.ts';
import { FOUND_HALF_WIDTH, FOUND_HEIGHT, HALF_STANCE, LEAST_BODY } from './people-rows.ts';

/** How somebody upright is drawn at a pixel: a metre across, a metre up, and a metre of ice away from the camera, pixels. */
export interface Stature {
  readonly acrossPx: number;
  readonly upPx: number;
  readonly awayPx: number;
}

/** A body found: the middle between its skates, whether they are seen, and how much more body than not its outline holds. */
export interface StandingBody {
  readonly footX: number;
  readonly footY: number;
  /** The lowest row of it. */
  readonly lowestY: number;
  /** Else nobody can say where it stands. */
  readonly areFeetSeen: boolean;
  readonly clearness: number;
}

/**
 * Bodies that stand on the ice, the clearest first. An outline of a body’s size is laid all over the picture; the best takes what it
 * covers away from the others.
 */
export const standingBodies = (
  weights: Float32Array,
  mask: Uint8Array,
  { width, height }: { readonly width: number; readonly height: number },
  statureAt: (x: number, y: number) => Stature | null,
): StandingBody[] => {
  const left = weights.slice();
  const first = meansBySums(weights, mask, width, height);
  const anew = meansByCounting(left, mask, width, height);
  const tries: Try[] = [];
  for (let y = STEP_PX; y < height; y += STEP_PX) {
    for (let x = STEP_PX; x < width; x += STEP_PX) {
      const stature = mask[y * width + x] === NO_PART ? null : statureAt(x, y);
      const clearness = stature ? clearnessOf(first, x, y, stature) : 0;
      if (stature && clearness > LEAST_BODY.value) tries.push({ x, y, stature, clearness });
    }
  }
  tries.sort((a, b) => a.clearness - b.clearness);
  const found: StandingBody[] = [];
  for (let best = tries.pop(); best !== undefined; best = tries.pop()) {
    const clearness = clearnessOf(anew, best.x, best.y, best.stature);
    if (clearness < LEAST_BODY.value) continue;
    if (clearness < best.clearness - STALE) {
      putBack(tries, { ...best, clearness });
      continue;
    }
    const foot = footOf(left, mask, { width, height }, best);
    takeAway(left, width, height, best, foot.lowestY);
    const { x, lowestY } = foot;
    found.push({
      footX: x,
      footY: lowestY - HALF_STANCE.value * best.stature.awayPx,
      lowestY,
      areFeetSeen: areFeetSeen(mask, width, height, x, lowestY),
      clearness,
    });
  }
  return found;
};

interface Try {
  readonly x: number;
  readonly y: number;
  readonly stature: Stature;
  readonly clearness: number;
}

const STEP_PX = 2;
const STALE = 0.02;

/** By thirds of the height, so that something flat on the ice, which has no upper third, is nobody. */
const clearnessOf = (meanIn: MeanIn, x: number, y: number, { acrossPx, upPx }: Stature): number => {
  const half = FOUND_HALF_WIDTH.value * acrossPx;
  const third = (FOUND_HEIGHT.value / 3) * upPx;
  let [sum, seen, least] = [0, 0, 1];
  for (let part = 0; part < 3; part++) {
    const [mean, share] = meanIn(x - half, y - (part + 1) * third, x + half, y - part * third);
    if (share === 0) continue;
    sum += mean * share;
    seen += share;
    least = Math.min(least, mean);
  }
  if (seen < LEAST_THIRDS || least < LEAST_THIRD) return 0;
  const [top, bottom] = [y - 1.4 * upPx, y - 0.3 * upPx];
  const [before] = meanIn(x - 2.6 * half, top, x - 1.5 * half, bottom);
  const [behind] = meanIn(x + 1.5 * half, top, x + 2.6 * half, bottom);
  const [under] = meanIn(x - 1.25 * half, y + 0.03 * upPx, x + 1.25 * half, y + 0.3 * upPx);
  return sum / seen - BESIDE * (before + behind) - UNDER * under;
};
const LEAST_THIRDS = 1.2;
const LEAST_THIRD = 0.12;
const BESIDE = 0.35;
const UNDER = 0.5;

/**
 * The lowest row that is as wide as a skate, and the middle of the legs above it. Where the head is before something that is no ice,
 * the outline may sit on a trunk: then the legs are followed down from it.
 */
const footOf = (
  weights: Float32Array,
  mask: Uint8Array,
  { width, height }: { readonly width: number; readonly height: number },
  { x, y, stature: { acrossPx, upPx } }: Try,
): { x: number; lowestY: number } => {
  const from = Math.max(0, Math.round(x - ASIDE * acrossPx));
  const to = Math.min(width, Math.round(x + ASIDE * acrossPx));
  const isWide = (row: number): boolean => {
    let wide = 0;
    for (let at = row * width + from; at < row * width + to; at++) wide += Math.min(1, 2 * weights[at]! ** 2);
    return wide >= Math.max(1.5, SKATE * acrossPx);
  };
  const highest = Math.max(0, y - 0.7 * upPx);
  let row = Math.min(height, Math.round(y + BELOW * upPx)) - 1;
  while (row > highest && !isWide(row)) row--;
  if (row <= highest) return { x, lowestY: y };
  const headRow = Math.max(0, Math.round(y - FOUND_HEIGHT.value * upPx));
  if (mask[headRow * width + x] === NO_PART) {
    const lastRow = Math.min(height - 1, Math.round(y + LEGS * upPx));
    let lower = row;
    while (lower < lastRow && isWide(lower + 1)) lower++;
    // Not so where somebody nearer goes on from there.
    if (lower < lastRow) row = lower;
  }
  let [sum, moment] = [0, 0];
  for (let legs = Math.max(0, Math.round(row - 0.5 * upPx)); legs <= row; legs++) {
    for (let column = from; column < to; column++) {
      const weight = weights[legs * width + column]!;
      sum += weight;
      moment += weight * (column + 0.5);
    }
  }
  return { x: moment / sum, lowestY: row + 1 };
};
/** Metres. */
const LEGS = 0.8;
const BELOW = 0.35;
const ASIDE = 0.42;
const SKATE = 0.09;

const takeAway = (
  weights: Float32Array,
  width: number,
  height: number,
  { x, stature: { acrossPx, upPx } }: Try,
  lowestY: number,
): void => {
  const from = Math.max(0, Math.round(x - 0.5 * acrossPx));
  const to = Math.min(width, Math.round(x + 0.5 * acrossPx));
  const lastRow = Math.min(height, Math.round(lowestY + 0.12 * upPx));
  for (let row = Math.max(0, Math.round(lowestY - 1.85 * upPx)); row < lastRow; row++) {
    weights.fill(0, row * width + from, row * width + to);
  }
};

/** Ice must show right below: else boards, the picture’s edge or something else hides where the feet are. */
const areFeetSeen = (
  mask: Uint8Array,
  width: number,
  height: number,
  x: number,
  lowestY: number,
): boolean => {
  const row = Math.round(lowestY) + 1;
  if (row >= height) return false;
  const column = Math.max(0, Math.min(width - 1, Math.floor(x)));
  return column > 1 && column < width - 2 && (mask[row * width + column] ?? ICE) !== NO_PART;
};

const putBack = (tries: Try[], one: Try): void => {
  let [low, high] = [0, tries.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (tries[middle]!.clearness < one.clearness) low = middle + 1;
    else high = middle;
  }
  tries.splice(low, 0, one);
};
