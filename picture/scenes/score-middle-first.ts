import { levelOf, playableOf, rinkOf, runDrill } from '@icewright/engine';
import { drawScore, scoreHeight } from '../score/draw-score.ts';
import { MIDDLE_FIRST } from './middle-first.plan.ts';
import type { Scene } from './scene.ts';

const rink = rinkOf({ preset: '200x85ft' });
const playable = playableOf(MIDDLE_FIRST, rink, levelOf('collegeWomen'));
if (playable.kind === 'unplayable') throw new Error(`Middle first: ${playable.issues.length} issues`);
const run = runDrill(playable);

export default {
  title: 'The score of a computed rep: Middle first',
  viewBox: [0, 0, 920, scoreHeight(MIDDLE_FIRST, run)],
  digits: 1,
  computed: true,
  draw: pen => drawScore(pen, run, MIDDLE_FIRST, rink, { width: 920, nowS: 3 }),
} satisfies Scene;
