import type { DrillPlan, PuckTrack, Rink, Run, SpotId } from '@icewright/engine';
import type { Pen } from '../pen/pen.ts';
import { type ScoreLayout, type Stave, speedAt, staveY } from './score-layout.ts';

const SHOT_HALF_APART_PX = 1.7;

/** Passes as broken ties from stave to stave, shots as a double line that ends where the puck reaches the goal line. */
export const drawPuckTies = (pen: Pen, run: Run, plan: DrillPlan, rink: Rink, layout: ScoreLayout): void => {
  run.events.forEach((event, index) => {
    if (event.kind === 'pass') {
      const taken = run.events
        .slice(index + 1)
        .find(later => (later.kind === 'receive' || later.kind === 'intercept') && later.from === event.spot);
      const from = pointOn(layout, run, event.spot, event.timeS);
      const to =
        taken && (taken.kind === 'receive' || taken.kind === 'intercept')
          ? pointOn(layout, run, taken.spot, taken.timeS)
          : null;
      if (!from || !to) return;
      pen.path('scorePass', sink => {
        sink.moveTo(from.x, from.y);
        sink.lineTo(to.x, to.y);
      });
    }
    const puck = event.kind === 'shot' ? run.pucks[event.puck] : undefined;
    if (event.kind === 'shot' && puck) drawShot(pen, run, puck, plan, rink, layout, event.spot, event.timeS);
  });
};

const drawShot = (
  pen: Pen,
  run: Run,
  puck: PuckTrack,
  plan: DrillPlan,
  rink: Rink,
  layout: ScoreLayout,
  shooter: SpotId,
  timeS: number,
): void => {
  const from = pointOn(layout, run, shooter, timeS);
  const overS = overGoalLineS(run, puck, rink, timeS);
  if (!from || overS === null) return;
  const to = { x: layout.xOf(overS), y: goalieY(run, puck, plan, layout, overS) ?? layout.ruleY - 8 };
  const turnRad = Math.atan2(to.y - from.y, to.x - from.x);
  const dx = -Math.sin(turnRad) * SHOT_HALF_APART_PX;
  const dy = Math.cos(turnRad) * SHOT_HALF_APART_PX;
  pen.path('scoreShot', sink => {
    for (const side of [-1, 1]) {
      sink.moveTo(from.x + side * dx, from.y + side * dy);
      sink.lineTo(to.x + side * dx, to.y + side * dy);
    }
  });
  pen.circle('puck', to.x, to.y, 4);
};

/** The stave of the goalie at the end the puck came to. */
const goalieY = (
  run: Run,
  puck: PuckTrack,
  plan: DrillPlan,
  layout: ScoreLayout,
  timeS: number,
): number | undefined => {
  const puckXM = puck.xM[Math.round(timeS * run.stepHz)] ?? 0;
  return layout.staves.find(({ spot }) => {
    const goalie = plan.spots[spot];
    return goalie?.kind === 'goalie' && goalie.atM.xM > 0 === puckXM > 0;
  })?.zeroY;
};

const overGoalLineS = (run: Run, puck: PuckTrack, rink: Rink, fromS: number): number | null => {
  const goalXM = rink.layout.goalLineXM - 0.1;
  for (let sample = Math.ceil(fromS * run.stepHz); sample < run.sampleCount; sample++) {
    if (Math.abs(puck.xM[sample] ?? 0) >= goalXM) return sample / run.stepHz;
  }
  return null;
};

/** Where a spot's line is at that time. */
export const pointOn = (
  layout: ScoreLayout,
  run: Run,
  spot: SpotId,
  timeS: number,
): { readonly x: number; readonly y: number; readonly stave: Stave } | null => {
  const stave = layout.staves.find(each => each.spot === spot);
  if (!stave) return null;
  const sample = Math.min(run.sampleCount - 1, Math.round(timeS * run.stepHz));
  const speedMps = stave.track ? speedAt(stave.track, sample) : 0;
  return { x: layout.xOf(timeS), y: staveY(stave, speedMps), stave };
};
