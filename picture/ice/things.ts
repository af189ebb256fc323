import type { IcePoint } from '@icewright/engine';
import type { Pen } from '../pen/pen.ts';
import { sheetPoint } from './sheet-point.ts';

const PUCK_M = 0.24;
const HEAP_PUCK_M = 0.16;
/** Where the pucks of a heap lie about its place, ice metres at k = 1. */
const HEAP: readonly (readonly [number, number])[] = [
  [0, -0.13],
  [0.36, -0.21],
  [-0.34, -0.05],
  [0.08, 0.31],
  [0.46, 0.25],
  [-0.3, 0.41],
  [0.2, -0.51],
];

/** One dot for a puck, a heap for several. */
export const drawPucks = (pen: Pen, atM: IcePoint, count: number): void => {
  const { x, y } = sheetPoint(atM);
  if (count <= 1) {
    pen.circle('puck', x, y, PUCK_M * pen.k);
    return;
  }
  for (const [dx, dy] of HEAP.slice(0, Math.min(count, HEAP.length))) {
    pen.circle('puck', x + dx * pen.k, y + dy * pen.k, HEAP_PUCK_M * pen.k);
  }
};

/** A small filled triangle, upright. */
export const drawPylon = (pen: Pen, atM: IcePoint): void => {
  const { x, y } = sheetPoint(atM);
  const k = pen.k;
  pen.place({ x, y, turnRad: -pen.turnRad }, () =>
    pen.path('pylon', sink => {
      sink.moveTo(0, -0.41 * k);
      sink.lineTo(0.42 * k, 0.35 * k);
      sink.lineTo(-0.42 * k, 0.35 * k);
      sink.closePath();
    }),
  );
};

/** A flag at k = 1, ice metres. */
export const FLAG_M = { width: 1.5, height: 1.35 } as const;
const POLE_M = 2.1;

/** Which way a flag flies from its place, as it is seen on the page; and how long its pole is, in usual poles. */
export interface FlagWay {
  readonly side: 1 | -1;
  readonly up: 1 | -1;
  readonly poles: number;
}

export const USUAL_WAY: FlagWay = { side: 1, up: 1, poles: 1 };

/** Middle of a flag from its place on the page, ice metres, y down. */
export const flagMiddle = (way: FlagWay, k: number): { readonly x: number; readonly y: number } => ({
  x: (way.side * FLAG_M.width * k) / 2,
  y: way.up * (-POLE_M * way.poles + FLAG_M.height / 2) * k,
});

/** A finding on the ice: a numbered flag on a pole that stands at its place. */
export const drawFlag = (
  pen: Pen,
  atM: IcePoint,
  number: number,
  weight: 'look' | 'know',
  way: FlagWay = USUAL_WAY,
): void => {
  const { x, y } = sheetPoint(atM);
  const k = pen.k;
  const width = way.side * FLAG_M.width * k;
  const pole = way.up * POLE_M * way.poles * k;
  const height = way.up * FLAG_M.height * k;
  const middle = flagMiddle(way, k);
  pen.group('flag', { number: `${number}`, weight }, () =>
    pen.place({ x, y, turnRad: -pen.turnRad }, () => {
      pen.path(weight === 'look' ? 'flagLook' : 'flag', sink => {
        sink.moveTo(0, 0);
        sink.lineTo(0, -pole);
        sink.lineTo(width, -pole);
        sink.lineTo(width, -pole + height);
        sink.lineTo(0, -pole + height);
      });
      pen.text(weight === 'look' ? 'flagLook' : 'flag', `${number}`, middle.x, middle.y, {
        anchor: 'middle',
        drop: 0.325 * k,
      });
    }),
  );
};
