import type { PathSink } from '../pen/pen.ts';
import { directionRad, distanceOf, type SheetPoint } from './sheet-point.ts';

/** A line through points with its length known at each, so that marks can be set along it. */
export interface Polyline {
  readonly points: readonly SheetPoint[];
  readonly lengthTo: readonly number[];
  readonly length: number;
}

export const polylineOf = (points: readonly SheetPoint[]): Polyline => {
  const lengthTo: number[] = [];
  let length = 0;
  let before: SheetPoint | undefined;
  for (const point of points) {
    if (before) length += distanceOf(before, point);
    lengthTo.push(length);
    before = point;
  }
  return { points, lengthTo, length };
};

/** Place and direction after so many metres; beyond an end it stays at that end. */
export const pointAt = (
  line: Polyline,
  length: number,
): { readonly at: SheetPoint; readonly turnRad: number } => {
  const last = line.points.length - 1;
  const first = line.points[0];
  if (!first) throw new Error('a line needs a point');
  if (last === 0) return { at: first, turnRad: 0 };
  const wanted = Math.max(0, Math.min(length, line.length));
  let index = segmentOf(line.lengthTo, wanted);
  while (index < last - 1 && line.lengthTo[index + 1]! - line.lengthTo[index]! === 0) index++;
  const from = line.points[index]!;
  const to = line.points[index + 1]!;
  const span = line.lengthTo[index + 1]! - line.lengthTo[index]!;
  const share = span > 0 ? (wanted - line.lengthTo[index]!) / span : 0;
  return {
    at: { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share },
    turnRad: directionRad(from, to),
  };
};

/** So many places evenly from the start of the line to a length, ends included: one walk, where many are asked. */
export const evenlyAlong = (line: Polyline, reach: number, count: number): readonly SheetPoint[] => {
  const { points, lengthTo } = line;
  const last = points.length - 1;
  const places: SheetPoint[] = [];
  let index = 0;
  for (let place = 0; place <= count; place++) {
    const wanted = Math.min(line.length, (reach * place) / count);
    while (index < last - 1 && lengthTo[index + 1]! < wanted) index++;
    const from = points[index]!;
    const to = points[Math.min(last, index + 1)]!;
    const span = (lengthTo[index + 1] ?? 0) - lengthTo[index]!;
    const share = span > 0 ? (wanted - lengthTo[index]!) / span : 0;
    places.push({ x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share });
  }
  return places;
};

/** A place moved to the right of the way from one place to another, without an angle in between. */
export const offTheWay = (at: SheetPoint, from: SheetPoint, to: SheetPoint, by: number): SheetPoint => {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const span = Math.sqrt(dx * dx + dy * dy);
  return span > 0 ? { x: at.x - (dy / span) * by, y: at.y + (dx / span) * by } : at;
};

/** The piece of the line between two lengths. */
export const pieceOf = (line: Polyline, from: number, to: number): Polyline => {
  if (to <= from) return polylineOf([pointAt(line, from).at]);
  const inner = line.points.filter((_, index) => line.lengthTo[index]! > from && line.lengthTo[index]! < to);
  return polylineOf([pointAt(line, from).at, ...inner, pointAt(line, to).at]);
};

export const tracePoints = (sink: PathSink, points: readonly SheetPoint[]): void => {
  points.forEach((point, index) => {
    if (index === 0) sink.moveTo(point.x, point.y);
    else sink.lineTo(point.x, point.y);
  });
};

const segmentOf = (lengthTo: readonly number[], wanted: number): number => {
  let low = 0;
  let high = lengthTo.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (lengthTo[middle]! <= wanted) low = middle;
    else high = middle - 1;
  }
  return low;
};
