import { rinkOf } from '@icewright/engine';
import {
  drawErrorEllipse,
  drawFix,
  drawGoing,
  drawPictureEdge,
  drawPin,
  drawWay,
} from '../ice/freeze-marks.ts';
import { drawLane } from '../ice/lane.ts';
import { drawLink } from '../ice/link.ts';
import { drawRink } from '../ice/rink.ts';
import { sheetPoint } from '../ice/sheet-point.ts';
import { drawPucks } from '../ice/things.ts';
import type { Scene } from './scene.ts';
import { someone } from './scene-people.ts';

const rink = rinkOf({ preset: '200x85ft' });
const at = (xM: number, yM: number) => ({ xM, yM });
const PEOPLE = [
  ['X1', at(-6.2, 7.6), 0.5],
  ['X2', at(-2.6, -0.4), 0.9],
  ['X3', at(-5, -8.4), 0.4],
  ['D1', at(-10.6, 5.2), 0.6],
  ['D2', at(-10, -3.4), 0.8],
  ['F2', at(4.2, -3), 1.1],
] as const;
const F1 = at(-0.9, 8);
const GHOST = at(-7.8, 0.2);

export default {
  title:
    'A frozen picture on the ice: places with their ±, the distance, the lane, where she should have been',
  viewBox: [-31, -14.5, 40, 28],
  draw: pen => {
    drawRink(pen, rink, { dotLines: true });
    drawPictureEdge(pen, [at(-28, 12.4), at(5.5, 12.4), at(3, -11.5), at(-15.5, -12.5)]);
    drawLane(pen, { fromM: at(-6.2, 7.6), toM: at(-2.6, -0.4), state: 'open', words: 'open, +0.6 s' });
    for (const [role, place, spread] of PEOPLE) {
      drawErrorEllipse(pen, place, { xxM2: 0.02 * spread, xyM2: 0.01, yyM2: 0.14 * spread });
      drawGoing(pen, place, { xMps: -5, yMps: place.yM < 0 ? 1 : -1 });
      drawFix(pen, { side: role.startsWith('X') ? 'them' : 'us', role, atM: place });
    }
    drawPucks(pen, at(-7.4, 7.1), 1);
    drawWay(pen, F1, GHOST, '10.7 m');
    someone(pen, 'F1', GHOST.xM, GHOST.yM, { ghost: true });
    drawLink(pen, sheetPoint(at(-6.2, 7.6)), sheetPoint(F1), '5.3 ± 0.3 m', { fromM: 0.5, toM: 1 });
    drawFix(pen, { side: 'us', role: 'F1', atM: F1, selected: true });
    drawPin(pen, at(-7.8, 12.9), '1', true);
    drawPin(pen, at(0, 12.9), '2', true);
    drawPin(pen, at(-21, 6.7), '3', true);
    drawPin(pen, at(-21.9, 2.2), '7', false);
  },
} satisfies Scene;
