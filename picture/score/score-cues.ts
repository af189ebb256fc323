import type { DrillPlan, Run, SpotId } from '@icewright/engine';
import { cueEventOf } from '../drill/cue-event.ts';
import { cueSignsOf } from '../drill/cue-letters.ts';
import { actTimes } from '../drill/run-reading.ts';
import { drawCue } from '../ice/cue.ts';
import type { Pen } from '../pen/pen.ts';
import type { ScoreLayout } from './score-layout.ts';

const PX_A_METRE = 11;

interface PlacedCue {
  readonly letter: string;
  readonly way: 'fires' | 'waits';
  readonly x: number;
  readonly y: number;
}

/** Lozenges on the zero lines: full where the cue fires, open where the act it starts begins, a dotted tie between. */
export const drawScoreCues = (pen: Pen, run: Run, plan: DrillPlan, layout: ScoreLayout): void => {
  const placed: PlacedCue[] = [];
  for (const sign of cueSignsOf(plan, run)) {
    const isOwn = sign.way === 'waits' || sign.cue.on === 'whistle' || sign.cue.on === 'after';
    const timeS = isOwn ? actTimes(run, sign.spot, sign.act)?.startS : cueEventOf(run, sign.cue)?.timeS;
    const spot = isOwn || !('spot' in sign.cue) ? sign.spot : sign.cue.spot;
    const y = zeroOf(layout, spot);
    if (timeS === undefined || y === undefined) continue;
    placed.push({ letter: sign.letter, way: sign.way, x: layout.xOf(timeS), y });
  }
  pen.path('cueTie', sink => {
    for (const fired of placed.filter(cue => cue.way === 'fires')) {
      for (const waited of placed.filter(cue => cue.way === 'waits' && cue.letter === fired.letter)) {
        sink.moveTo(fired.x, fired.y);
        sink.lineTo(waited.x, waited.y);
      }
    }
  });
  for (const cue of placed) {
    pen.place({ x: cue.x, y: cue.y, scale: PX_A_METRE, k: 1 }, () =>
      drawCue(pen, { x: 0, y: 0 }, cue.letter, cue.way),
    );
  }
};

const zeroOf = (layout: ScoreLayout, spot: SpotId): number | undefined =>
  layout.staves.find(stave => stave.spot === spot)?.zeroY;
