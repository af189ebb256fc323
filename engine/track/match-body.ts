import { COLUMNS, ROWS } from './body-patch.ts';

/** What a skater looks like, and how much of it counts. */
export interface BodyLook {
  readonly grey: Float32Array;
  readonly weights: Float32Array;
  /** Weighted mean square by which it stands out from its ground. */
  readonly contrast: number;
}

/** A look, and how much it counts beside others. */
export interface Sought {
  readonly look: BodyLook;
  readonly share: number;
}

/** The likest place: samples across and up from the middle of the search, and how unlike it is (0 the same, 1 as unlike as bare ice). */
export interface BodyMatch {
  readonly across: number;
  readonly up: number;
  readonly unlike: number;
}

export const lookOf = (grey: Float32Array, weights: Float32Array, ground: number): BodyLook => {
  let sum = 0;
  let whole = 0;
  for (let i = 0; i < grey.length; i++) {
    const value = grey[i]!;
    if (Number.isNaN(value)) continue;
    sum += weights[i]! * (value - ground) ** 2;
    whole += weights[i]!;
  }
  return { grey, weights, contrast: whole > 0 ? sum / whole : 0 };
};

/**
 * Where within `margin` samples all round one or several looks (shares that sum to 1) are found in a patch that is so much wider, to a part of a sample; places far from the middle cost
 * a little. Null when nothing can be compared. Source: weighted squared differences; the parabola through three neighbours.
 */
export const matchBody = (
  sought: readonly Sought[],
  wide: Float32Array,
  margin: number,
): BodyMatch | null => {
  const side = 2 * margin + 1;
  const costs = new Float64Array(side * side).fill(Number.NaN);
  let best = -1;
  const weigh = (across: number, up: number): void => {
    const at = side * up + across;
    if (across < 0 || up < 0 || across >= side || up >= side || !Number.isNaN(costs[at]!)) return;
    let cost = 0;
    for (const { look, share } of sought) cost += share * unlikeness(look, wide, margin, across, up);
    const away = Math.hypot(across - margin, up - margin) / (margin + 1);
    costs[at] = cost + AWAY_COST * away * away;
    if (Number.isFinite(cost) && (best < 0 || costs[at]! < costs[best]!)) best = at;
  };
  // Every second place first: a body is many samples wide.
  for (let up = margin & 1; up < side; up += 2) {
    for (let across = margin & 1; across < side; across += 2) weigh(across, up);
  }
  for (let round = 0, last = -2; best >= 0 && last !== best && round < ROUNDS; round++) {
    last = best;
    for (let dy = -1; dy <= 1; dy++) {
      for (let dx = -1; dx <= 1; dx++) weigh((last % side) + dx, Math.floor(last / side) + dy);
    }
  }
  if (best < 0) return null;
  const across = best % side;
  const up = Math.floor(best / side);
  const away = Math.hypot(across - margin, up - margin) / (margin + 1);
  const at = (dx: number, dy: number) => {
    const [x, y] = [across + dx, up + dy];
    return x < 0 || y < 0 || x >= side || y >= side ? Number.NaN : costs[y * side + x]!;
  };
  return {
    across: across - margin + lowest(at(-1, 0), at(0, 0), at(1, 0)),
    up: up - margin + lowest(at(0, -1), at(0, 0), at(0, 1)),
    unlike: costs[best]! - AWAY_COST * away * away,
  };
};

const AWAY_COST = 0.05;
const ROUNDS = 4;

const unlikeness = (
  { grey, weights, contrast }: BodyLook,
  wide: Float32Array,
  margin: number,
  across: number,
  up: number,
): number => {
  const columns = COLUMNS + 2 * margin;
  let sum = 0;
  let whole = 0;
  let all = 0;
  for (let row = 0, i = 0; row < ROWS; row++) {
    let at = (row + up) * columns + across;
    for (let column = 0; column < COLUMNS; column++, i++, at++) {
      const weight = weights[i]!;
      const miss = grey[i]! - wide[at]!;
      all += weight;
      // Outside the picture nothing is compared.
      if (Number.isNaN(miss)) continue;
      sum += weight * miss * miss;
      whole += weight;
    }
  }
  return whole > LEAST_SEEN * all ? sum / whole / Math.max(contrast, LEAST_CONTRAST) : Number.NaN;
};

/** So much of a body must be in the picture. */
const LEAST_SEEN = 0.5;
/** Coding noise, grey². */
const LEAST_CONTRAST = 60;

const lowest = (before: number, here: number, after: number): number => {
  const bend = before - 2 * here + after;
  if (!(bend > 0)) return 0;
  return Math.max(-0.5, Math.min(0.5, (before - after) / (2 * bend)));
};
