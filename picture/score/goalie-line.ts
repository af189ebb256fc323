import { type DrillPlan, isBeforeNet, type Net, type Rink, type Run } from '@icewright/engine';
import { tracePoints } from '../ice/polyline.ts';
import type { Pen } from '../pen/pen.ts';
import type { ScoreLayout, Stave } from './score-layout.ts';

/** A post lies so far from the middle of the net on her stave: between this one and the next there is room for both. */
const POST_PX = 9;
/** A goalie who left her crease by far stays on her own stave. */
const MOST_PX = 12;
const EVERY_S = 0.1;
const WORD_FROM_PX = 10;

/**
 * Where a goalie who goes by the puck is between her posts, over time: her line of the stave is the middle of the net, up is up on the sheet.
 * Her speed would tell nothing: it is a tenth of a skater's.
 */
export const drawGoalieLine = (
  pen: Pen,
  stave: Stave,
  plan: DrillPlan,
  rink: Rink,
  run: Run,
  layout: ScoreLayout,
): void => {
  const { track } = stave;
  const spot = plan.spots[stave.spot];
  if (spot?.kind !== 'goalie' || Object.keys(spot.acts).length > 0 || !track) return;
  const net = rink.nets.find(each => isBeforeNet(each, spot.atM.xM, spot.atM.yM));
  if (!net) return;
  const postM = rink.layout.postCentreYM;
  const yOf = (sample: number): number => {
    const px = (acrossM(net, track.yM[sample] ?? 0) / postM) * POST_PX;
    return stave.zeroY - Math.max(-MOST_PX, Math.min(MOST_PX, px));
  };
  for (const y of [stave.zeroY - POST_PX, stave.zeroY + POST_PX])
    pen.path('staveLine', sink =>
      tracePoints(sink, [
        { x: layout.left, y },
        { x: layout.right, y },
      ]),
    );
  const step = Math.max(1, Math.round(EVERY_S * run.stepHz));
  const samples = Array.from({ length: Math.ceil(run.sampleCount / step) }, (_, index) => index * step);
  pen.path('scoreGoalie', sink =>
    tracePoints(
      sink,
      [...samples, run.sampleCount - 1].map(sample => ({
        x: layout.xOf(sample / run.stepHz),
        y: yOf(sample),
      })),
    ),
  );
  pen.text('axis', 'posts', layout.right + WORD_FROM_PX, stave.zeroY + 3.5);
};

const acrossM = (net: Net, yM: number): number => yM - net.atM.yM;
