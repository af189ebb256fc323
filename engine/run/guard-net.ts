import { steerToGoal } from '../motion/push-to-goal.ts';
import { STEP_S } from '../motion/stretch.ts';
import type { Net, Rink } from '../rink/rink.ts';
import { modelOf, type SkaterModel } from '../skater/model.ts';
import type { Actor } from './actor.ts';
import { GOALIE_BEFORE_NET, GOALIE_PUSH_S, GOALIE_REACTS_S, GOALIE_SLIDE_MPS } from './goalie-rows.ts';
import type { PuckPlay } from './puck-play.ts';
import type { RunState } from './run-state.ts';
import { stridesPerLook } from './stride.ts';

const BEFORE_NET_M = GOALIE_BEFORE_NET.value;

/**
 * Whether who stands at `xM`, `yM` is the goalie of a net: no farther from the middle of its goal line than the row says. Metres, frame of the
 * rink, any place. Source: row `GOALIE_BEFORE_NET`.
 */
export const isBeforeNet = ({ atM }: Net, xM: number, yM: number): boolean =>
  Math.hypot(xM - atM.xM, yM - atM.yM) <= BEFORE_NET_M;

/** A goalie moves along the crease with the rows' speed and push, whoever it is. */
export const goalieModelOf = (model: SkaterModel): SkaterModel =>
  modelOf({
    ...model,
    topSpeedMps: GOALIE_SLIDE_MPS.value,
    tauS: GOALIE_PUSH_S.value,
  });

/** Sets the goalies who have nothing else to do before their nets: as far out as they were put, with their eyes on the puck. */
export const setGuards = ({ rink, actors, pucks, strideHz }: RunState): void => {
  // As many looks as go into a reaction.
  const lookCount = Math.round((GOALIE_REACTS_S.value * strideHz) / stridesPerLook(strideHz));
  for (const actor of actors) {
    const net = guardedNet(rink, actor);
    if (!net) continue;
    const puck = puckInPlay(net, pucks);
    const seenM = new Float64Array(2 * lookCount);
    for (let i = 0; i < lookCount; i++) {
      seenM[2 * i] = puck?.xM ?? actor.xM;
      seenM[2 * i + 1] = puck?.yM ?? actor.yM;
    }
    const outM = Math.hypot(actor.xM - net.atM.xM, actor.yM - net.atM.yM);
    actor.guard = { net, outM, seenM, oldest: 0, lookedAtS: 0 };
    actor.motion = 'guard';
    actor.look = puck;
  }
};

/** The net that a goalie guards who has no act: the one before which it was put. */
export const guardedNet = (rink: Rink, { spot }: Pick<Actor, 'spot'>): Net | undefined =>
  spot.kind === 'goalie' && spot.acts.length === 0
    ? rink.nets.find(net => isBeforeNet(net, spot.atM.xM, spot.atM.yM))
    : undefined;

/**
 * Sets the push of a goalie (`run.self`) who guards a net: to the place on the line from the puck to the middle of the net, as far out as it was put, for the
 * puck as it was a reaction ago. With no puck in play, or one behind the goal line, it stays. Metres, seconds, frame of the rink.
 * Source: rows `GOALIE_REACTS_S`, `GOALIE_SLIDE_MPS`, `GOALIE_PUSH_S`.
 */
export const steerGuard = (run: RunState, actor: Actor): void => {
  const { guard, goal, push } = actor;
  if (!guard) throw new Error(`spot ${actor.spot.id} guards no net`);
  const { net, seenM } = guard;
  const puck = puckInPlay(net, run.pucks);
  if (puck) actor.look = puck;
  const xM = seenM[2 * guard.oldest]!;
  const yM = seenM[2 * guard.oldest + 1]!;
  // Half a step of a shown run less than from one look to the next: no look is missed by rounding, and none is had twice.
  if (puck && run.nowS - guard.lookedAtS >= actor.lookS - STEP_S / 2) {
    seenM[2 * guard.oldest] = puck.xM;
    seenM[2 * guard.oldest + 1] = puck.yM;
    guard.oldest = (guard.oldest + 1) % (seenM.length / 2);
    guard.lookedAtS = run.nowS;
  }
  const x = xM - net.atM.xM;
  const y = yM - net.atM.yM;
  const farM = Math.hypot(x, y);
  const isBefore = x * Math.cos(net.facingRad) + y * Math.sin(net.facingRad) > 0;
  if (!puck || !isBefore || farM <= guard.outM) {
    push.x = 0;
    push.y = 0;
    return;
  }
  goal.xM = net.atM.xM + (guard.outM * x) / farM;
  goal.yM = net.atM.yM + (guard.outM * y) / farM;
  goal.xMps = 0;
  goal.yMps = 0;
  steerToGoal(actor, run.self);
};

/** The nearest puck that is carried or slides, or null; one that lies is nobody's to shoot. */
const puckInPlay = (net: Net, pucks: readonly PuckPlay[]): PuckPlay | null => {
  let nearest: PuckPlay | null = null;
  let nearestM = Number.POSITIVE_INFINITY;
  for (const puck of pucks) {
    if (puck.state === 'lies') continue;
    const farM = Math.hypot(puck.xM - net.atM.xM, puck.yM - net.atM.yM);
    if (farM >= nearestM) continue;
    nearest = puck;
    nearestM = farM;
  }
  return nearest;
};
