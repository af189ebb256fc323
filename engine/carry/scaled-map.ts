import { product3 } from '../film/matrix.ts';
import type { Matrix3 } from '../film/pins.ts';

/** Origin and scale of a plane, so that the numbers in it are of size 1. */
export interface PlaneScale {
  readonly x: number;
  readonly y: number;
  /** Scaled units per unit of the plane. */
  readonly per: number;
}

/** A projective map between two planes with its covariance, both in scaled planes; the ninth coefficient is 1. */
export interface ScaledMap {
  readonly from: PlaneScale;
  readonly to: PlaneScale;
  readonly coefficients: ArrayLike<number>;
  /** 8 × 8, row by row. */
  readonly covariance: ArrayLike<number>;
}

/** The map in the planes' own units, up to a factor. */
export const matrixOf = ({ from, to, coefficients }: ScaledMap): Matrix3 =>
  product3(unscaling(to), product3(withOne(coefficients), scaling(from)));

/**
 * First `first`, then `second`, between planes scaled as told. The covariance of both is carried to first order, as of
 * independent maps. Null when the origin of `from` comes to lie at or behind the horizon, where a ninth coefficient of 1 means nothing.
 */
export const composed = (
  second: ScaledMap,
  first: ScaledMap,
  from: PlaneScale,
  to: PlaneScale,
): ScaledMap | null => {
  const fromThere = product3(scaling(first.from), unscaling(from));
  const toThere = product3(scaling(to), unscaling(second.to));
  const between = product3(scaling(second.from), unscaling(first.to));
  const left = product3(toThere, product3(withOne(second.coefficients), between));
  const right = product3(between, product3(withOne(first.coefficients), fromThere));
  const byFirst = throughOf(left, first, fromThere);
  const bySecond = throughOf(toThere, second, right);
  if (byFirst === null || bySecond === null) return null;
  const covariance = byFirst.covariance.map((value, i) => value + bySecond.covariance[i]!);
  return { from, to, coefficients: byFirst.coefficients, covariance };
};

/** The same map between planes of another scale. Null as `composed`. */
export const rescaled = (map: ScaledMap, from: PlaneScale, to: PlaneScale): ScaledMap | null => {
  const through = throughOf(
    product3(scaling(to), unscaling(map.to)),
    map,
    product3(scaling(map.from), unscaling(from)),
  );
  return through === null ? null : { from, to, ...through };
};

/** left · map · right with the ninth entry 1, and J C Jᵀ of it. */
const throughOf = (
  left: Matrix3,
  map: ScaledMap,
  right: Matrix3,
): { coefficients: Float64Array; covariance: Float64Array } | null => {
  const m = product3(left, product3(withOne(map.coefficients), right));
  const last = m[8];
  if (!(last > 0)) return null;
  const coefficients = Float64Array.from({ length: 8 }, (_, i) => m[i]! / last);
  const jacobian = new Float64Array(64);
  for (let entry = 0; entry < 8; entry++) {
    const row = Math.floor(entry / 3);
    const column = entry % 3;
    const byLast = left[6 + row]! * right[3 * column + 2]!;
    for (let i = 0; i < 8; i++) {
      const own = left[3 * Math.floor(i / 3) + row]! * right[3 * column + (i % 3)]!;
      jacobian[8 * i + entry] = (own - coefficients[i]! * byLast) / last;
    }
  }
  return { coefficients, covariance: sandwich(jacobian, map.covariance) };
};

const sandwich = (jacobian: Float64Array, covariance: ArrayLike<number>): Float64Array => {
  const half = new Float64Array(64);
  const whole = new Float64Array(64);
  for (let i = 0; i < 8; i++) {
    for (let j = 0; j < 8; j++) {
      let sum = 0;
      for (let k = 0; k < 8; k++) sum += jacobian[8 * i + k]! * covariance[8 * k + j]!;
      half[8 * i + j] = sum;
    }
  }
  for (let i = 0; i < 8; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      for (let k = 0; k < 8; k++) sum += half[8 * i + k]! * jacobian[8 * j + k]!;
      whole[8 * i + j] = sum;
      whole[8 * j + i] = sum;
    }
  }
  return whole;
};

const scaling = ({ x, y, per }: PlaneScale): Matrix3 => [per, 0, -per * x, 0, per, -per * y, 0, 0, 1];
const unscaling = ({ x, y, per }: PlaneScale): Matrix3 => [1 / per, 0, x, 0, 1 / per, y, 0, 0, 1];
const withOne = (c: ArrayLike<number>): Matrix3 => [
  c[0]!,
  c[1]!,
  c[2]!,
  c[3]!,
  c[4]!,
  c[5]!,
  c[6]!,
  c[7]!,
  1,
];

/** Where a matrix takes a point; null behind the horizon. */
export const placeThrough = (m: Matrix3, x: number, y: number): readonly [number, number] | null => {
  const w = m[6] * x + m[7] * y + m[8];
  return w > 0 ? [(m[0] * x + m[1] * y + m[2]) / w, (m[3] * x + m[4] * y + m[5]) / w] : null;
};
