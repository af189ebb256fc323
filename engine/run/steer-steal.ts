import { KEEP_APART_M } from '../drill/drill-rows.ts';
import { steerToGoal } from '../motion/push-to-goal.ts';
import { steerChase } from '../motion/steer-chase.ts';
import type { Actor } from './actor.ts';
import { isFree, nearestFree } from './free-puck.ts';
import type { PuckPlay } from './puck-play.ts';
import type { RunState } from './run-state.ts';

/**
 * Sets the push of a skater (`run.self`) who goes for a free puck: the nearest when the act starts, then that one for as long as it is
 * free. It is met as a skater is who keeps the present velocity, the stick with two hands first. With none free the skater
 * waits, and the push is nothing.
 */
export const steerPickUp = (run: RunState, actor: Actor): void => {
  if (!actor.prey || !isFree(actor.prey)) actor.prey = actor.actIndex < 0 ? null : nearestFree(run, actor);
  if (actor.prey) steerToPuck(run, actor, actor.prey);
  else {
    actor.push.x = 0;
    actor.push.y = 0;
  }
};

/**
 * Sets the push of a skater (`run.self`) who wants the puck of `whom` (`run.other`): meets them as a chaser does, then comes up beside them, level with
 * the stick, on the side from which they were come at; from dead behind, on the side of the own net. A puck that has come loose
 * is gone for itself.
 */
export const steerSteal = (run: RunState, actor: Actor, whom: Actor): void => {
  const { prey } = actor;
  if (prey && Number.isFinite(prey.looseS) && isFree(prey)) {
    steerToPuck(run, actor, prey);
    return;
  }
  const { self, other } = run;
  const x = self.xM - other.xM;
  const y = self.yM - other.yM;
  if (x * x + y * y > actor.model.lungeReachM * actor.model.lungeReachM) {
    steerChase(actor, self, other);
    return;
  }
  const { goal, netM } = actor;
  const { facingX, facingY } = whom;
  let side = facingX * y - facingY * x;
  if (Math.abs(side) < DEAD_BEHIND_M) side = facingX * (netM.yM - other.yM) - facingY * (netM.xM - other.xM);
  const sign = side < 0 ? -1 : 1;
  goal.xM = other.xM + KEEP_APART_M.value * (FORWARD * facingX - sign * SIDEWAYS * facingY);
  goal.yM = other.yM + KEEP_APART_M.value * (FORWARD * facingY + sign * SIDEWAYS * facingX);
  goal.xMps = other.xMps;
  goal.yMps = other.yMps;
  steerToGoal(actor, self);
};

/** Nearer than this to the line of the carrier's stick, neither side is the near one, metres. */
const DEAD_BEHIND_M = 0.05;

// A little before the carrier's middle: the stick is there.
const FORWARD = 0.3;
const SIDEWAYS = Math.sqrt(1 - FORWARD * FORWARD);

const steerToPuck = (run: RunState, actor: Actor, puck: PuckPlay): void => {
  const { self, other } = run;
  other.xM = puck.xM;
  other.yM = puck.yM;
  other.xMps = puck.xMps;
  other.yMps = puck.yMps;
  steerChase(actor, self, other, actor.model.reachM);
};
