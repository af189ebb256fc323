import type { DrillPlan, PuckTrack, Rink, Run, RunEvent, SpotId } from '@icewright/engine';
import { endsPass } from '../drill/run-reading.ts';
import type { Pen } from '../pen/pen.ts';
import { type ScoreLayout, type Stave, speedAt, staveY } from './score-layout.ts';

const SHOT_HALF_APART_PX = 1.7;

/**
 * The pucks between the staves: passes and steals as ties from stave to stave, a dot where one is picked up, left or comes loose,
 * shots as a double line that ends where the puck is saved, goes in, or reaches the goal line.
 */
export const drawPuckTies = (pen: Pen, run: Run, plan: DrillPlan, rink: Rink, layout: ScoreLayout): void => {
  run.events.forEach((event, index) => {
    if (event.kind === 'pass') {
      const taken = run.events.slice(index + 1).find(later => endsPass(later, event));
      if (taken && 'spot' in taken) drawTie(pen, run, layout, event, taken);
    } else if (event.kind === 'steal') {
      drawTie(pen, run, layout, { spot: event.from, timeS: event.timeS }, event);
      drawDot(pen, run, layout, event);
    } else if (event.kind === 'pickUp' || event.kind === 'leave' || event.kind === 'loose') {
      drawDot(pen, run, layout, event);
    } else if (event.kind === 'shot') drawShot(pen, run, plan, rink, layout, event);
  });
};

interface AtStave {
  readonly spot: SpotId;
  readonly timeS: number;
}

const drawTie = (pen: Pen, run: Run, layout: ScoreLayout, one: AtStave, other: AtStave): void => {
  const from = pointOn(layout, run, one.spot, one.timeS);
  const to = pointOn(layout, run, other.spot, other.timeS);
  if (!from || !to) return;
  pen.path('scorePass', sink => {
    sink.moveTo(from.x, from.y);
    sink.lineTo(to.x, to.y);
  });
};

const drawDot = (pen: Pen, run: Run, layout: ScoreLayout, { spot, timeS }: AtStave): void => {
  const at = pointOn(layout, run, spot, timeS);
  if (at) pen.circle('puck', at.x, at.y, 3);
};

const drawShot = (
  pen: Pen,
  run: Run,
  plan: DrillPlan,
  rink: Rink,
  layout: ScoreLayout,
  shot: Extract<RunEvent, { kind: 'shot' }>,
): void => {
  const puck = run.pucks[shot.puck];
  if (!puck) return;
  const from = pointOn(layout, run, shot.spot, shot.timeS);
  const ended = run.events.find(
    event =>
      (event.kind === 'goal' || event.kind === 'save' || event.kind === 'wide') &&
      event.puck === shot.puck &&
      event.timeS >= shot.timeS,
  );
  const overS = ended?.timeS ?? overGoalLineS(run, puck, rink, shot.timeS);
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
