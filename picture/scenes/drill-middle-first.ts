import { rinkOf } from '@icewright/engine';
import { drawDrill } from '../drill/draw-drill.ts';
import { rinkViewBox } from '../ice/rink.ts';
import { MIDDLE_FIRST } from './middle-first.plan.ts';
import type { Scene } from './scene.ts';

const rink = rinkOf({ preset: '200x85ft' });

export default {
  title: 'A drill on the board: Middle first',
  viewBox: rinkViewBox(rink),
  draw: pen => drawDrill(pen, MIDDLE_FIRST, rink, { level: 'collegeWomen', scaleBar: true, dotLines: true }),
} satisfies Scene;
