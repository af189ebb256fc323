import { levelOf, playableOf, rinkOf, runDrill } from '@icewright/engine';
import { drawScore, scoreHeight } from '../score/draw-score.ts';
import { PUCK_ACTS } from './drill-puck-acts.ts';
import type { Scene } from './scene.ts';

const rink = rinkOf({ preset: '200x85ft' });
const playable = playableOf(PUCK_ACTS, rink, levelOf('collegeWomen'));
if (playable.kind === 'unplayable') throw new Error(`puck acts: ${playable.issues.length} issues`);
const run = runDrill(playable);

export default {
  title: 'The score of a rep with several pucks',
  viewBox: [0, 0, 920, scoreHeight(PUCK_ACTS, run)],
  digits: 1,
  computed: true,
  draw: pen => drawScore(pen, run, PUCK_ACTS, rink, { width: 920, nowS: 2 }),
} satisfies Scene;
