import { factorInto, solveInPlace } from '../film/matrix.ts';
import { type Crossing, crossingInto } from './line-profile.ts';
import type { PaintMaps } from './paint-maps.ts';
import { STRIDE, type StrokeSamples } from './stroke-samples.ts';
import type { Disc } from './strokes.ts';
import { LEAST_CONTRAST, MISSING_ODDS, SEEN_ODDS, SPOT_MISSING_ODDS, SPOT_SEEN_ODDS } from './view-rows.ts';

/** A spot found in the picture, pixels. */
export interface SpotPx {
  readonly xPx: number;
  readonly yPx: number;
}

/** What a picture shows, for a map to be tried on. */
export interface Evidence {
  readonly paint: PaintMaps;
  /** 1 on what the ice spans. */
  readonly inside: Uint8Array;
  readonly spots: readonly SpotPx[];
}

/** How a map goes with a picture. */
export interface Support {
  /** Log odds against chance, summed over the painted lines that should be seen. */
  score: number;
  seen: number;
  missing: number;
  spotsSeen: number;
  spotsMissing: number;
  /** Root mean square of how far paint lies from where it should, pixels. */
  rmsPx: number;
}

/**
 * Moves a map (ice in metres to a picture of half diagonal 1) so that the painted lines lie on the paint within `reachPx` of them, one
 * Gauss–Newton step in the eight changes (1 + δ) · map of the picture; in place. Returns how the map before the step
 * went with the picture. Points across their line alone count, spots in both directions. Source: Hartley & Zisserman 2004, appendix 6 (from memory).
 */
export const refineOnce = (
  map: Float64Array,
  samples: StrokeSamples,
  discs: readonly Disc[],
  evidence: Evidence,
  reachPx: number,
  moves: boolean,
): Support => {
  const { paint, inside, spots } = evidence;
  const { widthPx, heightPx } = paint;
  const halfDiagonal = Math.hypot(widthPx, heightPx) / 2;
  const normal = new Float64Array(64);
  const right = new Float64Array(8);
  const row = new Float64Array(8);
  const found: Crossing = { offPx: 0, contrast: 0 };
  const support: Support = { score: 0, seen: 0, missing: 0, spotsSeen: 0, spotsMissing: 0, rmsPx: 0 };
  let [squares, weights] = [0, 0];
  const [m0, m1, m2, m3, m4, m5, m6, m7, m8] = map as unknown as number[] & { length: 9 };
  const add = (u: number, v: number, nx: number, ny: number, off: number, weight: number): void => {
    const along = nx * u + ny * v;
    row[0] = nx * u;
    row[1] = nx * v;
    row[2] = nx;
    row[3] = ny * u;
    row[4] = ny * v;
    row[5] = ny;
    row[6] = -along * u;
    row[7] = -along * v;
    for (let i = 0; i < 8; i++) {
      right[i] = right[i]! + weight * row[i]! * off;
      for (let j = 0; j <= i; j++) normal[8 * i + j] = normal[8 * i + j]! + weight * row[i]! * row[j]!;
    }
    squares += weight * (off * halfDiagonal) ** 2;
    weights += weight;
  };
  for (let k = 0; k < samples.count; k++) {
    const at = k * STRIDE;
    const s = samples.values;
    const [x, y, dx, dy] = [s[at]!, s[at + 1]!, s[at + 2]!, s[at + 3]!];
    const w = m6! * x + m7! * y + m8!;
    if (!(w > 0)) continue;
    const u = (m0! * x + m1! * y + m2!) / w;
    const v = (m3! * x + m4! * y + m5!) / w;
    const xPx = u * halfDiagonal + widthPx / 2;
    const yPx = v * halfDiagonal + heightPx / 2;
    if (!(xPx >= 0 && yPx >= 0 && xPx < widthPx && yPx < heightPx)) continue;
    if (inside[Math.floor(yPx) * widthPx + Math.floor(xPx)] === 0) continue;
    // Along the line and across it, a metre of ice in half diagonals.
    const alongU = (m0! * dx + m1! * dy - u * (m6! * dx + m7! * dy)) / w;
    const alongV = (m3! * dx + m4! * dy - v * (m6! * dx + m7! * dy)) / w;
    const length = Math.hypot(alongU, alongV);
    const nx = -alongV / length;
    const ny = alongU / length;
    const acrossU = (-m0! * dy + m1! * dx - u * (-m6! * dy + m7! * dx)) / w;
    const acrossV = (-m3! * dy + m4! * dx - v * (-m6! * dy + m7! * dx)) / w;
    const halfPx = s[at + 4]! * Math.abs(nx * acrossU + ny * acrossV) * halfDiagonal;
    const lengthPx = s[at + 6]! * length * halfDiagonal;
    const weight = Math.min(1, lengthPx / FULL_PX) * Math.min(1, halfPx / FULL_HALF_PX);
    const isBlue = s[at + 5] === 1;
    const map = isBlue ? paint.blue : paint.red;
    const least = Math.min(1, (2 * halfPx) / 1.5) * LEAST_CONTRAST.value;
    // Thinner than this nothing can be asked of it.
    if (halfPx < 0.12) continue;
    if (!crossingInto(paint, map, xPx, yPx, nx, ny, halfPx, reachPx, found) || found.contrast < least) {
      support.missing += weight;
      continue;
    }
    support.seen += weight;
    const off = found.offPx;
    const trust = weight * (1 - (off / (1.3 * reachPx)) ** 2) ** 2;
    add(u, v, nx, ny, off / halfDiagonal, trust);
  }
  for (const { colour, atM, radiusM } of discs) {
    if (colour !== 'red') continue;
    const w = m6! * atM.xM + m7! * atM.yM + m8!;
    if (!(w > 0)) continue;
    const u = (m0! * atM.xM + m1! * atM.yM + m2!) / w;
    const v = (m3! * atM.xM + m4! * atM.yM + m5!) / w;
    const xPx = u * halfDiagonal + widthPx / 2;
    const yPx = v * halfDiagonal + heightPx / 2;
    if (!(xPx >= 0 && yPx >= 0 && xPx < widthPx && yPx < heightPx)) continue;
    if (inside[Math.floor(yPx) * widthPx + Math.floor(xPx)] === 0) continue;
    const radiusPx = (radiusM / w) * Math.hypot(m0! - u * m6!, m3! - v * m6!) * halfDiagonal;
    let nearest: SpotPx | null = null;
    let nearestPx = reachPx + Math.min(reachPx, radiusPx);
    for (const spot of spots) {
      const px = Math.hypot(spot.xPx - xPx, spot.yPx - yPx);
      if (px >= nearestPx) continue;
      nearestPx = px;
      nearest = spot;
    }
    if (nearest === null) {
      support.spotsMissing++;
      continue;
    }
    support.spotsSeen++;
    add(u, v, 1, 0, (nearest.xPx - xPx) / halfDiagonal, SPOT_WEIGHT);
    add(u, v, 0, 1, (nearest.yPx - yPx) / halfDiagonal, SPOT_WEIGHT);
  }
  support.rmsPx = Math.sqrt(squares / Math.max(1e-9, weights));
  support.score =
    support.seen * SEEN_ODDS.value +
    support.missing * MISSING_ODDS.value +
    support.spotsSeen * SPOT_SEEN_ODDS.value +
    support.spotsMissing * SPOT_MISSING_ODDS.value;
  if (moves) step(map, normal, right);
  return support;
};

const step = (map: Float64Array, normal: Float64Array, right: Float64Array): void => {
  let trace = 0;
  for (let i = 0; i < 8; i++) trace += normal[9 * i]!;
  for (let i = 0; i < 8; i++) normal[9 * i] = normal[9 * i]! + 1e-6 * trace;
  const factor = new Float64Array(64);
  if (!factorInto(normal, factor, 8)) return;
  solveInPlace(factor, right, 8);
  const [a, b, c, d, e, f, g, h] = right as unknown as number[];
  for (let k = 0; k < 3; k++) {
    const [p, q, r] = [map[k]!, map[3 + k]!, map[6 + k]!];
    map[k] = p + a! * p + b! * q + c! * r;
    map[3 + k] = q + d! * p + e! * q + f! * r;
    map[6 + k] = r + g! * p + h! * q;
  }
};

const FULL_PX = 10;
const FULL_HALF_PX = 0.6;
const SPOT_WEIGHT = 6;
