import type { Pen } from '../pen/pen.ts';
import { type Polyline, pieceOf, pointAt, tracePoints } from './polyline.ts';
import { along, beside, directionRad, distanceOf, type SheetPoint } from './sheet-point.ts';

const ARCH_FROM_LINE_M = 0.34;
const ARCH_FOOT_M = 0.3;
const ARCH_RISE_M = 0.62;
const ARCH_POINTS = 24;
const PICK_UP_M = 0.55;
const STICK_FROM_M = 0.25;
const PLAYED_PUCK_M = 0.24;
const SCREEN_HALF_M = 0.75;
const FACE_M = 1.32;
const FACE_HALF_RAD = 0.62;
const FACE_TICK_M = 0.5;
const LEAST_PLACE_M = 0.5;

/** An arch over the part of a pass that is in the air, true to its length, on the side that is up on the page. */
export const drawSaucerArch = (pen: Pen, line: Polyline, fromM: number, toM: number): void => {
  const air = pieceOf(line, fromM, toM);
  if (air.length < 0.5 * pen.k) return;
  const side = archSide(pen, line, (fromM + toM) / 2);
  const offTheLine = (length: number, away: number): SheetPoint => {
    const { at, turnRad } = pointAt(air, length);
    return beside(at, turnRad, side * away * pen.k);
  };
  const foot = ARCH_FROM_LINE_M + ARCH_FOOT_M / 2;
  const arch = Array.from({ length: ARCH_POINTS + 1 }, (_, index) => {
    const share = index / ARCH_POINTS;
    return offTheLine(share * air.length, foot + 4 * share * (1 - share) * ARCH_RISE_M);
  });
  pen.path('thin', sink => {
    tracePoints(sink, arch);
    for (const length of [0, air.length]) {
      tracePoints(sink, [
        offTheLine(length, ARCH_FROM_LINE_M - ARCH_FOOT_M / 2),
        offTheLine(length, foot + ARCH_FOOT_M / 2),
      ]);
    }
  });
};

/** Top of the arch, where its word belongs. */
export const archTop = (pen: Pen, line: Polyline, fromM: number, toM: number): SheetPoint => {
  const { at, turnRad } = pointAt(line, (fromM + toM) / 2);
  const side = archSide(pen, line, (fromM + toM) / 2);
  return beside(at, turnRad, side * (ARCH_FROM_LINE_M + ARCH_RISE_M) * pen.k);
};

/** Which side of the line is up on the page: −1 is to the left of the way it goes. */
const archSide = (pen: Pen, line: Polyline, atM: number): 1 | -1 =>
  Math.cos(pointAt(line, atM).turnRad + pen.turnRad) >= 0 ? -1 : 1;

/** A puck that is met on the way, with a short arc into it. */
export const drawPickUp = (pen: Pen, at: SheetPoint, turnRad: number): void => {
  pen.circle('puck', at.x, at.y, PLAYED_PUCK_M * pen.k);
  pen.path('thin', sink => sink.arc(at.x, at.y, PICK_UP_M * pen.k, turnRad - Math.PI / 2, turnRad));
};

/** A stick out to the puck: who gets there reaches for it. */
export const drawStick = (pen: Pen, from: SheetPoint, to: SheetPoint): void => {
  const turnRad = directionRad(from, to);
  if (distanceOf(from, to) > 2 * STICK_FROM_M * pen.k) {
    pen.path('stick', sink =>
      tracePoints(sink, [along(from, turnRad, STICK_FROM_M * pen.k), along(to, turnRad, -0.2 * pen.k)]),
    );
  }
  pen.circle('puck', to.x, to.y, PLAYED_PUCK_M * pen.k);
};

/** A bar across a lane that goes in this direction. */
export const drawScreenBar = (pen: Pen, at: SheetPoint, laneRad: number): void =>
  pen.path('stop', sink =>
    tracePoints(sink, [
      beside(at, laneRad, SCREEN_HALF_M * pen.k),
      beside(at, laneRad, -SCREEN_HALF_M * pen.k),
    ]),
  );

/** A small arc with a tick: which way the body turns, where it stands. */
export const drawFacing = (pen: Pen, at: SheetPoint, turnRad: number): void =>
  pen.path('thin', sink => {
    const radius = FACE_M * pen.k;
    const from = along(at, turnRad - FACE_HALF_RAD, radius);
    sink.moveTo(from.x, from.y);
    sink.arc(at.x, at.y, radius, turnRad - FACE_HALF_RAD, turnRad + FACE_HALF_RAD);
    tracePoints(sink, [along(at, turnRad, radius), along(at, turnRad, radius + FACE_TICK_M * pen.k)]);
  });

/** The place that somebody must come to, true to size: an open circle. */
export const drawPlace = (pen: Pen, at: SheetPoint, withinM: number): void =>
  pen.circle('place', at.x, at.y, Math.max(LEAST_PLACE_M * pen.k, withinM));
