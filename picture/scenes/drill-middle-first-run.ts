import { levelOf, playableOf, rinkOf, runDrill } from '@icewright/engine';
import { drawDrill } from '../drill/draw-drill.ts';
import { rinkViewBox } from '../ice/rink.ts';
import { MIDDLE_FIRST } from './middle-first.plan.ts';
import { spotId } from './plan-of.ts';
import type { Scene } from './scene.ts';

const rink = rinkOf({ preset: '200x85ft' });
const playable = playableOf(MIDDLE_FIRST, rink, levelOf('collegeWomen'));
if (playable.kind === 'unplayable') throw new Error(`Middle first: ${playable.issues.length} issues`);
const run = runDrill(playable);

export default {
  title: 'The same as it was played, with its findings; F3 is selected',
  viewBox: rinkViewBox(rink),
  computed: true,
  draw: pen => drawDrill(pen, MIDDLE_FIRST, rink, { run, selected: { spot: spotId('F3') }, dotLines: true }),
} satisfies Scene;
