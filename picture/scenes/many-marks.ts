import { type IcePoint, rinkOf } from '@icewright/engine';
import { drawMany } from '../drill/draw-many.ts';
import { drawRink, rinkViewBox } from '../ice/rink.ts';
import type { Scene } from './scene.ts';

const rink = rinkOf({ preset: '200x85ft' });

/** Places spread about a middle as people are, the same in every picture. */
const spreadAbout = (xM: number, yM: number, alongM: number, count: number): readonly IcePoint[] =>
  Array.from({ length: count }, (_, i) => {
    const turn = (i * 0.6180339887) % 1;
    const side = (i * 0.7548776662) % 1;
    return { xM: xM + alongM * (turn + side - 1), yM: yM + 0.5 * (side - 0.5) };
  });

export default {
  title: 'Where it came in many reps: in time, later; passes received, cut off, gone by',
  viewBox: rinkViewBox(rink),
  draw: pen => {
    drawRink(pen, rink, { dotLines: true });
    drawMany(pen, {
      yes: spreadAbout(-2, -1, 9, 240),
      other: spreadAbout(-13, -1.2, 6, 80),
      received: spreadAbout(12, 7, 1.2, 120),
      cutOff: spreadAbout(9, 9, 1.5, 12),
      missed: spreadAbout(14, 10, 2, 16),
    });
  },
} satisfies Scene;
