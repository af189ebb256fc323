import { factorInto, solveInPlace } from '../film/matrix.ts';
import { chiSquareTail } from '../film/tails.ts';
import { DISAGREE_AT } from './carry-rows.ts';
import { rescaled, type ScaledMap } from './scaled-map.ts';

/** Two answers for one picture made one. */
export interface Blended {
  readonly map: ScaledMap;
  /** True when they lie further apart than their ± explain; the ± of the blend is then raised to it. */
  readonly disagree: boolean;
}

/**
 * Two maps of the same planes, from independent sources, each weighed by its covariance, in the planes' scale of the first. When
 * they lie further apart than both ± explain, the ± of the blend is raised by √(χ²/8). Null when the second cannot be told
 * in the scale of the first. Source: the least-variance combination (Gauss–Markov); the raise is Birge's ratio 1932 (from memory).
 */
export const blendedMaps = (first: ScaledMap, other: ScaledMap): Blended | null => {
  const second = rescaled(other, first.from, first.to);
  if (second === null) return null;
  const sum = Float64Array.from({ length: 64 }, (_, i) => first.covariance[i]! + second.covariance[i]!);
  const factor = new Float64Array(64);
  if (!factorInto(sum, factor, 8)) return null;
  const apart = Float64Array.from({ length: 8 }, (_, i) => second.coefficients[i]! - first.coefficients[i]!);
  const weighed = Float64Array.from(apart);
  solveInPlace(factor, weighed, 8);
  let chiSquare = 0;
  for (let i = 0; i < 8; i++) chiSquare += apart[i]! * weighed[i]!;
  const coefficients = new Float64Array(8);
  for (let i = 0; i < 8; i++) {
    let shift = 0;
    for (let j = 0; j < 8; j++) shift += first.covariance[8 * i + j]! * weighed[j]!;
    coefficients[i] = first.coefficients[i]! + shift;
  }
  const disagree = chiSquareTail(chiSquare, 8) < DISAGREE_AT.value;
  const raise = disagree ? chiSquare / 8 : 1;
  return {
    map: { ...first, coefficients, covariance: parallel(first.covariance, second.covariance, factor, raise) },
    disagree,
  };
};

/** C1 (C1 + C2)⁻¹ C2, symmetric, times a factor. */
const parallel = (
  first: ArrayLike<number>,
  second: ArrayLike<number>,
  factor: Float64Array,
  raise: number,
): Float64Array => {
  const result = new Float64Array(64);
  const column = new Float64Array(8);
  for (let j = 0; j < 8; j++) {
    for (let i = 0; i < 8; i++) column[i] = second[8 * i + j]!;
    solveInPlace(factor, column, 8);
    for (let i = 0; i < 8; i++) {
      let entry = 0;
      for (let k = 0; k < 8; k++) entry += first[8 * i + k]! * column[k]!;
      result[8 * i + j] = result[8 * i + j]! + (raise * entry) / 2;
      result[8 * j + i] = result[8 * j + i]! + (raise * entry) / 2;
    }
  }
  return result;
};
