import type { DrillPlan, Spot, SpotId } from '@icewright/engine';
import { drawFacing, drawPickUp, drawSaucerArch, drawScreenBar, drawStick } from '../ice/act-marks.ts';
import { drawBankWedge } from '../ice/bank-pass.ts';
import {
  drawBackward,
  drawCarry,
  drawForward,
  drawPassAlong,
  drawPassLine,
  drawPassMeant,
  drawShotLine,
  drawStop,
} from '../ice/line-marks.ts';
import { drawLink } from '../ice/link.ts';
import { type Polyline, pieceOf, pointAt, polylineOf, tracePoints } from '../ice/polyline.ts';
import { along, beside, directionRad, distanceOf, type SheetPoint, sheetPoint } from '../ice/sheet-point.ts';
import { spotRadiusM } from '../ice/spot.ts';
import type { Pen } from '../pen/pen.ts';
import type { ChaseSign, DrillLine, PassLine, RouteLine, SignLine } from './drill-line.ts';

const PIVOT_M = 0.36;
const TICK_HALF_M = 0.42;
/** A pass that ends this near to a mark ends at its rim. */
const NEAR_M = 0.4;
const CLEAR_STEP_M = 0.05;
const PUCK_CLEAR_M = 0.4;
/** The way of who screens ends before the bar, which would else be lost in it. */
const BAR_CLEAR_M = 1.1;
const DROPPED_PUCK_M = 0.24;
/** Drawn reach of a stick before a steal is played. */
const STICK_M = 1.4;

/** A drop that goes no farther than this is left where it is; a longer one is a short pass. */
const DROP_LINE_M = 2.5;

/** A line with whose it is. */
type Owned<Line> = Line & Pick<DrillLine, 'spot' | 'act'>;

/** One act's line; it begins and ends at the rims of the spots it touches. */
export const drawRoute = (pen: Pen, line: DrillLine, plan: DrillPlan): void =>
  // A route looks as its line and the mark it begins at.
  line.kind === 'route'
    ? pen.kept(line, [plan.spots[line.spot]], () => drawAct(pen, line, plan))
    : drawAct(pen, line, plan);

const drawAct = (pen: Pen, line: DrillLine, plan: DrillPlan): void =>
  pen.group('act', { spot: line.spot, act: line.act, kind: line.kind }, () => {
    if (line.kind === 'route') drawRouteLine(pen, line, plan);
    else if (line.kind === 'pass') drawPass(pen, line, plan);
    else if (line.kind === 'shot') {
      const { from } = clearPart(pen, plan, polylineOf([line.from, line.to]), line.spot, false);
      drawShotLine(pen, along(line.from, directionRad(line.from, line.to), from), line.to);
    } else if (line.kind === 'gap') {
      drawLink(pen, line.from, line.to, '', { fromM: 1.05 * pen.k, toM: 1.05 * pen.k });
    } else if (line.kind === 'sign') drawSign(pen, line);
    else drawChase(pen, line);
  });

/** Ticks lie above all routes, so that a crossing does not eat a second. */
export const drawTicks = (pen: Pen, line: Pick<RouteLine, 'points' | 'ticks'>): void => {
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

/** Pucks that are dropped or left lie above all routes; one that lies where its spot stands is drawn before her. */
export const drawLeftPuck = (pen: Pen, line: DrillLine, plan: DrillPlan): void => {
  const at = leftAt(line);
  const spot = plan.spots[line.spot];
  if (!at || !spot) return;
  const own = sheetPoint(spot.atM);
  const isUnderDisc = distanceOf(at, own) < spotRadiusM(spot, pen.k);
  const clear = along(own, -spot.facingRad, spotRadiusM(spot, pen.k) + DROPPED_PUCK_M * pen.k);
  const place = isUnderDisc ? clear : at;
  pen.circle('puck', place.x, place.y, DROPPED_PUCK_M * pen.k);
};

const leftAt = (line: DrillLine): SheetPoint | undefined => {
  if (line.kind === 'pass' && line.way === 'drop') return line.legs[0];
  return line.kind === 'sign' && line.sign === 'left' ? line.at : undefined;
};

const drawRouteLine = (pen: Pen, line: Owned<RouteLine>, plan: DrillPlan): void => {
  const whole = polylineOf(line.points);
  const first = line.points[0];
  if (!first) return;
  drawAtEnd(pen, line, whole);
  if (whole.length < 0.3) return;
  const pivotM = line.pivot ? PIVOT_M * pen.k : 0;
  const clear = Math.max(pivotM, clearPart(pen, plan, whole, line.spot, false).from);
  const short =
    (line.laneRad !== undefined ? BAR_CLEAR_M : line.puckAtEnd?.way === 'pickUp' ? PUCK_CLEAR_M : 0) * pen.k;
  const from = Math.min(clear, whole.length * 0.5);
  const route = pieceOf(whole, from, Math.max(from, whole.length - short));
  const alone = line.puckComesAt ? lengthNearest(whole, line.puckComesAt) - from : 0;
  if (alone > 0) drawWay(pen, { ...line, style: 'skate', end: 'open' }, pieceOf(route, 0, alone));
  drawWay(pen, line, alone > 0 ? pieceOf(route, alone, route.length) : route);
  if (line.pivot) pen.circle('pivot', first.x, first.y, pivotM);
};

const drawWay = (pen: Pen, { style, end, backward }: RouteLine, way: Polyline): void => {
  if (backward) drawBackward(pen, way, end, style === 'carry');
  else if (style === 'carry') drawCarry(pen, way, end);
  else drawForward(pen, way, end, style);
};

/** A puck that is met, a stick that reaches for one, a bar across a lane. */
const drawAtEnd = (pen: Pen, line: RouteLine, whole: Polyline): void => {
  const { at, turnRad } = pointAt(whole, whole.length);
  if (line.puckAtEnd?.way === 'pickUp') drawPickUp(pen, line.puckAtEnd.at, turnRad);
  if (line.puckAtEnd?.way === 'stick') drawStick(pen, at, line.puckAtEnd.at);
  if (line.laneRad !== undefined) drawScreenBar(pen, at, line.laneRad);
};

const drawPass = (pen: Pen, line: Owned<PassLine>, plan: DrillPlan): void => {
  if (line.meant !== undefined) drawPassMeant(pen, line.meant, line.way === 'bank');
  const way = polylineOf(line.legs);
  const end = line.legs[line.legs.length - 1];
  const clear = clearPart(pen, plan, way, line.spot, true);
  if (clear.to - clear.from < 0.6 || (line.way === 'drop' && way.length < DROP_LINE_M * pen.k)) return;
  const last = line.legs[line.legs.length - 2];
  if (line.halfWedgeM !== undefined && last && end) drawBankWedge(pen, last, end, line.halfWedgeM);
  const { points } = pieceOf(way, clear.from, clear.to);
  if (line.way === 'rim') drawPassAlong(pen, points);
  else drawPassLine(pen, points);
  if (line.airM === undefined) return;
  drawSaucerArch(pen, way, clear.from, Math.min(clear.to, line.airM));
};

const drawSign = (pen: Pen, { sign, at, turnRad }: SignLine): void => {
  if (sign === 'pivot') pen.circle('pivot', at.x, at.y, PIVOT_M * pen.k);
  else if (sign === 'face') drawFacing(pen, at, turnRad);
  else if (sign === 'stop') drawStop(pen, at, turnRad);
};

/** Before it is run a chase has no line of its own: a solid start, then the chaser's choice, broken. */
const drawChase = (pen: Pen, line: ChaseSign): void => {
  const turnRad = directionRad(line.from, line.to);
  const span = Math.max(2.4 * pen.k, Math.min(7 * pen.k, distanceOf(line.from, line.to) - 1.2 * pen.k));
  const start = along(line.from, turnRad, 1.02 * pen.k);
  const choice = along(line.from, turnRad, span * 0.45);
  drawForward(pen, polylineOf([start, choice]), 'open');
  const tip = along(line.from, turnRad, span);
  drawForward(pen, polylineOf([choice, tip]), 'head', 'chase');
  if (line.takes) drawStick(pen, tip, along(tip, turnRad, STICK_M * pen.k));
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
