import type { IcePoint } from '@icewright/engine';
import type { Pen } from '../pen/pen.ts';
import { drawPassLine } from './line-marks.ts';
import { tracePoints } from './polyline.ts';
import { rulingOf } from './ruling.ts';
import { along, beside, directionRad, distanceOf, type SheetPoint, sheetPoint } from './sheet-point.ts';

export type LaneState = 'open' | 'contested' | 'shut';

const START_HALF_M = 0.28;
const END_HALF_M = 0.8;
const RULED_APART_M = 0.5;
const RULED_BOTH_APART_M = 0.42;
const CUT_HALF_M = 0.95;

/**
 * A passing lane between two edges: clear when open, ruled one way when contested, ruled both ways and with a bar where
 * it is cut when shut. The words give the seconds.
 */
export const drawLane = (
  pen: Pen,
  lane: {
    readonly fromM: IcePoint;
    readonly toM: IcePoint;
    readonly state: LaneState;
    readonly words: string;
    /** Where it is cut, when shut. */
    readonly cutAtM?: IcePoint;
  },
): void => {
  const from = sheetPoint(lane.fromM);
  const to = sheetPoint(lane.toM);
  const turnRad = directionRad(from, to);
  const outline = laneOutline(from, to, turnRad, pen.k);
  pen.group('lane', { state: lane.state }, () => {
    const closed = (sink: Parameters<Parameters<Pen['path']>[1]>[0]) => {
      tracePoints(sink, outline);
      sink.closePath();
    };
    pen.path('laneGround', closed);
    drawRuling(pen, outline, lane.state);
    pen.path('laneEdge', closed);
    const span = distanceOf(from, to);
    const clear = Math.min(1.1 * pen.k, span / 4);
    drawPassLine(pen, [along(from, turnRad, clear), along(to, turnRad, -clear)]);
    if (lane.state === 'shut' && lane.cutAtM) {
      const cut = sheetPoint(lane.cutAtM);
      const one = beside(cut, turnRad, CUT_HALF_M * pen.k);
      const other = beside(cut, turnRad, -CUT_HALF_M * pen.k);
      pen.path('stop', sink => tracePoints(sink, [one, other]));
    }
    const middle = along(from, turnRad, span * (lane.state === 'shut' ? 0.36 : 0.5));
    const above = Math.abs(Math.cos(turnRad)) > 0.5;
    pen.text('label', lane.words, middle.x + (above ? 0 : 1.2 * pen.k), middle.y, {
      anchor: above ? 'middle' : 'start',
      drop: above ? -(0.95 + Math.abs(Math.tan(turnRad)) * 0.9) * pen.k : 0.3 * pen.k,
    });
  });
};

const laneOutline = (from: SheetPoint, to: SheetPoint, turnRad: number, k: number): readonly SheetPoint[] => [
  beside(from, turnRad, -START_HALF_M * k),
  beside(to, turnRad, -END_HALF_M * k),
  beside(to, turnRad, END_HALF_M * k),
  beside(from, turnRad, START_HALF_M * k),
];

const drawRuling = (pen: Pen, outline: readonly SheetPoint[], state: LaneState): void => {
  if (state === 'open') return;
  const apart = (state === 'shut' ? RULED_BOTH_APART_M : RULED_APART_M) * pen.k;
  const ways = state === 'shut' ? [Math.PI / 4, -Math.PI / 4] : [Math.PI / 4];
  pen.path('ruling', sink => {
    for (const way of ways) for (const line of rulingOf(outline, apart, way)) tracePoints(sink, line);
  });
};
