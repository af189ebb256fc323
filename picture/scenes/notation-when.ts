import { drawPlace } from '../ice/act-marks.ts';
import { drawCue } from '../ice/cue.ts';
import { drawCarry, drawForward, drawPassLine } from '../ice/line-marks.ts';
import { drawLink } from '../ice/link.ts';
import { polylineOf } from '../ice/polyline.ts';
import { markSheet } from './mark-sheet.ts';
import { someone } from './scene-people.ts';

const level = (from: number, to: number, y: number) =>
  polylineOf([
    { x: from, y },
    { x: to, y },
  ]);

export default markSheet('When', [
  {
    name: 'Order',
    says: 'small figures on the lines',
    draw: pen => {
      drawPassLine(pen, [
        { x: -5.1, y: 0.7 },
        { x: -0.9, y: -0.8 },
      ]);
      drawPassLine(pen, [
        { x: 0.9, y: -0.8 },
        { x: 5.1, y: 0.7 },
      ]);
      pen.text('order', '1', -2.9, -0.75, { anchor: 'middle' });
      pen.text('order', '2', 3.1, -0.75, { anchor: 'middle' });
      someone(pen, 'F1', -6.2, -1);
      someone(pen, 'F2', 0, 1.1);
      someone(pen, 'F3', 6.1, -1);
    },
  },
  {
    name: 'Cue',
    says: 'full where it fires, open where it waits',
    draw: pen => {
      drawCarry(pen, level(-5.2, 6, -1), 'head');
      drawForward(pen, level(-3.3, 5.4, 1.1), 'head');
      drawCue(pen, { x: 1.6, y: -1 }, 'a', 'fires');
      drawCue(pen, { x: -4.1, y: 1.1 }, 'a', 'waits');
      someone(pen, 'X1', -6.2, 1);
      someone(pen, 'F3', -6.2, -1.1);
    },
  },
  {
    name: 'Whistle, seconds',
    says: 'a letter or a number in the lozenge',
    draw: pen => {
      drawCue(pen, { x: -5.4, y: 0 }, 'w', 'fires');
      pen.text('label', 'whistle', -4.2, 0.3);
      drawCue(pen, { x: 1.2, y: 0 }, '2', 'fires');
      pen.text('label', 'after 2 s', 2.4, 0.3);
    },
  },
  {
    name: 'Place to come to',
    says: 'open circle, true to size; the cue fires',
    draw: pen => {
      drawForward(pen, level(-5.1, 6, 0.4), 'head');
      drawPlace(pen, { x: 1, y: 0.4 }, 1.5);
      drawCue(pen, { x: 1, y: -1.6 }, 'a', 'fires');
      someone(pen, 'F1', -6.2, -0.4);
    },
  },
  {
    name: 'Keep a gap',
    says: 'a distance held, metres on it',
    draw: pen => {
      drawLink(pen, { x: -4.2, y: 0 }, { x: 4, y: 0 }, 'gap 1.8 m');
      someone(pen, 'D1', -4.2, 0);
      someone(pen, 'X1', 4, 0);
    },
  },
]);
