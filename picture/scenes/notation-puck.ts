import { drawCarry, drawForward, drawPassLine, drawShotLine } from '../ice/line-marks.ts';
import { drawNet } from '../ice/net.ts';
import { polylineOf } from '../ice/polyline.ts';
import { drawPucks } from '../ice/things.ts';
import { markSheet } from './mark-sheet.ts';
import { someone } from './scene-people.ts';

const level = (from: number, to: number) =>
  polylineOf([
    { x: from, y: 0 },
    { x: to, y: 0 },
  ]);

export default markSheet('The puck', [
  {
    name: 'Pass',
    says: 'dashed, open head',
    draw: pen => {
      drawPassLine(pen, [
        { x: -5.1, y: 0.67 },
        { x: 4.9, y: -0.77 },
      ]);
      someone(pen, 'F1', -6.2, -0.8);
      someone(pen, 'F2', 6, 0.9);
    },
  },
  {
    name: 'Bank pass, with its word',
    says: 'a pass that bends at the boards',
    draw: pen => {
      pen.path('boards', sink => {
        sink.moveTo(-7.7, -2.1);
        sink.lineTo(7.7, -2.1);
      });
      drawPassLine(pen, [
        { x: -5.1, y: 0.7 },
        { x: -1.4, y: -2.05 },
        { x: 4.5, y: 0.55 },
      ]);
      pen.text('labelWord', 'bank', -2.6, -0.8, { anchor: 'middle' });
      someone(pen, 'D1', -6, -1.25);
      someone(pen, 'F2', 5.4, -0.95);
    },
  },
  {
    name: 'Shot',
    says: 'double line, heavy head',
    draw: pen => {
      drawShotLine(pen, { x: -5.1, y: 0.7 }, { x: 4.6, y: -0.1 });
      drawNet(
        pen,
        { atM: { xM: 5.1, yM: 0 }, facingRad: Math.PI, openingM: 1.83, depthM: 1.016 },
        'netMoved',
      );
      someone(pen, 'F1', -6, -0.75);
    },
  },
  {
    name: 'Pick-up',
    says: 'the path meets a puck and becomes a wave',
    draw: pen => {
      drawForward(pen, level(-5.1, -0.5), 'open');
      drawCarry(pen, level(0.2, 6.2), 'head');
      drawPucks(pen, { xM: -0.15, yM: 0 }, 1);
      someone(pen, 'F1', -6.2, 0);
    },
  },
  {
    name: 'Chase',
    says: 'broken where the way is the chaser’s choice',
    draw: pen => {
      drawForward(pen, level(-5.1, -2.4), 'open');
      drawForward(pen, level(-2.4, 4.4), 'head', 'chase');
      pen.text('labelWord', 'chases X1', -1.2, -0.8, { anchor: 'middle' });
      someone(pen, 'F3', -6.2, 0);
      someone(pen, 'X1', 5.9, 0);
    },
  },
]);
