import { drawTicks } from '../drill/draw-lines.ts';
import { drawFacing } from '../ice/act-marks.ts';
import { drawBackward, drawCarry, drawForward } from '../ice/line-marks.ts';
import { polylineOf } from '../ice/polyline.ts';
import { drawPylon } from '../ice/things.ts';
import { markSheet } from './mark-sheet.ts';
import { someone } from './scene-people.ts';

const bend = (y: number) =>
  polylineOf(
    Array.from({ length: 60 }, (_, index) => {
      const share = index / 59;
      return { x: -5.1 + 11.1 * share, y: y + 0.9 - 2 * share * share * (3 - 2 * share) };
    }),
  );
const straight = (to: number) =>
  polylineOf([
    { x: -5.1, y: 0 },
    { x: to, y: 0 },
  ]);
/** In, half round at 1.2 m, and back out. */
const tightTurn = polylineOf([
  { x: -5.1, y: -1.2 },
  ...Array.from({ length: 25 }, (_, index) => ({
    x: 1.7 + 1.2 * Math.sin((index * Math.PI) / 24),
    y: -1.2 * Math.cos((index * Math.PI) / 24),
  })),
  { x: -4.6, y: 1.2 },
]);
const backOut = polylineOf([
  { x: 2.4, y: -0.1 },
  { x: 2.4, y: 0.6 },
  { x: 2.2, y: 0.95 },
  { x: 1.8, y: 1.1 },
  { x: -4.4, y: 1.1 },
]);

export default markSheet('Skating', [
  {
    name: 'Forward',
    says: 'solid, filled head',
    draw: pen => {
      drawForward(pen, bend(0), 'head');
      someone(pen, 'F1', -6.2, -0.9);
    },
  },
  {
    name: 'Forward with puck',
    says: 'a wave, straight for the last stride',
    draw: pen => {
      drawCarry(pen, bend(0), 'head');
      someone(pen, 'F1', -6.2, -0.9);
    },
  },
  {
    name: 'Backward',
    says: 'nested half circles, bulging the way she faces',
    draw: pen => {
      drawBackward(pen, bend(0), 'head');
      someone(pen, 'D1', -6.2, -0.9);
    },
  },
  {
    name: 'Backward with puck',
    says: 'the same, a puck in every second one',
    draw: pen => {
      drawBackward(pen, bend(0), 'head', true);
      someone(pen, 'D1', -6.2, -0.9);
    },
  },
  {
    name: 'Stop',
    says: 'two bars across the end',
    draw: pen => {
      drawForward(pen, straight(3.4), 'stop');
      someone(pen, 'F2', -6.2, 0);
    },
  },
  {
    name: 'Stop and start',
    says: 'two bars, and the path goes on',
    draw: pen => {
      drawForward(
        pen,
        polylineOf([
          { x: -5.1, y: -0.7 },
          { x: 2.4, y: -0.7 },
        ]),
        'stop',
      );
      drawForward(pen, backOut, 'head');
      someone(pen, 'F2', -6.2, 0.7);
    },
  },
  {
    name: 'Tight turn',
    says: 'as tight as the speed allows',
    draw: pen => {
      drawForward(pen, tightTurn, 'head');
      drawPylon(pen, { xM: 1.7, yM: 0 });
      someone(pen, 'F3', -6.2, 1.2);
    },
  },
  {
    name: 'Pivot',
    says: 'a ring where the line changes its style',
    draw: pen => {
      drawForward(pen, straight(-0.5), 'open');
      pen.circle('pivot', -0.2, 0, 0.36);
      drawBackward(
        pen,
        polylineOf([
          { x: 0.2, y: 0 },
          { x: 6, y: 0 },
        ]),
        'head',
      );
      someone(pen, 'D2', -6.2, 0);
    },
  },
  {
    name: 'Seconds along a route',
    says: 'one tick a second of her speed profile',
    draw: pen => {
      const line = straight(6.3);
      drawForward(pen, line, 'head');
      drawTicks(pen, { points: line.points, ticks: [-3.4, 2.3].map(x => ({ x, y: 0 })) });
      someone(pen, 'F1', -6.2, 0);
    },
  },
  {
    name: 'Faces',
    says: 'arc and tick, the way she is turned',
    draw: pen => {
      drawFacing(pen, { x: 0, y: 0 }, -0.4);
      someone(pen, 'D1', 0, 0);
    },
  },
]);
