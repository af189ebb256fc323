import { drawBackward, drawCarry, drawForward } from '../ice/line-marks.ts';
import { polylineOf } from '../ice/polyline.ts';
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
]);
