import type { DrillPlan, Run } from '@icewright/engine';
import { drawSpot } from '../ice/spot.ts';
import { drawPucks } from '../ice/things.ts';
import type { Pen } from '../pen/pen.ts';

/** Everybody and the pucks where they are at one time of the rep, over a drawing of the drill. */
export const drawMoment = (pen: Pen, plan: DrillPlan, run: Run, timeS: number): void => {
  const sample = Math.max(0, Math.min(run.sampleCount - 1, Math.round(timeS * run.stepHz)));
  for (const track of run.tracks) {
    const spot = plan.spots[track.spot];
    if (spot === undefined) continue;
    const atM = { xM: track.xM[sample] ?? spot.atM.xM, yM: track.yM[sample] ?? spot.atM.yM };
    drawSpot(pen, { ...spot, atM, facingRad: track.facingRad[sample] ?? spot.facingRad, waitingCount: 0 });
  }
  for (const { xM, yM, count } of run.pucks) {
    // What is left of a heap lies where the drawing has it.
    if (count === 1) drawPucks(pen, { xM: xM[sample] ?? 0, yM: yM[sample] ?? 0 }, 1);
  }
};
