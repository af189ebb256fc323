import type { DrillPlan, Run } from '@icewright/engine';
import { tracePoints } from '../ice/polyline.ts';
import { sheetPoint } from '../ice/sheet-point.ts';
import type { Pen } from '../pen/pen.ts';
import { byRank } from './by-rank.ts';
import { playedPath, trackOf } from './run-reading.ts';

/** A goalie who went less than this from where she was put has stayed, metres: a change of weight is no way. Our choice. */
const STAYS_M = 0.25;

/** The size of the mark where she was last, ice metres: her letter is to be read beside it. */
const LAST_M = 0.16;

/** Where each goalie without an act of her own went in the rep, faint: she goes by the puck and not by a line of the coach's. */
export const drawGoalieWays = (pen: Pen, plan: DrillPlan, run: Run): void => {
  for (const [id, spot] of byRank(plan.spots)) {
    const track = trackOf(run, id);
    if (spot.kind !== 'goalie' || Object.keys(spot.acts).length > 0 || !track) continue;
    const way = playedPath(run, track, { startS: 0, endS: run.durationS });
    const last = way.at(-1);
    const farM = Math.max(...way.map(({ xM, yM }) => Math.hypot(xM - spot.atM.xM, yM - spot.atM.yM)));
    if (farM < STAYS_M || !last) continue;
    pen.group('goalieWay', { spot: id }, () => {
      for (const mark of ['goalieWayCasing', 'goalieWay'] as const)
        pen.path(mark, sink => tracePoints(sink, way.map(sheetPoint)));
      const { x, y } = sheetPoint(last);
      pen.circle('goalieLast', x, y, LAST_M * pen.k);
    });
  }
};
