import { CARRIES_ON_MPS, LEAST_EFFORT_RATIO } from '../drill/drill-rows.ts';
import { type Body, boardsDistanceAt, pushInside, standingPointOf } from '../drill/in-boards.ts';
import { keptOrDrawn, type LineAsked, type RouteLine } from '../motion/kept-lines.ts';
import {
  keptOrPlanned,
  type RouteAsked,
  type RouteDeed,
  type RouteWay,
  routeFrom,
} from '../motion/kept-routes.ts';
import type { PlannedRoute } from '../motion/planned-route.ts';
import { standingWay, WAY_ROOM_M } from '../motion/straight-way.ts';
import type { Boards } from '../rink/boards.ts';
import { type RouteCurve, routeCurveOf } from '../skater/route-curve.ts';
import { profileRoute } from '../skater/route-profile.ts';
import { isNone } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import type { Actor } from './actor.ts';
import type { RunState } from './run-state.ts';

/**
 * The times of a scripted route for this skater, starting at `startS` from where `from` is, with the speed it has. Points
 * off the ice are moved to the nearest place to stand, and so is any bulge of the smooth curve. A skater who stands
 * with the back to the route turns on the spot first.
 */
export const planRoute = (
  run: RunState,
  actor: Pick<Actor, 'model' | 'facingX' | 'facingY'>,
  act: RouteDeed,
  startS: number,
  from: Body,
): PlannedRoute => {
  const { facingX, facingY, model } = actor;
  const asked = { boards: run.rink.boards, model, act, from, facingX, facingY };
  return routeFrom(
    keptOrPlanned(asked, () => wayOf(asked)),
    startS,
  );
};

const wayOf = (asked: RouteAsked): RouteWay => {
  const { boards, act, from } = asked;
  const speedMps = Math.hypot(from.xMps, from.yMps);
  const moves = speedMps > CARRIES_ON_MPS.value;
  const { xM, yM } = from;
  const startHeadingRad = moves ? Math.atan2(from.yMps, from.xMps) : undefined;
  const lineAsked = { boards, throughM: act.throughM, xM, yM, startHeadingRad };
  const { curve, off } = keptOrDrawn(lineAsked, () => lineOf(lineAsked));
  const profile = profileRoute(curve, asked.model, {
    startSpeedMps: moves ? speedMps : 0,
    facing: act.facing,
    facingBefore: facingBefore(asked, curve, moves ? from : null, act.facing),
    withPuck: act.kind === 'carry',
    effortRatio: Math.max(LEAST_EFFORT_RATIO.value, act.effortRatio),
    stops: act.stops,
  });
  const backward = act.facing === 'backward';
  // An effort that is never 0 always gets there; a skater with no speed at all stays.
  if (isNone(profile) || profile.durationS === 0) return { ...standingWay(from, backward), off };
  return {
    durationS: profile.durationS,
    stepM: curve.stepM,
    backward,
    off,
    xM: curve.xM,
    yM: curve.yM,
    speedMps: profile.speedMps,
    timeS: profile.timeS,
  };
};

/** The smooth curve, its bulges moved onto the ice; its bends, by which it is timed, stay those of the curve as drawn. */
const lineOf = ({ boards, throughM, xM: fromXM, yM: fromYM, startHeadingRad }: LineAsked): RouteLine => {
  const pointsM = [{ xM: fromXM, yM: fromYM }, ...throughM.map(pointM => standingPointOf(boards, pointM))];
  const curve = routeCurveOf(pointsM, startHeadingRad === undefined ? {} : { startHeadingRad });
  let off: RouteLine['off'] = null;
  const noteOff = (atM: IcePoint): void => {
    const byM = -boardsDistanceAt(boards, atM.xM, atM.yM);
    if (byM > (off?.byM ?? OFF_FROM_M)) off = { atM, byM };
  };
  for (const pointM of throughM) noteOff(pointM);
  const { xM, yM } = curve;
  for (let i = nextOffWay(boards, curve, 0); i >= 0; i = nextOffWay(boards, curve, i + 1)) {
    const point = { xM: xM[i]!, yM: yM[i]! };
    noteOff({ ...point });
    pushInside(boards, point, WAY_ROOM_M);
    xM[i] = point.xM;
    yM[i] = point.yM;
  }
  return { curve, off };
};

/** The first place from there on that is nearer to the boards than a way can be; −1 when there is none. */
const nextOffWay = (boards: Boards, { xM, yM }: RouteCurve, from: number): number => {
  for (let i = from; i < xM.length; i++) if (boardsDistanceAt(boards, xM[i]!, yM[i]!) < WAY_ROOM_M) return i;
  return -1;
};

/** A line drawn on the boards is not yet off the ice. */
const OFF_FROM_M = 0.05;

/** Whether the body's facing now is that of a skater going forward or backward along the start of the curve. */
const facingBefore = (
  asked: RouteAsked,
  curve: RouteCurve,
  moving: Body | null,
  facing: 'forward' | 'backward',
): 'forward' | 'backward' => {
  if (curve.lengthM === 0) return facing;
  const headingRad = curve.headingRad[0]!;
  const alongX = moving ? moving.xMps : Math.cos(headingRad);
  const alongY = moving ? moving.yMps : Math.sin(headingRad);
  return alongX * asked.facingX + alongY * asked.facingY >= 0 ? 'forward' : 'backward';
};
