import type { BankCone, BankPass, IcePoint } from '@icewright/engine';
import type { Pen } from '../pen/pen.ts';
import { drawPassLine } from './line-marks.ts';
import { tracePoints } from './polyline.ts';
import {
  along,
  beside,
  directionRad,
  distanceOf,
  type SheetPoint,
  sheetPoint,
  sheetPoints,
} from './sheet-point.ts';

/** Two-sided 95 % of a normal spread, in standard deviations. */
const SURELY_SDS = 1.96;
const RIM_M = 1.05;

/** A computed pass off the boards, with its word and, when its cone is known, the wedge of its ± (95 %). */
export const drawBankPass = (
  pen: Pen,
  bank: { readonly fromM: IcePoint; readonly pass: BankPass; readonly cone?: BankCone },
): void => {
  const from = sheetPoint(bank.fromM);
  const meet = sheetPoint(bank.pass.meetM);
  const bounces = sheetPoints(bank.pass.bounces.map(bounce => bounce.centreM));
  const first = bounces[0];
  const last = bounces[bounces.length - 1];
  if (!first || !last) return;
  pen.group('bank', {}, () => {
    if (bank.cone) drawBankWedge(pen, last, meet, SURELY_SDS * bank.cone.atMeetSdM);
    const start = along(
      from,
      directionRad(from, first),
      Math.min(RIM_M * pen.k, distanceOf(from, first) / 3),
    );
    drawPassLine(pen, [start, ...bounces, meet]);
    const below = first.y < 0 ? 1 : -1;
    pen.text('labelWord', bank.pass.bounces.length > 1 ? 'two banks' : 'bank', first.x, first.y, {
      anchor: 'middle',
      drop: (below > 0 ? 1.9 : -1.2) * pen.k,
    });
  });
};

/** The wedge of a pass's ± from where it leaves the boards to where it is taken, `halfM` to each side there. */
export const drawBankWedge = (pen: Pen, from: SheetPoint, to: SheetPoint, halfM: number): void => {
  const outRad = directionRad(from, to);
  pen.path('wedge', sink => {
    tracePoints(sink, [from, beside(to, outRad, halfM), beside(to, outRad, -halfM)]);
    sink.closePath();
  });
};
