import type { DrillPlan, Run, SpotId } from '@icewright/engine';
import { cueEventOf } from '../drill/cue-event.ts';
import { type CueSign, cueSignsOf } from '../drill/cue-letters.ts';
import { actTimes } from '../drill/run-reading.ts';
import { drawCue } from '../ice/cue.ts';
import type { Pen } from '../pen/pen.ts';
import type { ScoreLayout } from './score-layout.ts';

const PX_A_METRE = 11;

/** A lozenge of the score: what it says, on whose stave, and where, px. */
export interface ScoreCue {
  readonly sign: CueSign;
  readonly stave: SpotId;
  readonly x: number;
  readonly y: number;
}

/** Every lozenge on its zero line: where a cue fires, and where the act that waits for it begins. */
export const scoreCuesOf = (run: Run, plan: DrillPlan, layout: ScoreLayout): readonly ScoreCue[] =>
  cueSignsOf(plan, run).flatMap(sign => {
    const isOwn = sign.way === 'waits' || sign.cue.on === 'whistle' || sign.cue.on === 'after';
    const timeS = isOwn ? actTimes(run, sign.spot, sign.act)?.startS : cueEventOf(run, sign.cue)?.timeS;
    const stave = isOwn || !('spot' in sign.cue) ? sign.spot : sign.cue.spot;
    const y = layout.staves.find(each => each.spot === stave)?.zeroY;
    return timeS === undefined || y === undefined ? [] : [{ sign, stave, x: layout.xOf(timeS), y }];
  });

/** The lozenges, and a dotted tie from each that fires to those that wait for it. */
export const drawScoreCues = (pen: Pen, run: Run, plan: DrillPlan, layout: ScoreLayout): void => {
  const placed = scoreCuesOf(run, plan, layout);
  pen.path('cueTie', sink => {
    for (const fired of placed.filter(({ sign }) => sign.way === 'fires')) {
      for (const waited of placed) {
        if (waited.sign.way !== 'waits' || waited.sign.letter !== fired.sign.letter) continue;
        sink.moveTo(fired.x, fired.y);
        sink.lineTo(waited.x, waited.y);
      }
    }
  });
  for (const { sign, x, y } of placed) {
    pen.place({ x, y, scale: PX_A_METRE, k: 1 }, () => drawCue(pen, { x: 0, y: 0 }, sign.letter, sign.way));
  }
};
