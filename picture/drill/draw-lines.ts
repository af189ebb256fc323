import type { DrillPlan, Spot, SpotId } from '@icewright/engine';
import { drawBackward, drawCarry, drawForward, drawPassLine, drawShotLine } from '../ice/line-marks.ts';
import { drawLink } from '../ice/link.ts';
import { type Polyline, pieceOf, pointAt, polylineOf, tracePoints } from '../ice/polyline.ts';
import { along, beside, directionRad, distanceOf, type SheetPoint, sheetPoint } from '../ice/sheet-point.ts';
import { spotRadiusM } from '../ice/spot.ts';
import type { Pen } from '../pen/pen.ts';
import type { DrillLine } from './drill-line.ts';

const PIVOT_M = 0.36;
const TICK_HALF_M = 0.42;
/** A pass that ends this near to a mark ends at its rim. */
const NEAR_M = 0.4;
const CLEAR_STEP_M = 0.05;

type RouteLine = Extract<DrillLine, { kind: 'route' }>;

/** One act's line; it begins and ends at the rims of the spots it touches. */
export const drawRoute = (pen: Pen, line: DrillLine, plan: DrillPlan): void =>
  pen.group('act', { spot: line.spot, act: line.act, kind: line.kind }, () => {
    if (line.kind === 'route') drawRouteLine(pen, line, plan);
    else if (line.kind === 'pass') drawPass(pen, line, plan);
    else if (line.kind === 'shot') {
      const { from } = clearPart(pen, plan, polylineOf([line.from, line.to]), line.spot, false);
      drawShotLine(pen, along(line.from, directionRad(line.from, line.to), from), line.to);
    } else if (line.kind === 'gap') {
      drawLink(pen, line.from, line.to, '', { fromM: 1.05 * pen.k, toM: 1.05 * pen.k });
    } else drawChase(pen, line);
  });

/** Ticks lie above all routes, so that a crossing does not eat a second. */
export const drawTicks = (pen: Pen, line: RouteLine): void => {
  if (line.ticks.length === 0) return;
  const route = polylineOf(line.points);
  pen.path('tick', sink => {
    for (const tick of line.ticks) {
      const turnRad = pointAt(route, lengthNearest(route, tick)).turnRad;
      tracePoints(sink, [
        beside(tick, turnRad, TICK_HALF_M * pen.k),
        beside(tick, turnRad, -TICK_HALF_M * pen.k),
      ]);
    }
  });
};

const drawRouteLine = (pen: Pen, line: RouteLine, plan: DrillPlan): void => {
  const whole = polylineOf(line.points);
  const first = line.points[0];
  if (!first || whole.length < 0.3) return;
  const pivotM = line.pivot ? PIVOT_M * pen.k : 0;
  const clear = Math.max(pivotM, clearPart(pen, plan, whole, line.spot, false).from);
  const route = pieceOf(whole, Math.min(clear, whole.length * 0.5), whole.length);
  if (line.backward) drawBackward(pen, route, line.end);
  else if (line.style === 'carry') drawCarry(pen, route, line.end);
  else drawForward(pen, route, line.end, line.style === 'chase' ? 'chase' : 'skate');
  if (line.pivot) pen.circle('pivot', first.x, first.y, pivotM);
};

const drawPass = (pen: Pen, line: Extract<DrillLine, { kind: 'pass' }>, plan: DrillPlan): void => {
  const way = polylineOf(line.legs);
  const clear = clearPart(pen, plan, way, line.spot, true);
  if (clear.to - clear.from < 0.6) return;
  drawPassLine(pen, pieceOf(way, clear.from, clear.to).points);
};

/** Before it is run a chase has no line of its own: a solid start, then the chaser's choice, broken. */
const drawChase = (pen: Pen, line: Extract<DrillLine, { kind: 'chaseSign' }>): void => {
  const turnRad = directionRad(line.from, line.to);
  const span = Math.max(2.4 * pen.k, Math.min(7 * pen.k, distanceOf(line.from, line.to) - 1.2 * pen.k));
  const start = along(line.from, turnRad, 1.02 * pen.k);
  const choice = along(line.from, turnRad, span * 0.45);
  drawForward(pen, polylineOf([start, choice]), 'open');
  drawForward(pen, polylineOf([choice, along(line.from, turnRad, span)]), 'head', 'chase');
};

/** The part of a line that is clear of the mark it begins at and, for a pass, of the mark it ends at. */
const clearPart = (
  pen: Pen,
  plan: DrillPlan,
  line: Polyline,
  own: SpotId,
  isPass: boolean,
): { readonly from: number; readonly to: number } => {
  const start = plan.spots[own];
  const isWithin = (length: number, spot: Spot): boolean =>
    distanceOf(pointAt(line, length).at, sheetPoint(spot.atM)) < spotRadiusM(spot, pen.k);
  let from = 0;
  while (start && from < line.length && isWithin(from, start)) from += CLEAR_STEP_M;
  let to = line.length;
  if (!isPass) return { from, to };
  const end = line.points[line.points.length - 1];
  const taker = Object.entries(plan.spots).find(
    ([id, spot]) =>
      id !== own && end && distanceOf(end, sheetPoint(spot.atM)) < spotRadiusM(spot, pen.k) + NEAR_M,
  )?.[1];
  while (taker && to > from && isWithin(to, taker)) to -= CLEAR_STEP_M;
  return { from, to };
};

const lengthNearest = (route: Polyline, point: SheetPoint): number => {
  let best = 0;
  let bestSpan = Number.POSITIVE_INFINITY;
  route.points.forEach((each, index) => {
    const span = distanceOf(each, point);
    if (span < bestSpan) {
      bestSpan = span;
      best = route.lengthTo[index] ?? 0;
    }
  });
  return best;
};
