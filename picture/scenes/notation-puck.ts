import { drawPickUp, drawSaucerArch, drawScreenBar, drawStick } from '../ice/act-marks.ts';
import { drawCarry, drawForward, drawPassAlong, drawPassLine, drawShotLine } from '../ice/line-marks.ts';
import { drawNet } from '../ice/net.ts';
import { pieceOf, polylineOf, tracePoints } from '../ice/polyline.ts';
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
    name: 'Saucer, with its word',
    says: 'an arch, true to the part in the air',
    draw: pen => {
      drawPassLine(pen, level(-5.05, 5.15).points);
      drawSaucerArch(pen, level(-5.05, 5.15), 0, 4.8);
      pen.text('labelWord', 'saucer 4.8 m', -2.65, -1.3, { anchor: 'middle' });
      someone(pen, 'F1', -6.2, 0);
      someone(pen, 'F2', 6.2, 0);
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
      drawPickUp(pen, { x: -0.15, y: 0 }, 0);
      someone(pen, 'F1', -6.2, 0);
    },
  },
  {
    name: 'Drop, with its word',
    says: 'a wave ends at a puck, the next begins',
    draw: pen => {
      drawCarry(
        pen,
        polylineOf([
          { x: -5.1, y: -0.9 },
          { x: -1.2, y: -0.9 },
        ]),
        'open',
      );
      drawForward(
        pen,
        polylineOf([
          { x: 0.1, y: -0.9 },
          { x: 6.2, y: -1.9 },
        ]),
        'head',
      );
      drawForward(
        pen,
        polylineOf([
          { x: -5.1, y: 1.2 },
          { x: -0.9, y: -0.45 },
        ]),
        'open',
      );
      drawCarry(
        pen,
        polylineOf([
          { x: 0.1, y: -0.6 },
          { x: 6.2, y: 1.4 },
        ]),
        'head',
      );
      pen.circle('puck', -0.5, -0.8, 0.24);
      pen.text('labelWord', 'drop', -0.5, -1.5, { anchor: 'middle' });
      someone(pen, 'F1', -6.2, 0.9);
      someone(pen, 'F2', -6.2, -1.2);
    },
  },
  {
    name: 'Rim, with its word',
    says: 'a pass that follows the boards',
    draw: pen => {
      const corner = (offM: number) => [
        { x: -7.7, y: 1.75 - offM },
        ...Array.from({ length: 13 }, (_, index) => ({
          x: 1 + (2.9 - offM) * Math.sin((index * Math.PI) / 24),
          y: 1.75 - offM - (2.9 - offM) * (1 - Math.cos((index * Math.PI) / 24)),
        })),
        { x: 3.9 - offM, y: -2 },
      ];
      pen.path('boards', sink => tracePoints(sink, corner(0)));
      drawPassAlong(pen, pieceOf(polylineOf(corner(0.35)), 2.7, 14).points);
      pen.text('labelWord', 'rim', -0.6, 0.75, { anchor: 'middle' });
      someone(pen, 'D2', -6, -0.6);
    },
  },
  {
    name: 'Take and steal',
    says: 'a stick line to the puck; the skater is named',
    draw: pen => {
      drawForward(
        pen,
        polylineOf([
          { x: -5.1, y: 0.9 },
          { x: -0.4, y: 0.7 },
          { x: 3, y: -0.3 },
        ]),
        'head',
      );
      drawStick(pen, { x: 3, y: -0.3 }, { x: 4.4, y: -0.7 });
      pen.text('labelWord', 'steal, X1', 0.8, -0.8, { anchor: 'middle' });
      someone(pen, 'F3', -6.2, -1);
      someone(pen, 'X1', 5.8, 0.4);
    },
  },
  {
    name: 'Screen, with its word',
    says: 'a bar across the lane',
    draw: pen => {
      drawScreenBar(pen, { x: 0.3, y: -0.3 }, 0);
      pen.text('labelWord', 'screen', -0.7, 1.85, { anchor: 'middle' });
      someone(pen, 'F2', -1, 0.3);
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
