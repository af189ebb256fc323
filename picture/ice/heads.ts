import type { Pen } from '../pen/pen.ts';
import { along, beside, type SheetPoint } from './sheet-point.ts';

/** Lengths of the heads at k = 1, ice metres. */
export const SKATE_HEAD_M = 1.15;
/** The line ends inside the head, so that its square end never shows beside the tip. */
export const SKATE_HEAD_COVERS_M = 0.85;
const SKATE_HEAD_HALF_M = 0.44;
const SKATE_HEAD_NOTCH_M = 0.9;
const PASS_HEAD_M = 0.85;
const PASS_HEAD_HALF_M = 0.42;
export const SHOT_HEAD_M = 1.25;
const SHOT_HEAD_HALF_M = 0.6;
const SHOT_HEAD_NOTCH_M = 0.97;

/** Filled head of a skating line, its tip at the point. */
export const drawSkateHead = (
  pen: Pen,
  tip: SheetPoint,
  turnRad: number,
  mark: 'head' | 'wayHead' = 'head',
): void => drawFilledHead(pen, tip, turnRad, mark, SKATE_HEAD_M, SKATE_HEAD_HALF_M, SKATE_HEAD_NOTCH_M);

/** Heavy head of a shot. */
export const drawShotHead = (pen: Pen, tip: SheetPoint, turnRad: number): void =>
  drawFilledHead(pen, tip, turnRad, 'head', SHOT_HEAD_M, SHOT_HEAD_HALF_M, SHOT_HEAD_NOTCH_M);

/** Open head of a pass. */
export const drawPassHead = (
  pen: Pen,
  tip: SheetPoint,
  turnRad: number,
  mark: 'passHead' | 'thin' = 'passHead',
): void => {
  const back = along(tip, turnRad, -PASS_HEAD_M * pen.k);
  const one = beside(back, turnRad, PASS_HEAD_HALF_M * pen.k);
  const other = beside(back, turnRad, -PASS_HEAD_HALF_M * pen.k);
  pen.path(mark, sink => {
    sink.moveTo(one.x, one.y);
    sink.lineTo(tip.x, tip.y);
    sink.lineTo(other.x, other.y);
  });
};

const drawFilledHead = (
  pen: Pen,
  tip: SheetPoint,
  turnRad: number,
  mark: 'head' | 'wayHead',
  lengthM: number,
  halfM: number,
  notchM: number,
): void => {
  const back = along(tip, turnRad, -lengthM * pen.k);
  const notch = along(tip, turnRad, -notchM * pen.k);
  const one = beside(back, turnRad, halfM * pen.k);
  const other = beside(back, turnRad, -halfM * pen.k);
  pen.path(mark, sink => {
    sink.moveTo(tip.x, tip.y);
    sink.lineTo(one.x, one.y);
    sink.lineTo(notch.x, notch.y);
    sink.lineTo(other.x, other.y);
    sink.closePath();
  });
};
