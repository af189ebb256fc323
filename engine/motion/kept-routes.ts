import type { ActDeed } from '../drill/drill.ts';
import type { Body } from '../drill/in-boards.ts';
import type { Boards } from '../rink/boards.ts';
import type { SkaterModel } from '../skater/model.ts';
import type { IcePoint } from '../units/points.ts';
import type { PlannedRoute } from './planned-route.ts';

export type RouteDeed = Extract<ActDeed, { kind: 'skate' | 'carry' }>;

/** A planned route without its place in time. */
export type RouteWay = Omit<PlannedRoute, 'startS' | 'endS' | 'cursor'> & { readonly durationS: number };

/** The way as a route that begins then, seconds of the rep. Written out: copies of rest properties are each a kind of object of its own for the compiler. */
export const routeFrom = (way: RouteWay, startS: number): PlannedRoute => ({
  startS,
  endS: startS + way.durationS,
  stepM: way.stepM,
  backward: way.backward,
  off: way.off,
  xM: way.xM,
  yM: way.yM,
  speedMps: way.speedMps,
  timeS: way.timeS,
  cursor: 0,
});

/** Everything a route depends on. */
export interface RouteAsked {
  readonly boards: Boards;
  readonly model: SkaterModel;
  readonly act: RouteDeed;
  readonly from: Body;
  readonly facingX: number;
  readonly facingY: number;
}

interface Kept {
  readonly asked: RouteAsked;
  readonly way: RouteWay;
}

/** A route is planned by who foresees it and by who skates it, from starts that differ by rounding. */
const KEPT_PER_ROUTE = 2;

const keptRoutes = new WeakMap<readonly IcePoint[], Kept[]>();

/**
 * The way as it was planned before for the same points (the same immutable array) when everything else is the same to the
 * last bit, else planned now: so the answer never depends on what is kept. A drag of one spot then plans that spot's
 * routes only. What is kept goes with the points.
 */
export const keptOrPlanned = (asked: RouteAsked, plan: () => RouteWay): RouteWay => {
  const points = asked.act.throughM;
  const kept = keptRoutes.get(points) ?? [];
  const found = kept.find(one => isSame(one.asked, asked));
  if (found) return found.way;
  const way = plan();
  const { xM, yM, xMps, yMps } = asked.from;
  const own = { ...asked, from: { xM, yM, xMps, yMps } };
  keptRoutes.set(points, [{ asked: own, way }, ...kept].slice(0, KEPT_PER_ROUTE));
  return way;
};

const isSame = (a: RouteAsked, b: RouteAsked): boolean =>
  a.boards === b.boards &&
  a.model === b.model &&
  a.facingX === b.facingX &&
  a.facingY === b.facingY &&
  a.from.xM === b.from.xM &&
  a.from.yM === b.from.yM &&
  a.from.xMps === b.from.xMps &&
  a.from.yMps === b.from.yMps &&
  a.act.kind === b.act.kind &&
  a.act.facing === b.act.facing &&
  a.act.effortRatio === b.act.effortRatio &&
  a.act.stops === b.act.stops;
