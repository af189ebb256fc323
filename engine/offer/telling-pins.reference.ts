import type { FilmPoint, IcePoint } from '../units/points.ts';

/** A slow, plain way to the same figure as `iceDoubtOf`, by small steps and a general inverse: nothing of it is shared. */

type Map = readonly number[];

/** Mean of both variances on the ice, m², over places of a picture (half diagonals, middle 0), when some of its places are known so well. */
export const meanVarianceSlowly = (
  map: Map,
  known: readonly { readonly at: readonly [number, number]; readonly variance: number }[],
  places: readonly (readonly [number, number])[],
): number => {
  const information = Array.from({ length: 8 }, (_, i) => Array.from({ length: 8 }, (_, j) => +(i === j)));
  for (const { at, variance } of known) {
    const iceM = iceAt(map, at);
    const by = byChange(map, changed => drawn(changed, iceM));
    for (let i = 0; i < 8; i++)
      for (let j = 0; j < 8; j++)
        information[i]![j]! += (by[i]![0] * by[j]![0] + by[i]![1] * by[j]![1]) / variance;
  }
  const covariance = inverse(information);
  let sum = 0;
  for (const place of places) {
    const by = byChange(map, changed => {
      const { xM, yM } = iceAt(changed, place);
      return [xM, yM];
    });
    for (const axis of [0, 1] as const)
      for (let i = 0; i < 8; i++)
        for (let j = 0; j < 8; j++) sum += by[i]![axis] * covariance[i]![j]! * by[j]![axis];
  }
  return sum / places.length;
};

/** Where a place of the picture lies on the ice, by Cramer’s rule on the two equations of the map. */
export const iceAt = (m: Map, [u, v]: readonly [number, number]): IcePoint => {
  const [a, b, p] = [m[0]! - u * m[6]!, m[1]! - u * m[7]!, u * m[8]! - m[2]!];
  const [c, d, q] = [m[3]! - v * m[6]!, m[4]! - v * m[7]!, v * m[8]! - m[5]!];
  const determinant = a * d - b * c;
  return { xM: (p * d - b * q) / determinant, yM: (a * q - p * c) / determinant };
};

export const halvesOf = (
  { xPx, yPx }: FilmPoint,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): readonly [number, number] => {
  const half = Math.hypot(widthPx, heightPx) / 2;
  return [(xPx - widthPx / 2) / half, (yPx - heightPx / 2) / half];
};

const drawn = (m: Map, { xM, yM }: IcePoint): readonly [number, number] => {
  const w = m[6]! * xM + m[7]! * yM + m[8]!;
  return [(m[0]! * xM + m[1]! * yM + m[2]!) / w, (m[3]! * xM + m[4]! * yM + m[5]!) / w];
};

/** How something moves with each of the eight entries of δ, where the map is (1 + δ) · map and the ninth stays 0. */
const byChange = (map: Map, of: (changed: Map) => readonly [number, number]) =>
  Array.from({ length: 8 }, (_, entry): readonly [number, number] => {
    const step = 1e-6;
    const [more, less] = [of(changedBy(map, entry, step)), of(changedBy(map, entry, -step))];
    return [(more[0] - less[0]) / (2 * step), (more[1] - less[1]) / (2 * step)];
  });

const changedBy = (map: Map, entry: number, step: number): Map => {
  const changed = [...map];
  const [row, column] = [Math.floor(entry / 3), entry % 3];
  for (let k = 0; k < 3; k++) changed[3 * row + k]! += step * map[3 * column + k]!;
  return changed;
};

/** By Gauss and Jordan with the largest pivot. */
const inverse = (matrix: readonly (readonly number[])[]): number[][] => {
  const rows = matrix.map((row, i) => [...row, ...matrix.map((_, j) => +(i === j))]);
  for (let at = 0; at < rows.length; at++) {
    let pivot = at;
    for (let i = at; i < rows.length; i++)
      if (Math.abs(rows[i]![at]!) > Math.abs(rows[pivot]![at]!)) pivot = i;
    [rows[at], rows[pivot]] = [rows[pivot]!, rows[at]!];
    const scale = rows[at]![at]!;
    rows[at] = rows[at]!.map(one => one / scale);
    for (let i = 0; i < rows.length; i++) {
      const times = i === at ? 0 : rows[i]![at]!;
      if (times !== 0) rows[i] = rows[i]!.map((one, j) => one - times * rows[at]![j]!);
    }
  }
  return rows.map(row => row.slice(matrix.length));
};
