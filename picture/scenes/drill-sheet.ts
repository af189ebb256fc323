import { levelOf, playableOf, rinkOf, runDrill } from '@icewright/engine';
import { PAGE } from '../card/page-measures.ts';
import { drillPages } from '../handout/draw-drill-sheet.ts';
import type { DrillSheet } from '../handout/drill-sheet.ts';
import { MIDDLE_FIRST } from './middle-first.plan.ts';
import type { Scene } from './scene.ts';

const rink = rinkOf({ preset: '200x85ft' });
const playable = playableOf(MIDDLE_FIRST, rink, levelOf('collegeWomen'));
if (playable.kind === 'unplayable') throw new Error(`Middle first: ${playable.issues.length} issues`);

export const MIDDLE_FIRST_SHEET: DrillSheet = {
  plan: MIDDLE_FIRST,
  rink,
  run: runDrill(playable),
  cover: 'Tern Harbour Lanterns · 1 of 2',
  title: 'Middle first',
  says: 'turn, look, middle',
  keyPoints: ['F3: read, turn, inside the dots', 'Level before our blue line', 'D1: close before the line'],
  figures: [
    { name: 'minutes', words: '12' },
    { name: 'on the ice in a rep', words: '4 skaters, 1 goalie, 1 coach' },
  ],
  findings: [
    { weight: 'look', words: 'F3 and X2 cross at 2.1 s, 0.8 m apart.' },
    { weight: 'know', words: 'Đặng Thị Ước waits 41 s.' },
  ],
  cautions: ['F3 and X2 cross too fast.'],
};

export default {
  title: 'A drill as it is handed out, one A4 page',
  viewBox: [0, 0, PAGE.width, PAGE.height],
  digits: 2,
  computed: true,
  draw: pen => drillPages(pen, [MIDDLE_FIRST_SHEET])[0]!(pen),
} satisfies Scene;
