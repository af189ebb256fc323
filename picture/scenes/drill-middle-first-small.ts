import { rinkOf } from '@icewright/engine';
import { drawDrill } from '../drill/draw-drill.ts';
import { rinkViewBox } from '../ice/rink.ts';
import { MIDDLE_FIRST } from './middle-first.plan.ts';
import type { Scene } from './scene.ts';

const rink = rinkOf({ preset: '200x85ft' });

export default {
  title: 'The same at card size, marks enlarged',
  viewBox: rinkViewBox(rink),
  k: 1.75,
  thinFloor: 0.12,
  draw: pen => drawDrill(pen, MIDDLE_FIRST, rink),
} satisfies Scene;
