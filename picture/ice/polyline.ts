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
