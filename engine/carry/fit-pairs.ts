import { factorInto, inverseOfFactored } from '../film/matrix.ts';
import { linearStartOf, refinedFitOf } from '../film/refine-fit.ts';
import { scaleInPlace } from '../film/scaled-pins.ts';
import type { Random } from '../random/random.ts';
import { type None, noneBecause } from '../units/none.ts';
import { AGREES_WITHIN, LEAST_AGREEING, LEAST_SHARE } from './carry-rows.ts';
import type { ScaledMap } from './scaled-map.ts';

/** Points of one picture and where they are in another, pixels: x, y, x', y' of each in turn. */
export type Pairs = Float32Array | Float64Array;

/** The move of a camera between two pictures. */
export interface PairFit {
  readonly map: ScaledMap;
  /** Standard deviation of a pair per axis, pixels, by its scatter. */
  readonly sdPx: number;
  /** Which pairs agree, by their place in the list. */
  readonly agreeing: readonly number[];
  /** Which pairs are not far off: those that agree, and those that a lens may have bent away. */
  readonly near: readonly number[];
}

/** Chance that no sample of four was free of strays, at which the search ends. */
const MISSED_CHANCE = 1e-3;
const MOST_SAMPLES = 500;
const ROUNDS = 4;

/**
 * The projective move that most pairs agree on: samples of four (RANSAC), then the least Σ of squared distances in the second
 * picture over those that agree, with covariance σ²(JᵀJ)⁻¹. Skaters and score boxes, which move by themselves, fall out. `none` when too few
 * pairs are given or agree. Source: Fischler & Bolles 1981; Hartley & Zisserman 2004, 4.7 (from memory).
 */
export const fitPairs = (pairs: Pairs, random: Random): PairFit | None<'tooFewPoints' | 'noAgreement'> => {
  const count = pairs.length / 4;
  if (count < LEAST_AGREEING.value) return noneBecause('tooFewPoints');
  const sampled = bestSample(pairs, count, random);
  const needed = Math.max(LEAST_AGREEING.value, LEAST_SHARE.value * count);
  if (sampled.length < needed) return noneBecause('noAgreement');
  const settled = settledFit(pairs, sampled);
  return settled === null || settled.agreeing.length < needed ? noneBecause('noAgreement') : settled;
};

/**
 * Fits the pairs given, leaves out strays by their own scatter and fits again, at most `rounds` (≥ 1) times; with one round all
 * count. Null when they do not fix a move. Source: as `fitPairs`.
 */
export const settledFit = (pairs: Pairs, from: readonly number[], rounds = ROUNDS): PairFit | null => {
  let agreeing = from;
  let fit: { map: ScaledMap; missesPx: Float64Array } | null = null;
  let sdPx = 0;
  for (let round = 0; round < rounds; round++) {
    fit = leastSquares(pairs, agreeing);
    if (fit === null) return null;
    const { missesPx } = fit;
    const sorted = agreeing.map(i => missesPx[i]!).sort((a, b) => a - b);
    // The median of a distance with σ per axis is 1.1774 σ (Rayleigh).
    sdPx = Math.max(0.01, sorted[sorted.length >> 1]! / 1.1774);
    if (rounds === 1) break;
    const limit = Math.min(AGREES_WITHIN.value, Math.max(0.3, 3 * sdPx));
    const next = from.filter(i => missesPx[i]! <= limit);
    if (next.length < 8) return null;
    const isSettled = next.length === agreeing.length;
    agreeing = next;
    if (isSettled && round > 0) break;
  }
  let sum = 0;
  for (const i of agreeing) sum += fit!.missesPx[i]! ** 2;
  sdPx = Math.sqrt(sum / Math.max(1, 2 * agreeing.length - 8));
  const { map } = fit!;
  const varianceScaled = (sdPx * map.to.per) ** 2;
  return {
    map: { ...map, covariance: Float64Array.from(map.covariance, entry => entry * varianceScaled) },
    sdPx,
    agreeing,
    near: from.filter(i => fit!.missesPx[i]! <= AGREES_WITHIN.value),
  };
};

/** Unit covariance, and the miss of every pair, infinite behind the horizon. */
const leastSquares = (
  pairs: Pairs,
  chosen: readonly number[],
): { map: ScaledMap; missesPx: Float64Array } | null => {
  const [x, y, u, v] = [0, 1, 2, 3].map(k => Float64Array.from(chosen, i => pairs[4 * i + k]!)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const from = scaleInPlace(x, y);
  const to = scaleInPlace(u, v);
  if (from === null || to === null) return null;
  const refined = refinedFitOf({ count: chosen.length, x, y, u, v });
  if (refined === null) return null;
  const factor = new Float64Array(64);
  if (!factorInto(refined.normal, factor, 8)) return null;
  const map: ScaledMap = {
    from: { x: from.x, y: from.y, per: from.scale },
    to: { x: to.x, y: to.y, per: to.scale },
    coefficients: refined.coefficients,
    covariance: inverseOfFactored(factor, 8),
  };
  return { map, missesPx: missesOf(pairs, map) };
};

const missesOf = (pairs: Pairs, { from, to, coefficients: h }: ScaledMap): Float64Array => {
  const count = pairs.length / 4;
  const misses = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const x = (pairs[4 * i]! - from.x) * from.per;
    const y = (pairs[4 * i + 1]! - from.y) * from.per;
    const w = h[6]! * x + h[7]! * y + 1;
    const u = (h[0]! * x + h[1]! * y + h[2]!) / w / to.per + to.x - pairs[4 * i + 2]!;
    const v = (h[3]! * x + h[4]! * y + h[5]!) / w / to.per + to.y - pairs[4 * i + 3]!;
    misses[i] = w > 0 ? Math.sqrt(u * u + v * v) : Number.POSITIVE_INFINITY;
  }
  return misses;
};

const bestSample = (pairs: Pairs, count: number, random: Random): number[] => {
  // One scale for all samples: pictures are some hundred pixels wide.
  const per = 1 / 400;
  const plane = [0, 1, 2, 3].map(k => {
    let middle = 0;
    for (let i = 0; i < count; i++) middle += pairs[4 * i + k]! / count;
    return Float64Array.from({ length: count }, (_, i) => (pairs[4 * i + k]! - middle) * per);
  }) as [Float64Array, Float64Array, Float64Array, Float64Array];
  const limitSq = (AGREES_WITHIN.value * per) ** 2;
  let best: number[] = [];
  let needed = MOST_SAMPLES;
  for (let sample = 0; sample < needed; sample++) {
    const four = fourOf(count, random);
    const [x, y, u, v] = plane.map(values => Float64Array.from(four, i => values[i]!)) as typeof plane;
    const h = linearStartOf({ count: 4, x, y, u, v });
    if (h === null) continue;
    const agreeing = agreeingWith(h, plane, count, limitSq);
    if (agreeing.length <= best.length) continue;
    best = agreeing;
    const free = (best.length / count) ** 4;
    needed = Math.min(MOST_SAMPLES, Math.log(MISSED_CHANCE) / Math.log(Math.max(1e-12, 1 - free)));
    // The first good sample stands on four points with an error each: let a few more try.
    needed = Math.max(needed, 20);
  }
  return best;
};

const fourOf = (count: number, random: Random): number[] => {
  const four: number[] = [];
  while (four.length < 4) {
    const i = random.below(count);
    if (!four.includes(i)) four.push(i);
  }
  return four;
};

const agreeingWith = (
  h: Float64Array,
  [x, y, u, v]: readonly [Float64Array, Float64Array, Float64Array, Float64Array],
  count: number,
  limitSq: number,
): number[] => {
  const agreeing: number[] = [];
  for (let i = 0; i < count; i++) {
    const w = h[6]! * x[i]! + h[7]! * y[i]! + 1;
    if (!(w > 0.01)) continue;
    const du = (h[0]! * x[i]! + h[1]! * y[i]! + h[2]!) / w - u[i]!;
    const dv = (h[3]! * x[i]! + h[4]! * y[i]! + h[5]!) / w - v[i]!;
    if (du * du + dv * dv <= limitSq) agreeing.push(i);
  }
  return agreeing;
};
