import type { FilmPoint } from '../units/points.ts';

/** Calls `fill` for each pixel of a convex polygon within a picture of `width` × `height` pixels: its rank, row by row. */
export const fillConvex = (
  polygon: readonly FilmPoint[],
  width: number,
  height: number,
  fill: (at: number) => void,
): void => {
  const heights = polygon.map(({ yPx }) => yPx);
  const top = Math.max(0, Math.floor(Math.min(...heights)));
  const bottom = Math.min(height - 1, Math.ceil(Math.max(...heights)));
  for (let y = top; y <= bottom; y++) {
    const [left, right] = spanAt(polygon, y + 0.5);
    const last = Math.min(width - 1, right);
    for (let x = Math.max(0, Math.floor(left)); x <= last; x++) fill(y * width + x);
  }
};

const spanAt = (polygon: readonly FilmPoint[], yPx: number): [left: number, right: number] => {
  let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  polygon.forEach((a, index) => {
    const b = polygon[(index + 1) % polygon.length]!;
    if (a.yPx > yPx === b.yPx > yPx) return;
    const xPx = a.xPx + ((yPx - a.yPx) / (b.yPx - a.yPx)) * (b.xPx - a.xPx);
    left = Math.min(left, xPx);
    right = Math.max(right, xPx);
  });
  return [left, right];
};

/** The smallest convex polygon about points of a picture. Source: Andrew’s monotone chain, 1979 (from memory). */
export const hullOf = (points: readonly FilmPoint[]): FilmPoint[] => {
  const sorted = [...points].sort((a, b) => a.xPx - b.xPx || a.yPx - b.yPx);
  return [...chainOf(sorted), ...chainOf([...sorted].reverse())];
};

const chainOf = (points: readonly FilmPoint[]): FilmPoint[] => {
  const chain: FilmPoint[] = [];
  for (const point of points) {
    while (chain.length > 1 && !turns(chain[chain.length - 2]!, chain[chain.length - 1]!, point)) chain.pop();
    chain.push(point);
  }
  return chain.slice(0, -1);
};

const turns = (a: FilmPoint, b: FilmPoint, c: FilmPoint): boolean =>
  (b.xPx - a.xPx) * (c.yPx - a.yPx) - (b.yPx - a.yPx) * (c.xPx - a.xPx) > 0;
