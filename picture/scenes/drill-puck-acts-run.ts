import { levelOf, playableOf, rinkOf, runDrill } from '@icewright/engine';
import { drawDrill } from '../drill/draw-drill.ts';
import { rinkViewBox } from '../ice/rink.ts';
import { PUCK_ACTS } from './drill-puck-acts.ts';
import type { Scene } from './scene.ts';

const rink = rinkOf({ preset: '200x85ft' });
const playable = playableOf(PUCK_ACTS, rink, levelOf('collegeWomen'));
if (playable.kind === 'unplayable') throw new Error(`puck acts: ${playable.issues.length} issues`);
const run = runDrill(playable);

export default {
  title: 'Every way of moving the puck, as it was played',
  viewBox: rinkViewBox(rink),
  computed: true,
  draw: pen => drawDrill(pen, PUCK_ACTS, rink, { run, level: 'collegeWomen' }),
} satisfies Scene;
