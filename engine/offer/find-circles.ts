import { randomOf } from '../random/random.ts';
import { type Conic, ellipseThrough } from './ellipse-through.ts';
import { LEAST_CIRCLE, RED_PAINT } from './feature-rows.ts';
import type { FoundSpot } from './find-spots.ts';
import type { PaintMaps } from './paint-maps.ts';

/** A painted circle seen round its spot: an ellipse in a picture whose middle is (0, 0) and whose half diagonal is 1. */
export interface FoundCircle {
  readonly spot: FoundSpot;
  readonly conic: Conic;
  /** Share of the directions from the spot in which it was found, 0 to 1. */
  readonly seenShare: number;
}

/**
 * Circles round spots: from each spot, thin red lines in every direction about as far off as its own size tells (`ratio` is
 * a circle's radius over a spot's), then the ellipse through most of them among many tries of six. Same seed, same answer.
 * Source: random sample consensus, Fischler & Bolles 1981, Communications of the ACM 24, 381.
 */
export const findCircles = (
  paint: PaintMaps,
  spots: readonly FoundSpot[],
  ratio: number,
  seed: number,
): FoundCircle[] => {
  const random = randomOf(seed);
  return spots.flatMap(spot => {
    const hits = hitsRound(paint, spot, ratio);
    if (hits.count < LEAST_HITS) return [];
    let best: number[] = [];
    for (let draw = 0; draw < DRAWS; draw++) {
      const picked = Array.from({ length: 6 }, () => random.below(hits.count));
      const conic = ellipseThrough(
        picked.map(k => hits.u[k]!),
        picked.map(k => hits.v[k]!),
      );
      if (conic === null) continue;
      const near = nearTo(conic, hits);
      if (near.length > best.length) best = near;
    }
    let conic: Conic | null = null;
    for (let pass = 0; pass < 3; pass++) {
      conic = ellipseThrough(
        best.map(k => hits.u[k]!),
        best.map(k => hits.v[k]!),
      );
      if (conic === null) return [];
      best = nearTo(conic, hits);
    }
    const seenShare = new Set(best.map(k => hits.ray[k])).size / RAYS;
    return conic !== null && seenShare > LEAST_CIRCLE.value ? [{ spot, conic, seenShare }] : [];
  });
};

interface Hits {
  readonly u: readonly number[];
  readonly v: readonly number[];
  readonly ray: readonly number[];
  readonly count: number;
  readonly nearBy: number;
}

const hitsRound = ({ red, widthPx, heightPx }: PaintMaps, spot: FoundSpot, ratio: number): Hits => {
  const halfDiagonal = Math.hypot(widthPx, heightPx) / 2;
  const [u, v, ray]: [number[], number[], number[]] = [[], [], []];
  for (let k = 0; k < RAYS; k++) {
    const rad = (2 * Math.PI * k) / RAYS;
    const [dx, dy] = [Math.cos(rad), Math.sin(rad)];
    const turned = rad - spot.tiltRad;
    const guessPx =
      ratio / Math.hypot(Math.cos(turned) / spot.halfLongPx, Math.sin(turned) / spot.halfShortPx);
    const at = (px: number): number => {
      const [x, y] = [Math.floor(spot.xPx + px * dx), Math.floor(spot.yPx + px * dy)];
      return x >= 0 && y >= 0 && x < widthPx && y < heightPx ? red[y * widthPx + x]! : 0;
    };
    for (let px = 0.55 * guessPx; px < 1.6 * guessPx; px += 1) {
      const value = at(px);
      if (value < RED_PAINT.value || value < at(px - 1) || value <= at(px + 1)) continue;
      if (value < 2 * Math.max(at(px - 5), at(px + 5))) continue;
      const [left, right] = [at(px - 1), at(px + 1)];
      const shift = (right - left) / (left + value + right);
      u.push((spot.xPx + (px + shift) * dx - widthPx / 2) / halfDiagonal);
      v.push((spot.yPx + (px + shift) * dy - heightPx / 2) / halfDiagonal);
      ray.push(k);
    }
  }
  return { u, v, ray, count: u.length, nearBy: NEAR_PX / halfDiagonal };
};

/** Hits whose distance from the ellipse, to first order, is small. */
const nearTo = ([a, b, c, d, e, f]: Conic, { u, v, count, nearBy }: Hits): number[] => {
  const near: number[] = [];
  for (let k = 0; k < count; k++) {
    const [x, y] = [u[k]!, v[k]!];
    const value = a * x * x + b * x * y + c * y * y + d * x + e * y + f;
    const slope = Math.hypot(2 * a * x + b * y + d, b * x + 2 * c * y + e);
    if (Math.abs(value) < nearBy * slope) near.push(k);
  }
  return near;
};

const RAYS = 180;
const DRAWS = 160;
const LEAST_HITS = 30;
const NEAR_PX = 1.5;
