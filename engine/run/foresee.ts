import { BLADE_AHEAD_M } from '../drill/drill-rows.ts';
import type { Body } from '../drill/in-boards.ts';
import { movingBodyAt } from '../motion/moving-body.ts';
import { type PlannedRoute, placeOnRoute } from '../motion/planned-route.ts';
import { moveUnderPush, type Push } from '../motion/reactive-step.ts';
import { stretchOf } from '../motion/stretch.ts';
import type { SprintPower } from '../skater/sprint.ts';
import { type Actor, isFacingFrom, type Motion } from './actor.ts';
import { dueOf } from './cue-due.ts';
import { isWayDeed, planWay } from './plan-body-act.ts';
import type { RunState } from './run-state.ts';

/** Where a skater will be, as far as the drill fixes it. Segments follow each other in time. */
export type Foreseen = readonly Segment[];

interface Segment {
  readonly fromS: number;
  readonly start: Body;
  readonly route: PlannedRoute | null;
  readonly push: Push;
  readonly isBackward: boolean;
  readonly power: SprintPower;
  readonly stepKeeps: number;
  /** Facing when the speed is too small to give one: before the first stride, and at the end. */
  readonly facingX: number;
  readonly facingY: number;
}

const STILL: Push = { x: 0, y: 0 };

/**
 * The future of one skater from now: the route under way, then every skate, carry, stop, turn, change of facing and hold whose start is known already
 * (no cue, a delay, or a cue that has come). A reactive act is taken on with its present velocity or push: the pass is
 * checked again when the puck arrives. Ends with the skater easing off.
 */
export const foreseenOf = (run: RunState, actor: Actor): Foreseen => {
  const segments: Segment[] = [];
  const add = (fromS: number, start: Body, route: PlannedRoute | null, push: Push, facing: Facing): void => {
    segments.push({
      fromS,
      start,
      route,
      push,
      isBackward: actor.isBackward,
      power: route || push === STILL ? actor.model : actor.power,
      stepKeeps: actor.stepKeeps,
      facingX: facing.x,
      facingY: facing.y,
    });
  };
  const here = { xM: actor.xM, yM: actor.yM, xMps: actor.xMps, yMps: actor.yMps };
  const facing = { x: actor.facingX, y: actor.facingY };
  if (STEERED.has(actor.motion)) {
    add(run.nowS, here, null, { ...actor.push }, facing);
    return segments;
  }
  if (actor.motion === 'gap' || actor.motion === 'screen' || actor.motion === 'shadow') {
    const { topSpeedMps } = actor.power;
    add(run.nowS, here, null, { x: actor.xMps / topSpeedMps, y: actor.yMps / topSpeedMps }, facing);
    return segments;
  }
  add(run.nowS, here, actor.motion === 'route' ? actor.route : null, STILL, facing);
  let freeS = actor.actIndex < 0 ? actor.freeSinceS : Math.max(run.nowS, Math.min(actor.endS, LATE_S));
  let startedS = actor.actStartS;
  for (let i = actor.nextActIndex; i < actor.spot.acts.length; i++) {
    const act = actor.spot.acts[i]!;
    if (act.kind !== 'hold' && !isWayDeed(act)) break;
    const { spot, model, hadPuckInAct } = actor;
    const known = { spot, model, nextActIndex: i, freeSinceS: freeS, actStartS: startedS };
    const dueS = Math.max(run.nowS, dueOf(run, known).dueS);
    if (!(dueS < LATE_S)) break;
    const start = movingBodyAt(0, 0);
    const seen = placeAt(segments, dueS, start);
    startedS = dueS;
    if (act.kind === 'hold') {
      freeS = dueS + act.seconds;
      continue;
    }
    const ready = { model, hadPuckInAct, facingX: seen.x, facingY: seen.y };
    const route = planWay(run, ready, act, dueS, start);
    if (act.kind === 'pivot' && route.xM.length === 1)
      add(dueS, start, null, STILL, { x: -seen.x, y: -seen.y });
    else if (route.endS > dueS || act.kind !== 'turn') add(dueS, start, route, STILL, seen);
    freeS = route.endS;
  }
  return segments;
};

/** Steered anew at every step: the present push is all that is known. */
const STEERED: ReadonlySet<Motion> = new Set(['chase', 'cutOff', 'steal', 'pickUp']);

/** Later than any rep. */
const LATE_S = 1e3;

interface Facing {
  readonly x: number;
  readonly y: number;
}

/** Sets the body to where the skater is foreseen at `timeS`; gives the facing then. */
export const placeAt = (foreseen: Foreseen, timeS: number, body: Body): Facing => {
  let i = foreseen.length - 1;
  while (i > 0 && foreseen[i]!.fromS > timeS) i--;
  const segment = foreseen[i]!;
  const { route } = segment;
  const sign = (route ? route.backward : segment.isBackward) ? -1 : 1;
  let facing: Facing = { x: segment.facingX, y: segment.facingY };
  if (route) {
    placeOnRoute(route, stretchOf(route.startS, timeS), body);
    if (timeS > (route.startS + route.endS) / 2) facing = lastFacing(route, facing);
    if (timeS > route.endS) easeOn(body, segment, timeS - route.endS);
  } else {
    Object.assign(body, segment.start);
    easeOn(body, segment, timeS - segment.fromS);
  }
  if (!isFacingFrom(body.xMps, body.yMps)) return facing;
  const speed = Math.hypot(body.xMps, body.yMps);
  return { x: (sign * body.xMps) / speed, y: (sign * body.yMps) / speed };
};

/** Sets the place to that of the blade, metres. */
export const bladeAt = (foreseen: Foreseen, timeS: number, body: Body): void => {
  const facing = placeAt(foreseen, timeS, body);
  body.xM += BLADE_AHEAD_M.value * facing.x;
  body.yM += BLADE_AHEAD_M.value * facing.y;
};

const easeOn = (body: Body, segment: Segment, forS: number): void => {
  if (body.xMps === 0 && body.yMps === 0 && segment.push.x === 0 && segment.push.y === 0) return;
  moveUnderPush(body, segment, stretchOf(0, forS));
};

const lastFacing = (route: PlannedRoute, otherwise: Facing): Facing => {
  const sign = route.backward ? -1 : 1;
  const last = route.xM.length - 1;
  if (last < 1) return otherwise;
  const x = route.xM[last]! - route.xM[last - 1]!;
  const y = route.yM[last]! - route.yM[last - 1]!;
  const size = Math.hypot(x, y);
  return size > 0 ? { x: (sign * x) / size, y: (sign * y) / size } : otherwise;
};

/** Whether two futures are the same to the last bit. */
export const isSameForeseen = (a: Foreseen, b: Foreseen): boolean =>
  a.length === b.length && a.every((segment, i) => isSameSegment(segment, b[i]!));

const isSameSegment = (a: Segment, b: Segment): boolean =>
  a.fromS === b.fromS &&
  a.start.xM === b.start.xM &&
  a.start.yM === b.start.yM &&
  a.start.xMps === b.start.xMps &&
  a.start.yMps === b.start.yMps &&
  a.route?.xM === b.route?.xM &&
  a.route?.timeS === b.route?.timeS &&
  a.route?.startS === b.route?.startS &&
  a.push.x === b.push.x &&
  a.push.y === b.push.y &&
  a.isBackward === b.isBackward &&
  a.power.topSpeedMps === b.power.topSpeedMps &&
  a.power.tauS === b.power.tauS &&
  a.facingX === b.facingX &&
  a.facingY === b.facingY;
