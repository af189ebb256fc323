import { levelOf } from '../skater/level.ts';
import type { LevelId } from '../skater/model.ts';
import { routeCurveOf } from '../skater/route-curve.ts';
import { profileRoute } from '../skater/route-profile.ts';
import type { End, Side } from '../units/ends.ts';
import type { ActId, SpotId } from '../units/ids.ts';
import { isNone } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import type { Act, DrillPlan, Spot } from './drill.ts';
import { DRILL_POINT_EVERY, LEAST_WAY } from './drill-rows.ts';

/** A skater's way as it was followed on film: places at film times, growing. */
export interface FilmedWay {
  readonly side: Side;
  readonly kind: 'skater' | 'goalie';
  readonly role: string;
  readonly looks: readonly { readonly timeS: number; readonly xM: number; readonly yM: number }[];
}

export interface WayPlanOptions {
  /** The end we attack in the film. A drill always has us attack plusX, so the other end is turned round by half a turn. */
  readonly attacks: End;
  readonly level: LevelId;
  /** Fresh ids, unique in the whole drill. */
  readonly newId: () => string;
}

/**
 * A drill of a stretch of film: each skater stands where he was at its beginning and skates, from the whistle, the way he went, with the effort that takes him as
 * long as it took in the film, by the level's own powers. Who joined later waits so long. Nothing is made up: no puck, no pass. Ways without looks are left out;
 * one who hardly moved gets no act. Metres, seconds; a way that the level cannot skate so fast from standing gets full effort. Source: our own; `profileRoute`.
 */
export const drillPlanFromWays = (ways: readonly FilmedWay[], options: WayPlanOptions): DrillPlan => {
  const turn = options.attacks === 'plusX' ? 1 : -1;
  const known = ways.filter(({ looks }) => looks.length > 0);
  const beginS = Math.min(...known.map(({ looks }) => looks[0]!.timeS));
  const spots: Record<SpotId, Spot> = {};
  known.forEach(({ side, kind, role, looks }, rank) => {
    const points = pointsOf(looks).map(({ xM, yM }) => ({ xM: turn * xM + 0, yM: turn * yM + 0 }));
    const [first, second] = points;
    const waitS = looks[0]!.timeS - beginS;
    const act = actOf(points, looks[looks.length - 1]!.timeS - looks[0]!.timeS, waitS, options.level);
    spots[options.newId() as SpotId] = {
      rank,
      side,
      kind,
      role,
      atM: first!,
      facingRad:
        act && second
          ? Math.atan2(second.yM - first!.yM, second.xM - first!.xM)
          : side === 'us'
            ? 0
            : Math.PI,
      waitingCount: 0,
      acts: act && kind === 'skater' ? { [options.newId() as ActId]: act } : {},
    };
  });
  return { spots, pucks: {}, gear: {} };
};

/** Few points that hold the way: one every so often, and its end. */
const pointsOf = (looks: FilmedWay['looks']): IcePoint[] => {
  const points: IcePoint[] = [];
  let lastS = Number.NEGATIVE_INFINITY;
  const end = looks[looks.length - 1]!;
  for (const { timeS, xM, yM } of looks) {
    const last = points[points.length - 1];
    if (timeS - lastS < DRILL_POINT_EVERY.value || end.timeS - timeS < DRILL_POINT_EVERY.value / 2) continue;
    if (last && Math.hypot(xM - last.xM, yM - last.yM) < LEAST_STEP_M) continue;
    lastS = timeS;
    points.push({ xM, yM });
  }
  const last = points[points.length - 1];
  if (!last) return [{ xM: end.xM, yM: end.yM }];
  if (Math.hypot(end.xM - last.xM, end.yM - last.yM) >= LEAST_STEP_M) points.push({ xM: end.xM, yM: end.yM });
  return points;
};
/** Closer points would be corners. */
const LEAST_STEP_M = 0.5;

const actOf = (
  points: readonly IcePoint[],
  durationS: number,
  waitS: number,
  level: LevelId,
): Act | undefined => {
  const curve = points.length > 1 ? routeCurveOf(points) : undefined;
  if (!curve || curve.lengthM < LEAST_WAY.value) return undefined;
  const lastsS = (effortRatio: number): number => {
    const run = { startSpeedMps: 0, facing: 'forward', withPuck: false, effortRatio, stops: false } as const;
    const profile = profileRoute(curve, levelOf(level).model, run);
    return isNone(profile) ? Number.POSITIVE_INFINITY : profile.durationS;
  };
  let [low, high] = [LEAST_EFFORT, 1];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (lastsS(middle) > durationS) low = middle;
    else high = middle;
  }
  return {
    rank: 0,
    kind: 'skate',
    throughM: points.slice(1),
    facing: 'forward',
    effortRatio: Number(high.toFixed(3)),
    stops: false,
    cue: waitS > 0.05 ? { on: 'after', seconds: Number(waitS.toFixed(2)) } : { on: 'whistle' },
  };
};
const LEAST_EFFORT = 0.05;
const HALVINGS = 20;
