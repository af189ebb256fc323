import {
  drawFacing,
  drawPickUp,
  drawPlace,
  drawSaucerArch,
  drawScreenBar,
  drawStick,
} from '../ice/act-marks.ts';
import { drawCue } from '../ice/cue.ts';
import {
  drawBackward,
  drawCarry,
  drawForward,
  drawPassAlong,
  drawPassLine,
  drawPassMeant,
  drawShotLine,
} from '../ice/line-marks.ts';
import { drawLink } from '../ice/link.ts';
import { drawNet } from '../ice/net.ts';
import { type Polyline, polylineOf, tracePoints } from '../ice/polyline.ts';
import type { SheetPoint } from '../ice/sheet-point.ts';
import { drawSpot, drawWaiting } from '../ice/spot.ts';
import { drawPucks, drawPylon } from '../ice/things.ts';
import type { Drawing } from '../pen/pen.ts';
import { drawTicks } from './draw-lines.ts';
import type { KeyEntry } from './used-marks.ts';

/** Entries whose sign is one small thing and not a line. */
export const NARROW_SIGNS: readonly KeyEntry[] = [
  'fires',
  'waits',
  'whistle',
  'seconds',
  'place',
  'face',
  'left',
  'us',
  'them',
  'goalie',
  'coach',
  'pucks',
  'pylon',
  'net',
  'smallNet',
];

const HALF_M = 3.2;
const ORIGIN = { x: 0, y: 0 } as const;
const levelLine = (from: number, to: number): Polyline =>
  polylineOf([
    { x: from, y: 0 },
    { x: to, y: 0 },
  ]);
const LINE = levelLine(-HALF_M, HALF_M);
/** In, half round, and back out. */
const TIGHT_TURN = polylineOf([
  { x: -HALF_M, y: -0.75 },
  ...Array.from({ length: 13 }, (_, index) => ({
    x: 1.6 + 0.75 * Math.sin((index * Math.PI) / 12),
    y: -0.75 * Math.cos((index * Math.PI) / 12),
  })),
  { x: -1.4, y: 0.75 },
]);

/** A corner of the boards, lying `downM` under the middle; a line inside it keeps `offM` away. */
const alongBoards = (downM: number, offM: number): readonly SheetPoint[] => [
  { x: -HALF_M, y: downM },
  ...Array.from({ length: 9 }, (_, index) => ({
    x: HALF_M - 1.6 - offM + 1.6 * Math.sin((index * Math.PI) / 16),
    y: downM - 1.6 * (1 - Math.cos((index * Math.PI) / 16)),
  })),
];

const SPOT = { atM: { xM: 0, yM: 0 }, facingRad: 0, kind: 'skater' } as const;
const WAITING = { ...SPOT, side: 'us', role: 'F', waitingCount: 4, atM: { xM: 2.2, yM: 0 } } as const;

/** The sign of each entry about the origin, drawn by the routines that draw it on the ice. */
export const KEY_SIGNS: Readonly<Record<KeyEntry, Drawing>> = {
  skating: pen => drawForward(pen, LINE, 'head'),
  withPuck: pen => drawCarry(pen, LINE, 'head'),
  backward: pen => drawBackward(pen, LINE, 'head'),
  pivot: pen => {
    drawForward(pen, levelLine(-HALF_M, -0.6), 'open');
    pen.circle('pivot', -0.25, 0, 0.36);
    drawBackward(pen, levelLine(0.1, HALF_M), 'open');
  },
  backwardPuck: pen => drawBackward(pen, LINE, 'head', true),
  stop: pen => drawForward(pen, LINE, 'stop'),
  turn: pen => drawForward(pen, TIGHT_TURN, 'head'),
  face: pen => drawFacing(pen, { x: -1, y: 0 }, 0),
  pass: pen => drawPassLine(pen, LINE.points),
  bank: pen =>
    drawPassLine(pen, [
      { x: -HALF_M, y: 0.8 },
      { x: 0, y: -0.8 },
      { x: HALF_M, y: 0.8 },
    ]),
  saucer: pen => {
    drawPassLine(pen, LINE.points);
    drawSaucerArch(pen, LINE, 0.6, 4.2);
  },
  rim: pen => {
    pen.path('boards', sink => tracePoints(sink, alongBoards(1.1, 0)));
    drawPassAlong(pen, alongBoards(0.75, 0.35));
  },
  meant: pen => {
    drawPassLine(pen, [
      { x: -HALF_M, y: 0.8 },
      { x: -1.2, y: 0 },
    ]);
    const boards = { x: 0.8, y: -0.8 };
    drawPassMeant(pen, [{ x: -1.2, y: 0 }, boards, { x: HALF_M, y: 0.5 }], true);
  },
  drop: pen => {
    drawCarry(pen, levelLine(-HALF_M, 0), 'open');
    pen.circle('puck', 0.35, 0, 0.24);
    drawForward(pen, levelLine(0.8, HALF_M), 'head');
  },
  pickUp: pen => {
    drawForward(pen, levelLine(-HALF_M, -0.9), 'open');
    drawPickUp(pen, { x: -0.5, y: 0 }, 0);
    drawCarry(pen, levelLine(-0.2, HALF_M), 'head');
  },
  left: pen => pen.circle('puck', 0, 0, 0.24),
  shot: pen => drawShotLine(pen, { x: -HALF_M, y: 0 }, { x: HALF_M, y: 0 }),
  chase: pen => drawForward(pen, LINE, 'head', 'chase'),
  gap: pen => drawLink(pen, { x: -HALF_M, y: 0 }, { x: HALF_M, y: 0 }, '', { fromM: 0.2, toM: 0.2 }),
  gapSkated: pen => drawForward(pen, LINE, 'head', 'chase'),
  ticks: pen => {
    drawForward(pen, LINE, 'open');
    drawTicks(pen, { points: LINE.points, ticks: [-1.6, 0, 1.6].map(x => ({ x, y: 0 })) });
  },
  steal: pen => {
    drawForward(pen, levelLine(-HALF_M, 1.4), 'head', 'chase');
    drawStick(pen, { x: 1.4, y: 0 }, { x: HALF_M - 0.3, y: 0 });
  },
  screen: pen => {
    drawPassLine(pen, LINE.points);
    drawScreenBar(pen, { x: 0, y: 0 }, 0);
  },
  fires: pen => drawCue(pen, ORIGIN, 'a', 'fires'),
  waits: pen => drawCue(pen, ORIGIN, 'a', 'waits'),
  whistle: pen => drawCue(pen, ORIGIN, 'w', 'fires'),
  seconds: pen => drawCue(pen, ORIGIN, '2', 'fires'),
  place: pen => drawPlace(pen, ORIGIN, 0.8),
  us: pen => drawSpot(pen, { ...SPOT, side: 'us', role: 'F' }),
  them: pen => drawSpot(pen, { ...SPOT, side: 'them', role: 'X' }),
  goalie: pen => drawSpot(pen, { ...SPOT, side: 'us', role: 'G', kind: 'goalie', atM: { xM: -0.4, yM: 0 } }),
  coach: pen => drawSpot(pen, { ...SPOT, side: 'us', role: 'Co', kind: 'coach' }),
  line: pen => {
    drawWaiting(pen, WAITING);
    drawSpot(pen, WAITING);
  },
  pucks: pen => drawPucks(pen, SPOT.atM, 7),
  pylon: pen => drawPylon(pen, SPOT.atM),
  net: pen =>
    drawNet(pen, { atM: { xM: -0.5, yM: 0 }, facingRad: Math.PI, openingM: 1.4, depthM: 0.85 }, 'netMoved'),
  smallNet: pen =>
    drawNet(pen, { atM: { xM: -0.3, yM: 0 }, facingRad: Math.PI, openingM: 0.9, depthM: 0.5 }, 'netMoved'),
  divider: pen =>
    pen.path('divider', sink => {
      sink.moveTo(-HALF_M, 0);
      sink.lineTo(HALF_M, 0);
    }),
};
