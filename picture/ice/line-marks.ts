import type { Pen } from '../pen/pen.ts';
import { drawPassHead, drawShotHead, drawSkateHead, SHOT_HEAD_M, SKATE_HEAD_COVERS_M } from './heads.ts';
import {
  evenlyAlong,
  offTheWay,
  type Polyline,
  pieceOf,
  pointAt,
  polylineOf,
  tracePoints,
} from './polyline.ts';
import { beside, directionRad, type SheetPoint } from './sheet-point.ts';

const WAVE_LENGTH_M = 1.7;
const WAVE_HALF_HEIGHT_M = 0.36;
const WAVE_POINTS = 14;
const WAVE_SMOOTH = 3;
/** The wave dies out over the last stride, so that the head points where the route ends. */
const WAVE_STRAIGHT_END_M = 1.9;
const BACK_RADIUS_M = 0.47;
const BACK_HALF_WIDTH_M = 0.44;
const BACK_EVERY_M = 0.72;
const BACK_PUCK_RADIUS_M = 0.15;
const STOP_HALF_M = 0.62;
const STOP_APART_M = 0.36;
const SHOT_HALF_APART_M = 0.17;
const BOUNCE_RADIUS_M = 0.36;

/** How a line ends. */
export type LineEnd = 'head' | 'stop' | 'open';

/** Forward skating: solid. */
export const drawForward = (
  pen: Pen,
  line: Polyline,
  end: LineEnd,
  mark: 'skate' | 'chase' = 'skate',
): void => {
  drawCased(pen, mark, pieceOf(line, 0, line.length - coveredAtEnd(pen, end)).points);
  drawEnd(pen, line, end);
};

/** Forward with the puck: a wave about the line, straight for the last stride. */
export const drawCarry = (pen: Pen, line: Polyline, end: LineEnd): void => {
  drawCased(pen, 'skate', waveOf(line, pen.k, line.length - coveredAtEnd(pen, end), end));
  drawEnd(pen, line, end);
};

/** Backward: nested half circles, bulging the way she faces, which is against the way she goes. */
export const drawBackward = (pen: Pen, line: Polyline, end: LineEnd, withPuck = false): void => {
  const every = BACK_EVERY_M * pen.k;
  const halfWidth = BACK_HALF_WIDTH_M * pen.k;
  const radius = BACK_RADIUS_M * pen.k;
  const reach = line.length - (end === 'head' ? 1.3 * pen.k : 0.5 * pen.k);
  const halfAngleRad = Math.asin(halfWidth / radius);
  const lengths: number[] = [];
  for (let length = every * 0.9; length <= reach; length += every) lengths.push(length);
  if (lengths.length === 0) lengths.push(Math.max(0, reach / 2));
  pen.path('back', sink => {
    for (const length of lengths) {
      const { at, turnRad } = pointAt(line, length);
      const bulgeRad = turnRad + Math.PI;
      const centre = {
        x: at.x - Math.cos(bulgeRad) * radius * 0.35,
        y: at.y - Math.sin(bulgeRad) * radius * 0.35,
      };
      const from = bulgeRad - halfAngleRad;
      sink.moveTo(centre.x + Math.cos(from) * radius, centre.y + Math.sin(from) * radius);
      sink.arc(centre.x, centre.y, radius, from, bulgeRad + halfAngleRad);
    }
  });
  if (withPuck) {
    lengths.forEach((length, index) => {
      if (index % 2 === 0) return;
      const { at } = pointAt(line, length);
      pen.circle('puck', at.x, at.y, BACK_PUCK_RADIUS_M * pen.k);
    });
  }
  drawEnd(pen, line, end);
};

/** Two bars across the end. */
export const drawStop = (pen: Pen, at: SheetPoint, turnRad: number): void => {
  const bars = [0, -STOP_APART_M * pen.k].map(back => ({
    x: at.x + Math.cos(turnRad) * back,
    y: at.y + Math.sin(turnRad) * back,
  }));
  pen.path('stop', sink => {
    for (const bar of bars) {
      const one = beside(bar, turnRad, STOP_HALF_M * pen.k);
      const other = beside(bar, turnRad, -STOP_HALF_M * pen.k);
      sink.moveTo(one.x, one.y);
      sink.lineTo(other.x, other.y);
    }
  });
};

/** A pass along straight legs: dashed with an open head; at a board it bends and leaves a small half disc. */
export const drawPassLine = (pen: Pen, legs: readonly SheetPoint[]): void => {
  drawPassAlong(pen, legs);
  legs.slice(1, -1).forEach((at, index) => {
    drawBounce(pen, legs[index]!, at, legs[index + 2]!);
  });
};

/** A pass whose way bends without a bounce: it follows the boards, or the stick that carries it. */
export const drawPassAlong = (pen: Pen, points: readonly SheetPoint[]): void => {
  drawCased(pen, 'pass', points);
  const line = polylineOf(points);
  const end = pointAt(line, line.length);
  drawPassHead(pen, end.at, end.turnRad);
};

/** How a pass was meant to go on from where it was cut: dots and a thin head, at the boards an open half disc. */
export const drawPassMeant = (pen: Pen, points: readonly SheetPoint[], bounces: boolean): void => {
  pen.path('passMeant', sink => tracePoints(sink, points));
  if (bounces)
    points.slice(1, -1).forEach((at, index) => {
      drawBounce(pen, points[index]!, at, points[index + 2]!, 'thin');
    });
  const line = polylineOf(points);
  const end = pointAt(line, line.length);
  drawPassHead(pen, end.at, end.turnRad, 'thin');
};

/** A half disc with its flat side on the boards, which lie across the middle between coming and leaving. */
const drawBounce = (
  pen: Pen,
  from: SheetPoint,
  at: SheetPoint,
  to: SheetPoint,
  mark: 'bounce' | 'thin' = 'bounce',
): void => {
  const cameRad = directionRad(at, from);
  const leftRad = directionRad(at, to);
  const inwardsRad = Math.atan2(Math.sin(cameRad) + Math.sin(leftRad), Math.cos(cameRad) + Math.cos(leftRad));
  pen.path(mark, sink => {
    sink.arc(at.x, at.y, BOUNCE_RADIUS_M * pen.k, inwardsRad - Math.PI / 2, inwardsRad + Math.PI / 2);
    sink.closePath();
  });
};

/** A shot: two lines and a heavy head. */
export const drawShotLine = (pen: Pen, from: SheetPoint, to: SheetPoint): void => {
  const line = polylineOf([from, to]);
  const { at: tip, turnRad } = pointAt(line, line.length);
  pen.path('casing', sink => tracePoints(sink, line.points));
  const short = pieceOf(line, 0, Math.max(0, line.length - SHOT_HEAD_M * pen.k * 0.7)).points;
  for (const side of [1, -1]) {
    const shifted = short.map(point => beside(point, turnRad, side * SHOT_HALF_APART_M * pen.k));
    pen.path('shot', sink => tracePoints(sink, shifted));
  }
  drawShotHead(pen, tip, turnRad);
};

/** A line over its casing in the colour of the ice, so that crossings read as over and under. */
export const drawCased = (
  pen: Pen,
  mark: 'skate' | 'chase' | 'pass' | 'thin',
  points: readonly SheetPoint[],
): void => {
  if (points.length < 2) return;
  pen.path('casing', sink => tracePoints(sink, points));
  pen.path(mark, sink => tracePoints(sink, points));
};

const coveredAtEnd = (pen: Pen, end: LineEnd): number => {
  if (end === 'head') return SKATE_HEAD_COVERS_M * pen.k;
  return end === 'stop' ? STOP_APART_M * pen.k : 0;
};

const drawEnd = (pen: Pen, line: Polyline, end: LineEnd): void => {
  if (end === 'open' || line.length === 0) return;
  const { at, turnRad } = pointAt(line, line.length);
  if (end === 'head') drawSkateHead(pen, at, turnRad);
  else drawStop(pen, at, turnRad);
};

const waveOf = (line: Polyline, k: number, reach: number, end: LineEnd): readonly SheetPoint[] => {
  const waveLength = WAVE_LENGTH_M * Math.sqrt(k);
  const height = WAVE_HALF_HEIGHT_M * Math.sqrt(k) * Math.min(1, line.length / (2 * waveLength));
  // A line that goes on has no head to lead to: it stays a wave to where the next begins.
  const fadeAt = end === 'open' ? line.length : Math.max(0, line.length - WAVE_STRAIGHT_END_M * k);
  const fadeOver = (end === 'open' ? 0.35 : 0.6) * waveLength;
  const count = Math.max(2, Math.ceil((reach * WAVE_POINTS) / waveLength));
  const middle = evenlyAlong(line, reach, count);
  return middle.map((at, index) => {
    const length = (reach * index) / count;
    const grow = Math.min(1, length / (0.35 * waveLength));
    const fade = fadeAt > 0 ? Math.max(0, Math.min(1, (fadeAt - length) / fadeOver)) : 0;
    const swing = Math.sin((2 * Math.PI * length) / waveLength) * height * Math.min(grow, fade);
    // About the way over some points: a wave about short straight pieces must not break at their ends.
    const from = middle[Math.max(0, index - WAVE_SMOOTH)]!;
    const to = middle[Math.min(count, index + WAVE_SMOOTH)]!;
    return offTheWay(at, from, to, swing);
  });
};
