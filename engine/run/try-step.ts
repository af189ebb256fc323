import { mindBoards } from '../drill/in-boards.ts';
import { placeOnRoute } from '../motion/planned-route.ts';
import { moveUnderPush } from '../motion/reactive-step.ts';
import type { Stretch } from '../motion/stretch.ts';
import type { Boards } from '../rink/boards.ts';
import { type Actor, isFacingFrom } from './actor.ts';

/** Sets `actor.next` and the next facing to what they are at the end of the stretch with the push it has now. */
export const tryStep = (actor: Actor, stretch: Stretch, boards: Boards): void => {
  const { next, push } = actor;
  if (actor.motion === 'route' && actor.route) {
    placeOnRoute(actor.route, stretch, next);
  } else {
    next.xM = actor.xM;
    next.yM = actor.yM;
    next.xMps = actor.xMps;
    next.yMps = actor.yMps;
    if (actor.xMps !== 0 || actor.yMps !== 0 || push.x !== 0 || push.y !== 0) {
      moveUnderPush(next, actor, stretch);
      mindBoards(boards, next, actor.model);
    }
  }
  turnFacing(actor, stretch);
};

/** Makes the step that was tried the present. */
export const takeStep = (actor: Actor): void => {
  const { next } = actor;
  actor.xM = next.xM;
  actor.yM = next.yM;
  actor.xMps = next.xMps;
  actor.yMps = next.yMps;
  actor.facingX = actor.nextFacingX;
  actor.facingY = actor.nextFacingY;
};

/** What is nearer than this lies in no direction (metres); velocities that give a facing are far above it. */
export const SAME_PLACE_M = 1e-9;

const turnFacing = (actor: Actor, stretch: Stretch): void => {
  const { next, whom } = actor;
  actor.nextFacingX = actor.facingX;
  actor.nextFacingY = actor.facingY;
  let wantX: number;
  let wantY: number;
  if (actor.motion === 'face' && actor.look) {
    wantX = actor.look.xM - next.xM;
    wantY = actor.look.yM - next.yM;
  } else if ((actor.motion === 'gap' || actor.motion === 'screen') && whom) {
    wantX = whom.xM - next.xM;
    wantY = whom.yM - next.yM;
  } else {
    if (!isFacingFrom(next.xMps, next.yMps)) return;
    const sign = actor.isBackward ? -1 : 1;
    wantX = sign * next.xMps;
    wantY = sign * next.yMps;
  }
  const size = Math.sqrt(wantX * wantX + wantY * wantY);
  if (size < SAME_PLACE_M) return;
  wantX /= size;
  wantY /= size;
  const mostRad = actor.turnRadps * stretch.lengthS;
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
