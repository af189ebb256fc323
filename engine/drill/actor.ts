import type { Boards } from '../rink/boards.ts';
import type { SkaterModel } from '../skater/model.ts';
import type { SprintPower } from '../skater/sprint.ts';
import type { IcePoint } from '../units/points.ts';
import { BLADE_AHEAD_M, TURN_RATE_RADPS } from './drill-rows.ts';
import { type Body, mindBoards } from './in-boards.ts';
import { type PlannedRoute, placeOnRoute } from './planned-route.ts';
import type { PlayableSpot } from './playable-parts.ts';
import { moveUnderPush, type Push } from './reactive-step.ts';

/**
 * What moves the skater now. `ease`: nothing to do, the speed runs out. `shadow`: the chase has ended within reach and
 * goes on beside the one chased. `cutOff`: an opponent has left the script to take a pass.
 */
export type Motion = 'ease' | 'route' | 'chase' | 'gap' | 'shadow' | 'cutOff';

/** One spot during a run. Changed in place; `next` is where it will be at the end of the step being tried. */
export interface Actor extends Body {
  readonly index: number;
  readonly spot: PlayableSpot;
  readonly model: SkaterModel;
  /** The net this side defends, metres. */
  readonly netM: IcePoint;
  readonly next: Body;
  readonly push: Push;
  facingX: number;
  facingY: number;
  nextFacingX: number;
  nextFacingY: number;
  motion: Motion;
  power: SprintPower;
  route: PlannedRoute | null;
  whom: Actor | null;
  gapM: number;
  /** Act under way, −1 when none; and the next one in the list. */
  actIndex: number;
  nextActIndex: number;
  /** When the act before the next one started (−1: none yet) and ended. */
  actStartS: number;
  freeSinceS: number;
  /** When the next act is due; Infinity while its cue has not come. */
  dueS: number;
  /** When the act under way ends by itself; Infinity when it does not. */
  endS: number;
  /** A cut-off coasts until its skater has reacted, then pushes this way. */
  reactsAtS: number;
  cutX: number;
  cutY: number;
  /** The last route was skated backward, and nothing has turned the skater since. */
  isBackward: boolean;
  hadPuckInAct: boolean;
  /** The due pass or shot has no puck yet. */
  waitsForPuck: boolean;
  /** Number of rink lines with smaller x. */
  zone: number;
}

export const actorOf = (index: number, spot: PlayableSpot, model: SkaterModel, netM: IcePoint): Actor => ({
  index,
  spot,
  model,
  netM,
  xM: spot.atM.xM,
  yM: spot.atM.yM,
  xMps: 0,
  yMps: 0,
  next: { xM: spot.atM.xM, yM: spot.atM.yM, xMps: 0, yMps: 0 },
  push: { x: 0, y: 0 },
  facingX: Math.cos(spot.facingRad),
  facingY: Math.sin(spot.facingRad),
  nextFacingX: Math.cos(spot.facingRad),
  nextFacingY: Math.sin(spot.facingRad),
  motion: 'ease',
  power: model,
  route: null,
  whom: null,
  gapM: 0,
  actIndex: -1,
  nextActIndex: 0,
  actStartS: -1,
  freeSinceS: 0,
  dueS: Number.POSITIVE_INFINITY,
  endS: Number.POSITIVE_INFINITY,
  reactsAtS: 0,
  cutX: 0,
  cutY: 0,
  isBackward: false,
  hadPuckInAct: false,
  waitsForPuck: false,
  zone: 0,
});

/** Sets `actor.next` and the next facing to what they are `stepS` after `nowS` with the push it has now. */
export const tryStep = (actor: Actor, nowS: number, stepS: number, boards: Boards): void => {
  const next = actor.next;
  if (actor.motion === 'route' && actor.route) {
    placeOnRoute(actor.route, nowS + stepS, next);
  } else {
    next.xM = actor.xM;
    next.yM = actor.yM;
    next.xMps = actor.xMps;
    next.yMps = actor.yMps;
    if (!isStanding(actor)) {
      moveUnderPush(next, actor.push, actor.power, stepS);
      mindBoards(boards, next, actor.model.stopDecelMps2);
    }
  }
  turnFacing(actor, stepS);
};

const isStanding = (actor: Actor): boolean =>
  actor.xMps === 0 && actor.yMps === 0 && actor.push.x === 0 && actor.push.y === 0;

/** Makes the step that was tried the present. */
export const takeStep = (actor: Actor): void => {
  const next = actor.next;
  actor.xM = next.xM;
  actor.yM = next.yM;
  actor.xMps = next.xMps;
  actor.yMps = next.yMps;
  actor.facingX = actor.nextFacingX;
  actor.facingY = actor.nextFacingY;
};

/** Slower than this the facing is kept: the direction of so small a velocity means nothing. */
const FACING_FROM_MPS2 = 0.3 ** 2;

/** Whether a velocity is large enough to give the body its facing. */
export const isFacingFrom = (xMps: number, yMps: number): boolean =>
  xMps * xMps + yMps * yMps >= FACING_FROM_MPS2;

const turnFacing = (actor: Actor, stepS: number): void => {
  const { next, whom } = actor;
  actor.nextFacingX = actor.facingX;
  actor.nextFacingY = actor.facingY;
  let wantX: number;
  let wantY: number;
  if (actor.motion === 'gap' && whom) {
    wantX = whom.xM - next.xM;
    wantY = whom.yM - next.yM;
  } else {
    if (!isFacingFrom(next.xMps, next.yMps)) return;
    const sign = actor.isBackward ? -1 : 1;
    wantX = sign * next.xMps;
    wantY = sign * next.yMps;
  }
  const size = Math.sqrt(wantX * wantX + wantY * wantY);
  if (size === 0) return;
  wantX /= size;
  wantY /= size;
  const mostRad = TURN_RATE_RADPS.value * stepS;
  // cos x ≥ 1 − x²/2 lies on the safe side: at most the last hundredth of a turn is taken at once.
  if (actor.facingX * wantX + actor.facingY * wantY >= 1 - (mostRad * mostRad) / 2) {
    actor.nextFacingX = wantX;
    actor.nextFacingY = wantY;
    return;
  }
  const turnRad = actor.facingX * wantY - actor.facingY * wantX < 0 ? -mostRad : mostRad;
  const cos = Math.cos(turnRad);
  const sin = Math.sin(turnRad);
  actor.nextFacingX = cos * actor.facingX - sin * actor.facingY;
  actor.nextFacingY = sin * actor.facingX + cos * actor.facingY;
};

export const bladeXOf = (actor: Actor): number => actor.xM + BLADE_AHEAD_M.value * actor.facingX;
export const bladeYOf = (actor: Actor): number => actor.yM + BLADE_AHEAD_M.value * actor.facingY;

export const placeOf = (body: { readonly xM: number; readonly yM: number }): IcePoint => ({
  xM: body.xM,
  yM: body.yM,
});
