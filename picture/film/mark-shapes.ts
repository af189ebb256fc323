import type { FilmPoint, IcePoint } from '@icewright/engine';
import { BEAM_M, type FilmView } from './film-mark.ts';
import { areaOnFilm, heightOnFilm, ringOf } from './on-film.ts';

/** A lane from place to place, so wide on the ice: its area, and its two long edges. */
export const bandOf = (
  placesM: readonly IcePoint[],
  widthM: number,
): { readonly area: readonly IcePoint[]; readonly edges: readonly (readonly IcePoint[])[] } => {
  const sideOf = (sign: 1 | -1) =>
    placesM.map((at, i) => {
      const before = placesM[Math.max(0, i - 1)]!;
      const after = placesM[Math.min(placesM.length - 1, i + 1)]!;
      const { xM, yM } = directionOf(before, after);
      return { xM: at.xM - (sign * yM * widthM) / 2, yM: at.yM + (sign * xM * widthM) / 2 };
    });
  const [one, other] = [sideOf(1), sideOf(-1)];
  return { area: [...one, ...[...other].reverse()], edges: [one, other] };
};

/** An arrow that lies on the ice: its shaft, and its head, which ends so far before the last place. */
export const headOf = (
  placesM: readonly IcePoint[],
  shortM = 0,
): { readonly shaft: readonly IcePoint[]; readonly head: readonly IcePoint[] } => {
  const last = placesM[placesM.length - 1]!;
  const before = placesM[placesM.length - 2] ?? last;
  const lengthM = Math.hypot(last.xM - before.xM, last.yM - before.yM);
  const way = directionOf(before, last);
  const tip = along(last, way, -Math.min(shortM, 0.5 * lengthM));
  const headM = Math.min(HEAD_M, 0.6 * lengthM);
  const neck = along(tip, way, -headM);
  const across = { xM: -way.yM, yM: way.xM };
  return {
    shaft: [...placesM.slice(0, -1), along(tip, way, -0.8 * headM)],
    head: [
      tip,
      along(neck, across, 0.42 * headM),
      along(tip, way, -0.78 * headM),
      along(neck, across, -0.42 * headM),
    ],
  };
};
const HEAD_M = 1.25;

/** The bar across the end of a link, at its first place. */
export const barAt = (at: IcePoint, other: IcePoint): IcePoint[] => {
  const way = directionOf(at, other);
  const across = { xM: -way.yM, yM: way.xM };
  return [along(at, across, BAR_M), along(at, across, -BAR_M)];
};
const BAR_M = 0.45;

/** Lines that rule an area on the ice, a metre and a half apart, slanted to the sheet: read in grey, and not as paint. */
export const hatchingOf = (corners: readonly IcePoint[]): IcePoint[][] => {
  const turned = corners.map(({ xM, yM }) => ({ u: xM * COS + yM * SIN, v: yM * COS - xM * SIN }));
  const values = turned.map(({ v }) => v);
  const lines: IcePoint[][] = [];
  const first = Math.ceil(Math.min(...values) / APART_M) * APART_M;
  for (let v = first; v < Math.max(...values); v += APART_M) {
    const cuts = turned
      .flatMap((a, i) => {
        const b = turned[(i + 1) % turned.length]!;
        return a.v < v === b.v < v ? [] : [a.u + ((v - a.v) / (b.v - a.v)) * (b.u - a.u)];
      })
      .sort((a, b) => a - b);
    for (let i = 0; i + 1 < cuts.length; i += 2)
      lines.push([cuts[i]!, cuts[i + 1]!].map(u => ({ xM: u * COS - v * SIN, yM: u * SIN + v * COS })));
  }
  return lines;
};
const APART_M = 1.5;
const [COS, SIN] = [Math.cos(Math.PI / 4), Math.sin(Math.PI / 4)];

/** Somebody standing at a place: body and head, pixels; nothing behind the camera. */
export const standingOnFilm = (view: FilmView, at: IcePoint): FilmPoint[][] => {
  const feet = areaOnFilm(view, ringOf(at, STANCE_M));
  const shoulders = raised(areaOnFilm(view, ringOf(at, SHOULDER_M)), heightOnFilm(view, at, 1.45));
  const headPx = heightOnFilm(view, at, HEAD_RADIUS_M);
  const head = feet.length === 0 ? [] : roundOf(middleOf(shoulders), headPx, heightOnFilm(view, at, 0.28));
  return feet.length === 0 ? [] : [hullOf([...feet, ...shoulders]), head];
};
const STANCE_M = 0.34;
const SHOULDER_M = 0.25;
const HEAD_RADIUS_M = 0.17;

const raised = (points: readonly FilmPoint[], byPx: number): FilmPoint[] =>
  points.map(({ xPx, yPx }) => ({ xPx, yPx: yPx - byPx }));

const middleOf = (points: readonly FilmPoint[]): FilmPoint => ({
  xPx: points.reduce((sum, one) => sum + one.xPx, 0) / points.length,
  yPx: points.reduce((sum, one) => sum + one.yPx, 0) / points.length,
});

const roundOf = (below: FilmPoint, radiusPx: number, upPx: number): FilmPoint[] =>
  Array.from({ length: 24 }, (_, i) => ({
    xPx: below.xPx + radiusPx * Math.cos((i / 12) * Math.PI),
    yPx: below.yPx - upPx + radiusPx * Math.sin((i / 12) * Math.PI),
  }));

/** What a spotlight lights: the ice round a place, and whoever stands on it, to above his head. */
export interface LitPlace {
  readonly ground: readonly FilmPoint[];
  readonly lit: readonly FilmPoint[];
}

export const spotlightOnFilm = (view: FilmView, at: IcePoint, radiusM: number): LitPlace => {
  const ground = areaOnFilm(view, ringOf(at, radiusM));
  if (ground.length < 3) return { ground, lit: ground };
  const above = raised(areaOnFilm(view, ringOf(at, BEAM_M.radius)), heightOnFilm(view, at, BEAM_M.high));
  return { ground, lit: hullOf([...ground, ...above]) };
};

/** The convex hull of points, clockwise on the page. Source: Andrew's monotone chain (1979). */
const hullOf = (points: readonly FilmPoint[]): FilmPoint[] => {
  const sorted = [...points].sort((a, b) => a.xPx - b.xPx || a.yPx - b.yPx);
  const half = (from: readonly FilmPoint[]): FilmPoint[] => {
    const chain: FilmPoint[] = [];
    for (const point of from) {
      while (chain.length > 1 && turn(chain[chain.length - 2]!, chain[chain.length - 1]!, point) <= 0)
        chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
};

const turn = (a: FilmPoint, b: FilmPoint, c: FilmPoint): number =>
  (b.xPx - a.xPx) * (c.yPx - a.yPx) - (b.yPx - a.yPx) * (c.xPx - a.xPx);

const directionOf = (from: IcePoint, to: IcePoint): IcePoint => {
  const [dx, dy] = [to.xM - from.xM, to.yM - from.yM];
  const length = Math.hypot(dx, dy);
  return length === 0 ? { xM: 1, yM: 0 } : { xM: dx / length, yM: dy / length };
};

const along = (from: IcePoint, way: IcePoint, byM: number): IcePoint => ({
  xM: from.xM + way.xM * byM,
  yM: from.yM + way.yM * byM,
});
