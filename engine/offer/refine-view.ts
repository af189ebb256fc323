import type { Matrix3 } from '../film/pins.ts';
import { type Crossing, crossingInto } from './line-profile.ts';
import { addObservation, emptySums, type MapSums, stepMap } from './map-step.ts';
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
 * Gauss–Newton step in the eight changes (1 + δ) · map of the picture; in place, or not at all unless it `moves`. Returns how the map
 * before the step went with the picture. Lines count across their direction alone, spots in both. Source: Hartley & Zisserman 2004, appendix 6 (from memory).
 */
export const refineOnce = (
  map: Float64Array,
  samples: StrokeSamples,
  discs: readonly Disc[],
  evidence: Evidence,
  reachPx: number,
  moves: boolean,
): Support => {
  const support: Support = { score: 0, seen: 0, missing: 0, spotsSeen: 0, spotsMissing: 0, rmsPx: 0 };
  const sums = emptySums();
  const halfDiagonal = Math.hypot(evidence.paint.widthPx, evidence.paint.heightPx) / 2;
  const asked: Asked = { map, evidence, halfDiagonal, reachPx, support, sums };
  askLines(asked, samples);
  for (const disc of discs) if (disc.colour === 'red') askSpot(asked, disc);
  support.rmsPx = Math.sqrt(sums.squares / Math.max(1e-12, sums.weights)) * halfDiagonal;
  support.score =
    support.seen * SEEN_ODDS.value +
    support.missing * MISSING_ODDS.value +
    support.spotsSeen * SPOT_SEEN_ODDS.value +
    support.spotsMissing * SPOT_MISSING_ODDS.value;
  if (moves) stepMap(map, sums);
  return support;
};

interface Asked {
  readonly map: Float64Array;
  readonly evidence: Evidence;
  readonly halfDiagonal: number;
  readonly reachPx: number;
  readonly support: Support;
  readonly sums: MapSums;
}

const askLines = (
  { map, evidence, halfDiagonal, reachPx, support, sums }: Asked,
  samples: StrokeSamples,
): void => {
  const { paint } = evidence;
  const { widthPx, heightPx } = paint;
  const found: Crossing = { offPx: 0, contrast: 0 };
  const [m0, m1, m2, m3, m4, m5, m6, m7, m8] = map as unknown as Matrix3;
  for (let k = 0; k < samples.count; k++) {
    const at = k * STRIDE;
    const s = samples.values;
    const [x, y, dx, dy] = [s[at]!, s[at + 1]!, s[at + 2]!, s[at + 3]!];
    const w = m6 * x + m7 * y + m8;
    if (!(w > 0)) continue;
    const u = (m0 * x + m1 * y + m2) / w;
    const v = (m3 * x + m4 * y + m5) / w;
    const xPx = u * halfDiagonal + widthPx / 2;
    const yPx = v * halfDiagonal + heightPx / 2;
    if (!isOnIce(evidence, xPx, yPx)) continue;
    // Along the line and across it, a metre of ice in half diagonals.
    const alongU = (m0 * dx + m1 * dy - u * (m6 * dx + m7 * dy)) / w;
    const alongV = (m3 * dx + m4 * dy - v * (m6 * dx + m7 * dy)) / w;
    const length = Math.hypot(alongU, alongV);
    const nx = -alongV / length;
    const ny = alongU / length;
    const acrossU = (-m0 * dy + m1 * dx - u * (-m6 * dy + m7 * dx)) / w;
    const acrossV = (-m3 * dy + m4 * dx - v * (-m6 * dy + m7 * dx)) / w;
    const halfPx = s[at + 4]! * Math.abs(nx * acrossU + ny * acrossV) * halfDiagonal;
    if (halfPx < LEAST_HALF_PX) continue;
    const lengthPx = s[at + 6]! * length * halfDiagonal;
    const weight = Math.min(1, lengthPx / FULL_PX) * Math.min(1, halfPx / FULL_HALF_PX);
    const least = Math.min(1, (2 * halfPx) / FULL_WIDTH_PX) * LEAST_CONTRAST.value;
    const map = s[at + 5] === 1 ? paint.blue : paint.red;
    const isSeen =
      crossingInto(paint, map, xPx, yPx, nx, ny, halfPx, reachPx, found) && found.contrast >= least;
    if (!isSeen) {
      support.missing += weight;
      continue;
    }
    support.seen += weight;
    // Paint far off is less likely to be this line's: Tukey's biweight.
    const trust = weight * (1 - (found.offPx / (1.3 * reachPx)) ** 2) ** 2;
    addObservation(sums, u, v, nx, ny, found.offPx / halfDiagonal, trust);
  }
};

const askSpot = (
  { map, evidence, halfDiagonal, reachPx, support, sums }: Asked,
  { atM, radiusM }: Disc,
): void => {
  const { widthPx, heightPx } = evidence.paint;
  const [m0, m1, m2, m3, m4, m5, m6, m7, m8] = map as unknown as Matrix3;
  const w = m6 * atM.xM + m7 * atM.yM + m8;
  if (!(w > 0)) return;
  const u = (m0 * atM.xM + m1 * atM.yM + m2) / w;
  const v = (m3 * atM.xM + m4 * atM.yM + m5) / w;
  const xPx = u * halfDiagonal + widthPx / 2;
  const yPx = v * halfDiagonal + heightPx / 2;
  if (!isOnIce(evidence, xPx, yPx)) return;
  const radiusPx = (radiusM / w) * Math.hypot(m0 - u * m6, m3 - v * m6) * halfDiagonal;
  let nearest: SpotPx | null = null;
  let nearestPx = reachPx + Math.min(reachPx, radiusPx);
  for (const spot of evidence.spots) {
    const px = Math.hypot(spot.xPx - xPx, spot.yPx - yPx);
    if (px >= nearestPx) continue;
    nearestPx = px;
    nearest = spot;
  }
  if (nearest === null) {
    support.spotsMissing++;
    return;
  }
  support.spotsSeen++;
  addObservation(sums, u, v, 1, 0, (nearest.xPx - xPx) / halfDiagonal, SPOT_WEIGHT);
  addObservation(sums, u, v, 0, 1, (nearest.yPx - yPx) / halfDiagonal, SPOT_WEIGHT);
};

const isOnIce = ({ paint: { widthPx, heightPx }, inside }: Evidence, xPx: number, yPx: number): boolean =>
  xPx >= 0 &&
  yPx >= 0 &&
  xPx < widthPx &&
  yPx < heightPx &&
  inside[Math.floor(yPx) * widthPx + Math.floor(xPx)] === 1;

/** A piece of line so long and half so wide counts in full; thinner than the last nothing can be asked of it. Pixels. */
const FULL_PX = 10;
const FULL_HALF_PX = 0.6;
const FULL_WIDTH_PX = 1.5;
const LEAST_HALF_PX = 0.12;
/** A spot counts as so many pieces of line in each direction. */
const SPOT_WEIGHT = 6;
