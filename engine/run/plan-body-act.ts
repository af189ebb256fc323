import type { ActDeed } from '../drill/drill.ts';
import { CARRIES_ON_MPS } from '../drill/drill-rows.ts';
import type { Body } from '../drill/in-boards.ts';
import type { BodyAsked } from '../motion/body-asked.ts';
import { type RouteDeed, type RouteWay, routeFrom } from '../motion/kept-routes.ts';
import { pivotWayOf } from '../motion/plan-pivot.ts';
import { stopWayOf } from '../motion/plan-stop.ts';
import { turnWayOf } from '../motion/plan-turn.ts';
import type { PlannedRoute } from '../motion/planned-route.ts';
import type { Actor } from './actor.ts';
import { planRoute } from './plan-route.ts';
import type { RunState } from './run-state.ts';

/** The acts of the body that go along a way with known times. */
export type BodyDeed = Extract<ActDeed, { kind: 'stop' | 'turn' | 'pivot' }>;

/** Acts whose whole way is known when they start. */
export const isWayDeed = <Deed extends { readonly kind: ActDeed['kind'] }>(
  deed: Deed,
): deed is Deed & (RouteDeed | BodyDeed) =>
  isBodyDeed(deed) || deed.kind === 'skate' || deed.kind === 'carry';

const isBodyDeed = <Deed extends { readonly kind: ActDeed['kind'] }>(deed: Deed): deed is Deed & BodyDeed =>
  deed.kind === 'stop' || deed.kind === 'turn' || deed.kind === 'pivot';

/**
 * The way of an act from where `from` is at `startS`, with its times: drawn routes, and the stops, turns and changes of facing
 * that follow from the present motion alone. Metres, seconds, frame of the rink. Always a way; one of duration 0 when there is nothing to
 * do: a stop or a change of facing by who stands.
 */
export const planWay = (
  run: RunState,
  actor: Pick<Actor, 'model' | 'facingX' | 'facingY' | 'hadPuckInAct'>,
  deed: RouteDeed | BodyDeed,
  startS: number,
  from: Body,
): PlannedRoute => {
  if (!isBodyDeed(deed)) return planRoute(run, actor, deed, startS, from);
  const { facingX, facingY, model } = actor;
  const way = bodyWayOf(deed, {
    boards: run.rink.boards,
    model,
    from,
    facingX,
    facingY,
    isBackward: isGoingBackward(from, facingX, facingY),
    withPuck: actor.hadPuckInAct,
  });
  return routeFrom(way, startS);
};

const bodyWayOf = (deed: BodyDeed, asked: BodyAsked): RouteWay => {
  if (deed.kind === 'stop') return stopWayOf(asked);
  return deed.kind === 'pivot' ? pivotWayOf(asked) : turnWayOf(asked, deed);
};

/** Whether a body that moves faces against its motion. */
const isGoingBackward = (body: Body, facingX: number, facingY: number): boolean =>
  Math.hypot(body.xMps, body.yMps) > CARRIES_ON_MPS.value && body.xMps * facingX + body.yMps * facingY < 0;
