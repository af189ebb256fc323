import { factorInto, solveInPlace } from '../film/matrix.ts';

/** What observations say of the eight changes of a map, summed up. Distances in half diagonals. */
export interface MapSums {
  readonly normal: Float64Array;
  readonly right: Float64Array;
  squares: number;
  weights: number;
}

export const emptySums = (): MapSums => ({
  normal: new Float64Array(64),
  right: new Float64Array(8),
  squares: 0,
  weights: 0,
});

const row = new Float64Array(8);

/** Adds that the paint drawn at (u, v) lies `off` farther along the direction (nx, ny), of length 1. `weight` ≥ 0. */
export const addObservation = (
  sums: MapSums,
  u: number,
  v: number,
  nx: number,
  ny: number,
  off: number,
  weight: number,
): void => {
  const along = nx * u + ny * v;
  row[0] = nx * u;
  row[1] = nx * v;
  row[2] = nx;
  row[3] = ny * u;
  row[4] = ny * v;
  row[5] = ny;
  row[6] = -along * u;
  row[7] = -along * v;
  const { normal, right } = sums;
  for (let i = 0; i < 8; i++) {
    right[i] = right[i]! + weight * row[i]! * off;
    for (let j = 0; j <= i; j++) normal[8 * i + j] = normal[8 * i + j]! + weight * row[i]! * row[j]!;
  }
  sums.squares += weight * off * off;
  sums.weights += weight;
};

/** One Gauss–Newton step of the map, in place: (1 + δ) · map with the eight changes δ that suit the sums best; none where they do not fix one. */
export const stepMap = (map: Float64Array, { normal, right }: MapSums): void => {
  let trace = 0;
  for (let i = 0; i < 8; i++) trace += normal[9 * i]!;
  // What nothing tells of is left as it is.
  for (let i = 0; i < 8; i++) normal[9 * i] = normal[9 * i]! + LEAST_PULL * trace;
  const factor = new Float64Array(64);
  if (!factorInto(normal, factor, 8)) return;
  solveInPlace(factor, right, 8);
  const [a, b, c, d, e, f, g, h] = right as unknown as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  for (let k = 0; k < 3; k++) {
    const [p, q, r] = [map[k]!, map[3 + k]!, map[6 + k]!];
    map[k] = p + a * p + b * q + c * r;
    map[3 + k] = q + d * p + e * q + f * r;
    map[6 + k] = r + g * p + h * q;
  }
};

const LEAST_PULL = 1e-6;
