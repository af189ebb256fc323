import type { Boards } from '../rink/boards.ts';
import { levelOf } from '../skater/level.ts';
import type { LevelId } from '../skater/model.ts';
import { routeCurveOf } from '../skater/route-curve.ts';
import { profileRoute } from '../skater/route-profile.ts';
import type { End, Side } from '../units/ends.ts';
import type { ActId, SpotId } from '../units/ids.ts';
import { isNone } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import type { Act, Cue, DrillPlan, PuckPlace, Spot } from './drill.ts';
import { DRILL_POINT_EVERY, LEAST_WAY } from './drill-rows.ts';
import { type RunUp, runUpTo } from './run-up.ts';

/** A skater's way as it was followed on film: places and velocities at film times, growing. */
export interface FilmedWay {
  readonly side: Side;
  readonly kind: 'skater' | 'goalie';
  readonly role: string;
  readonly looks: readonly {
    readonly timeS: number;
    readonly xM: number;
    readonly yM: number;
    readonly vxMps: number;
    readonly vyMps: number;
  }[];
  /** Had the puck, as somebody said of a picture of it. */
  readonly hasPuck?: boolean;
}

export interface WayPlanOptions {
  /** The end we attack in the film. A drill always has us attack plusX, so the other end is turned round by half a turn. */
  readonly attacks: End;
  readonly level: LevelId;
  /** Of the sheet it is made for: a run-up begins inside them. */
  readonly boards: Boards;
  /** Fresh ids, unique in the whole drill. */
  readonly newId: () => string;
}

/**
 * A drill of a stretch of film: each skater comes to the place where he was at its beginning with the speed he had, by a run-up from standing, all at the same
 * time, and goes on along his way with the effort that takes him as long as it took in the film, by the level's own powers. Who joined later comes so much later.
 * Who had the puck carries it. Nothing is made up: no pass, no puck that nobody was seen with. Ways without looks are left out; one who hardly moved gets no act.
 * Metres, seconds; a way that the level cannot skate so fast gets full effort, and one whose run-up has no room begins slower. Source: our own; `profileRoute`.
 */
export const drillPlanFromWays = (ways: readonly FilmedWay[], options: WayPlanOptions): DrillPlan => {
  const turn = options.attacks === 'plusX' ? 1 : -1;
  const known = ways.filter(({ looks }) => looks.length > 0);
  const beginS = Math.min(...known.map(({ looks }) => looks[0]!.timeS));
  const drawn = known.map(way => drawnWay(way, turn, options));
  const joinsS = (way: FilmedWay) => way.looks[0]!.timeS - beginS;
  // The longest run-up begins at the whistle, and all others so much later that the stretch begins for all at once.
  const leadS = Math.max(0, ...drawn.map(({ way, runUp }) => (runUp?.durationS ?? 0) - joinsS(way)));
  const spots: Record<SpotId, Spot> = {};
  const pucks: Record<string, PuckPlace> = {};
  drawn.forEach(({ way, points, runUp, effortRatio }, rank) => {
    const { side, kind, role, hasPuck } = way;
    const id = options.newId() as SpotId;
    const atM = runUp?.fromM ?? points[0]!;
    const second = runUp ? points[0] : points[1];
    const waitS = leadS + joinsS(way) - (runUp?.durationS ?? 0);
    const timing = {
      waitS,
      reactionS: levelOf(options.level).model.expectedReactionS,
      withPuck: hasPuck === true,
    };
    const acts = effortRatio === undefined ? [] : actsOf(points, runUp, effortRatio, timing);
    spots[id] = {
      rank,
      side,
      kind,
      role,
      atM,
      facingRad:
        acts.length > 0 && second
          ? Math.atan2(second.yM - atM.yM, second.xM - atM.xM)
          : side === 'us'
            ? 0
            : Math.PI,
      waitingCount: 0,
      acts: Object.fromEntries(acts.map(act => [options.newId() as ActId, act])),
    };
    if (hasPuck) pucks[options.newId()] = { atM, ownerSpot: id, count: 1 };
  });
  return { spots, pucks, gear: {} };
};

interface DrawnWay {
  readonly way: FilmedWay;
  readonly points: readonly IcePoint[];
  readonly runUp: RunUp | undefined;
  /** Undefined for one who hardly moved. */
  readonly effortRatio: number | undefined;
}

const drawnWay = (way: FilmedWay, turn: 1 | -1, { level, boards }: WayPlanOptions): DrawnWay => {
  const points = pointsOf(way.looks).map(({ xM, yM }) => ({ xM: turn * xM + 0, yM: turn * yM + 0 }));
  const [first, last] = [way.looks[0]!, way.looks[way.looks.length - 1]!];
  const stays = { way, points, runUp: undefined, effortRatio: undefined };
  if (way.kind === 'goalie' || points.length < 2) return stays;
  const withPuck = way.hasPuck === true;
  const velocity = { xMps: turn * first.vxMps, yMps: turn * first.vyMps };
  const runUp = runUpTo(points[0]!, velocity, { boards, power: levelOf(level).model, withPuck });
  const heading = runUp ? { startHeadingRad: Math.atan2(velocity.yMps, velocity.xMps) } : {};
  const curve = routeCurveOf(points, heading);
  if (curve.lengthM < LEAST_WAY.value) return stays;
  const lastsS = (effortRatio: number): number => {
    const profile = profileRoute(curve, levelOf(level).model, {
      ...{ startSpeedMps: runUp?.speedMps ?? 0, facing: 'forward', withPuck, effortRatio, stops: false },
    });
    return isNone(profile) ? Number.POSITIVE_INFINITY : profile.durationS;
  };
  return { way, points, runUp, effortRatio: effortFor(last.timeS - first.timeS, lastsS) };
};

/** The least effort that takes no longer than this. */
const effortFor = (durationS: number, lastsS: (effortRatio: number) => number): number => {
  let [low, high] = [LEAST_EFFORT, 1];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (lastsS(middle) > durationS) low = middle;
    else high = middle;
  }
  return Number(high.toFixed(3));
};
const LEAST_EFFORT = 0.05;
const HALVINGS = 20;

const actsOf = (
  points: readonly IcePoint[],
  runUp: RunUp | undefined,
  effortRatio: number,
  { waitS, reactionS, withPuck }: { waitS: number; reactionS: number; withPuck: boolean },
): Act[] => {
  const skating = { kind: withPuck ? 'carry' : 'skate', facing: 'forward', stops: false } as const;
  // Who is started by the whistle answers it one reaction later; who counts seconds counts from the whistle itself.
  const cue: Cue =
    waitS > 0.05 ? { on: 'after', seconds: Number((waitS + reactionS).toFixed(2)) } : { on: 'whistle' };
  const throughM = points.slice(1);
  return runUp
    ? [
        { ...skating, rank: 0, throughM: [points[0]!], effortRatio: 1, cue },
        { ...skating, rank: 1, throughM, effortRatio },
      ]
    : [{ ...skating, rank: 0, throughM, effortRatio, cue }];
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
