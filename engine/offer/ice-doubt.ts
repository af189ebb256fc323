import { inverse3 } from '../film/matrix.ts';
import type { Matrix3 } from '../film/pins.ts';
import { boardsDistance } from '../rink/boards.ts';
import type { Rink } from '../rink/rink.ts';
import type { FilmPoint } from '../units/points.ts';

/** How a place of a picture moves with the eight changes of a map: its row in x, then in y. */
export type Tells = readonly [x: Float64Array, y: Float64Array];

/** How unsure the ice in view is while some places of the picture are known; at first nothing is known but that a map is about right. */
export interface IceDoubt {
  /** By what share the mean variance on the ice would go down with one more place known so well (variance in squares of half diagonals). */
  readonly loweredBy: (tells: Tells, variance: number) => number;
  /** Takes that place as known. */
  readonly told: (tells: Tells, variance: number) => void;
}

/** A map changes to (1 + δ) · map, δ of eight free entries: so a place moves by where it is in the picture alone. Distances in half diagonals. Source: by derivation. */
export const placeTells = (
  { xPx, yPx }: FilmPoint,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): Tells => {
  const halfPx = Math.hypot(widthPx, heightPx) / 2;
  const [u, v] = [(xPx - widthPx / 2) / halfPx, (yPx - heightPx / 2) / halfPx];
  return [
    Float64Array.of(u, v, 1, 0, 0, 0, -u * u, -u * v),
    Float64Array.of(0, 0, 0, u, v, 1, -u * v, -v * v),
  ];
};

/**
 * The doubt about the places of a picture that lie on the sheet, each counting the same: trace(V · W), V the covariance of the eight
 * changes, W the sum over the places of how the ice there moves with them. Source: linear estimation; rank-two update of a covariance.
 */
export const iceDoubtOf = (
  rink: Rink,
  map: Float64Array,
  placesPx: readonly FilmPoint[],
  size: { readonly widthPx: number; readonly heightPx: number },
): IceDoubt => {
  const weight = iceMoves(rink, inverse3(map as unknown as Matrix3), placesPx, size);
  const covariance = new Float64Array(64);
  for (let i = 0; i < 8; i++) covariance[9 * i] = FIRST_VARIANCE;
  const gainOf = ([x, y]: Tells, variance: number) => {
    const [vx, vy] = [timesRow(covariance, x), timesRow(covariance, y)];
    const [a, b, c] = [dot(x, vx) + variance, dot(x, vy), dot(y, vy) + variance];
    const determinant = a * c - b * b;
    return { vx, vy, xx: c / determinant, xy: -b / determinant, yy: a / determinant };
  };
  return {
    loweredBy: (tells, variance) => {
      const { vx, vy, xx, xy, yy } = gainOf(tells, variance);
      const [wx, wy] = [timesRow(weight, vx), timesRow(weight, vy)];
      let whole = 0;
      for (let at = 0; at < 64; at++) whole += covariance[at]! * weight[at]!;
      return (xx * dot(vx, wx) + 2 * xy * dot(vx, wy) + yy * dot(vy, wy)) / whole;
    },
    told: (tells, variance) => {
      const { vx, vy, xx, xy, yy } = gainOf(tells, variance);
      for (let i = 0; i < 8; i++) {
        for (let j = 0; j < 8; j++) {
          const cross = vx[i]! * vy[j]! + vy[i]! * vx[j]!;
          covariance[8 * i + j]! -= xx * vx[i]! * vx[j]! + xy * cross + yy * vy[i]! * vy[j]!;
        }
      }
    },
  };
};

/** Before anything is known, each of the eight may be off by as much as the picture is large. */
const FIRST_VARIANCE = 1;

const iceMoves = (
  rink: Rink,
  back: Matrix3,
  placesPx: readonly FilmPoint[],
  size: { readonly widthPx: number; readonly heightPx: number },
): Float64Array => {
  const sum = new Float64Array(64);
  for (const place of placesPx) {
    const [inX, inY] = placeTells(place, size);
    // The third and sixth entries are 1; those before them are the place itself.
    const [u, v] = [inX[0]!, inX[1]!];
    const t = back[6] * u + back[7] * v + back[8];
    const [xM, yM] = [(back[0] * u + back[1] * v + back[2]) / t, (back[3] * u + back[4] * v + back[5]) / t];
    if (!(t !== 0 && boardsDistance(rink.boards, { xM, yM }) > 0)) continue;
    const [xByU, xByV] = [(back[0] - xM * back[6]) / t, (back[1] - xM * back[7]) / t];
    const [yByU, yByV] = [(back[3] - yM * back[6]) / t, (back[4] - yM * back[7]) / t];
    for (let i = 0; i < 8; i++) {
      const [xi, yi] = [xByU * inX[i]! + xByV * inY[i]!, yByU * inX[i]! + yByV * inY[i]!];
      for (let j = 0; j < 8; j++) {
        sum[8 * i + j]! += xi * (xByU * inX[j]! + xByV * inY[j]!) + yi * (yByU * inX[j]! + yByV * inY[j]!);
      }
    }
  }
  return sum;
};

const timesRow = (matrix: Float64Array, row: Float64Array): Float64Array => {
  const result = new Float64Array(8);
  for (let i = 0; i < 8; i++) for (let j = 0; j < 8; j++) result[i]! += matrix[8 * i + j]! * row[j]!;
  return result;
};

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < 8; i++) sum += a[i]! * b[i]!;
  return sum;
};
