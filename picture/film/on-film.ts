import { type FilmPoint, filmFromIce, type IcePoint, type PinFit, shownOf } from '@icewright/engine';
import type { FilmView } from './film-mark.ts';

/** A place on the ice in the picture, pixels; undefined when it lies behind the camera or so near that it is in no picture. */
export const pointOnFilm = (view: FilmView, at: IcePoint): FilmPoint | undefined =>
  depthAt(view.fit, at) >= nearestDepth(view) ? onFilm(view.fit, at) : undefined;

/** A line on the ice as it runs through the picture, pixels: in pieces, where parts of it lie behind the camera. */
export const lineOnFilm = (view: FilmView, line: readonly IcePoint[]): FilmPoint[][] => {
  const { fit } = view;
  const nearest = nearestDepth(view);
  const pieces: FilmPoint[][] = [];
  let open: FilmPoint[] | undefined;
  const points = dense(line, false);
  points.forEach((point, i) => {
    const before = points[i - 1];
    const isIn = depthAt(fit, point) >= nearest;
    const wasIn = before !== undefined && depthAt(fit, before) >= nearest;
    if (before && isIn !== wasIn) {
      const edge = onFilm(fit, between(fit, before, point, nearest));
      if (isIn) pieces.push((open = [edge]));
      else open?.push(edge);
    }
    if (isIn && !open) pieces.push((open = []));
    if (isIn) open?.push(onFilm(fit, point));
    else open = undefined;
  });
  return pieces.filter(piece => piece.length > 1);
};

/** An area on the ice as it is seen in the picture, pixels; cut off where it passes behind the camera, empty when all of it does. */
export const areaOnFilm = (view: FilmView, corners: readonly IcePoint[]): FilmPoint[] => {
  const { fit } = view;
  const nearest = nearestDepth(view);
  const points = dense(corners, true);
  return points.flatMap((point, i) => {
    const before = points[(i + points.length - 1) % points.length]!;
    const isIn = depthAt(fit, point) >= nearest;
    const wasIn = depthAt(fit, before) >= nearest;
    const edge = isIn === wasIn ? [] : [onFilm(fit, between(fit, before, point, nearest))];
    return isIn ? [...edge, onFilm(fit, point)] : edge;
  });
};

/** How many pixels up from a place on the ice the head of someone stands who is so tall; 0 where nothing can be told. */
export const heightOnFilm = ({ fit }: FilmView, at: IcePoint, heightM: number): number => {
  const here = filmFromIce(fit, at);
  if (!here) return 0;
  // Across the view a metre is as long upright as lying: the longer of two ways across is the nearer to it.
  const ways = [
    { xM: at.xM + 0.5, yM: at.yM },
    { xM: at.xM, yM: at.yM + 0.5 },
  ].map(beside => {
    const there = filmFromIce(fit, beside);
    return there ? 2 * Math.hypot(there.xPx - here.xPx, there.yPx - here.yPx) : 0;
  });
  return heightM * Math.max(...ways);
};

export const ringOf = (middle: IcePoint, radiusM: number, points = RING_POINTS): IcePoint[] =>
  Array.from({ length: points }, (_, i) => {
    const angle = (i / points) * 2 * Math.PI;
    return { xM: middle.xM + radiusM * Math.cos(angle), yM: middle.yM + radiusM * Math.sin(angle) };
  });
const RING_POINTS = 64;

/** Depth of a place before the camera, in units of the fit; not above 0 behind it. */
const depthAt = ({ filmFromIce: m }: PinFit, { xM, yM }: IcePoint): number => m[6] * xM + m[7] * yM + m[8];

/** So near to the camera nothing is drawn any more: a small share of how far away the lowest part of the picture is. */
const nearestDepth = ({ fit, widthPx, heightPx }: FilmView): number => {
  const m = fit.iceFromFilm;
  const t = m[6] * (widthPx / 2) + m[7] * heightPx + m[8];
  const xM = (m[0] * (widthPx / 2) + m[1] * heightPx + m[2]) / t;
  const yM = (m[3] * (widthPx / 2) + m[4] * heightPx + m[5]) / t;
  return NEAREST * Math.abs(depthAt(fit, { xM, yM }));
};
const NEAREST = 0.12;

const between = (fit: PinFit, a: IcePoint, b: IcePoint, depth: number): IcePoint => {
  const [atA, atB] = [depthAt(fit, a), depthAt(fit, b)];
  const share = (depth - atA) / (atB - atA);
  return { xM: a.xM + share * (b.xM - a.xM), yM: a.yM + share * (b.yM - a.yM) };
};

const onFilm = (fit: PinFit, at: IcePoint): FilmPoint => {
  const { lens, ...straight } = fit;
  const ideal = filmFromIce(straight, at) ?? { xPx: 0, yPx: 0 };
  if (!lens || lens.k1 === 0) return ideal;
  // Far outside the picture a lens of one term folds back upon itself: what lies there is held where it does not yet.
  const half = Math.hypot(lens.widthPx, lens.heightPx) / 2;
  const [dx, dy] = [ideal.xPx - lens.widthPx / 2, ideal.yPx - lens.heightPx / 2];
  const most = lens.k1 < 0 ? UNFOLDED / Math.sqrt(-3 * lens.k1) : FAR_DIAGONALS;
  const r = Math.hypot(dx, dy) / half;
  const hold = r > most ? most / r : 1;
  return shownOf(lens, { xPx: lens.widthPx / 2 + dx * hold, yPx: lens.heightPx / 2 + dy * hold });
};
const UNFOLDED = 0.95;
const FAR_DIAGONALS = 6;

/** Long legs in short steps: a lens bends them, and the camera may cut them anywhere. */
const dense = (line: readonly IcePoint[], closed: boolean): IcePoint[] => {
  const legs = closed ? line.length : line.length - 1;
  const points: IcePoint[] = closed ? [] : line.slice(0, 1);
  for (let i = 0; i < legs; i++) {
    const a = line[i]!;
    const b = line[(i + 1) % line.length]!;
    const steps = Math.max(1, Math.min(60, Math.ceil(Math.hypot(b.xM - a.xM, b.yM - a.yM) / STEP_M)));
    for (let step = 1; step <= steps; step++) {
      const share = step / steps;
      points.push({ xM: a.xM + share * (b.xM - a.xM), yM: a.yM + share * (b.yM - a.yM) });
    }
  }
  return points;
};
const STEP_M = 0.75;
