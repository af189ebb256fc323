import { mayMindBoards, mindBoards } from '../drill/in-boards.ts';
import { movingBodyAt } from '../motion/moving-body.ts';
import { placeOnRoute } from '../motion/planned-route.ts';
import { indexAhead } from '../motion/route-ahead.ts';
import type { Stretch } from '../motion/stretch.ts';
import type { Boards } from '../rink/boards.ts';
import { type Actor, FACING_FROM_MPS2, isFacingFrom } from './actor.ts';
import { copyBody, FACING_X, FACING_Y, writeBody, X_MPS, Y, Y_MPS } from './actor-numbers.ts';
import type { RunState } from './run-state.ts';

/**
 * Tries the stretch with everybody. Who skates a drawn route to a whole stride, as most do at most steps, is set there in the
 * block of numbers itself; else as `tryStep`.
 */
export const tryAll = ({ actors, numbers, stretch, rink, strideHz }: RunState): void => {
  const { stride, lengthS } = stretch;
  for (let a = 0; a < actors.length; a++) {
    const actor = actors[a]!;
    const { route } = actor;
    if (!route || stride < 0) {
      tryStep(actor, stretch, rink.boards);
      continue;
    }
    const from = indexAhead(actor.ahead, route, stride, strideHz);
    const { places } = actor.ahead;
    const { at, nextAt } = actor;
    const xMps = places[from + 2]!;
    const yMps = places[from + 3]!;
    numbers[nextAt] = places[from]!;
    numbers[nextAt + Y] = places[from + 1]!;
    numbers[nextAt + X_MPS] = xMps;
    numbers[nextAt + Y_MPS] = yMps;
    if (xMps * xMps + yMps * yMps < FACING_FROM_MPS2) keepFacing(numbers, at, nextAt);
    else {
      const sign = actor.isBackward ? -1 : 1;
      const wantX = sign * places[from + 4]!;
      const wantY = sign * places[from + 5]!;
      const cos = numbers[at + FACING_X]! * wantX + numbers[at + FACING_Y]! * wantY;
      const mostRad = actor.turnRadps * lengthS;
      if (cos >= 1 - (mostRad * mostRad) / 2) {
        numbers[nextAt + FACING_X] = wantX;
        numbers[nextAt + FACING_Y] = wantY;
      } else turnTowards(actor, stretch, wantX, wantY);
    }
  }
};

/** One for all who are tried, one after the other. */
const tried = movingBodyAt(0, 0);

/** Sets the numbers of `actor.next` and the next facing to what they are at the end of the stretch with the push it has now. */
export const tryStep = (actor: Actor, stretch: Stretch, boards: Boards): void => {
  const { numbers, nextAt } = actor;
  if (actor.route) {
    placeOnRoute(actor.route, stretch, tried);
    writeBody(numbers, nextAt, tried);
  } else pushOn(actor, stretch, boards);
  turnFacing(actor, stretch);
};

/**
 * Moves who is not on a route, in the block of numbers: `moveUnderPush`, written out so that no number leaves it, and the boards minded where
 * they may be near.
 */
const pushOn = (
  { numbers, at, nextAt, push, power, model, stepKeeps }: Actor,
  over: Stretch,
  boards: Boards,
): void => {
  const xMps = numbers[at + X_MPS]!;
  const yMps = numbers[at + Y_MPS]!;
  if (xMps === 0 && yMps === 0 && push.x === 0 && push.y === 0) {
    numbers[nextAt] = numbers[at]!;
    numbers[nextAt + Y] = numbers[at + Y]!;
    numbers[nextAt + X_MPS] = 0;
    numbers[nextAt + Y_MPS] = 0;
    return;
  }
  const { lengthS } = over;
  const keeps = lengthS === over.wholeS ? stepKeeps : Math.exp(-lengthS / power.tauS);
  const drawnS = power.tauS * (1 - keeps);
  const wantX = power.topSpeedMps * push.x;
  const wantY = power.topSpeedMps * push.y;
  const xM = numbers[at]! + (wantX * lengthS + (xMps - wantX) * drawnS);
  const yM = numbers[at + Y]! + (wantY * lengthS + (yMps - wantY) * drawnS);
  const nextXMps = keeps * xMps + (1 - keeps) * wantX;
  const nextYMps = keeps * yMps + (1 - keeps) * wantY;
  numbers[nextAt] = xM;
  numbers[nextAt + Y] = yM;
  numbers[nextAt + X_MPS] = nextXMps;
  numbers[nextAt + Y_MPS] = nextYMps;
  const speed2 = nextXMps * nextXMps + nextYMps * nextYMps;
  if (!mayMindBoards(boards, xM, yM, speed2, model.stopDecelMps2)) return;
  copyBody(numbers, nextAt, tried);
  mindBoards(boards, tried, model);
  writeBody(numbers, nextAt, tried);
};

/** Makes the step that was tried the present. */
export const takeAll = ({ numbers }: RunState): void => {
  numbers.copyWithin(0, numbers.length / 2);
};

/** What is nearer than this lies in no direction (metres); velocities that give a facing are far above it. */
export const SAME_PLACE_M = 1e-9;

const turnFacing = (actor: Actor, stretch: Stretch): void => {
  const { numbers, at, nextAt, motion, whom } = actor;
  let wantX: number;
  let wantY: number;
  if ((motion === 'face' || motion === 'guard') && actor.look) {
    wantX = actor.look.xM - numbers[nextAt]!;
    wantY = actor.look.yM - numbers[nextAt + Y]!;
  } else if (whom && (motion === 'screen' || (motion === 'gap' && !actor.stance.isTurned))) {
    wantX = numbers[whom.at]! - numbers[nextAt]!;
    wantY = numbers[whom.at + Y]! - numbers[nextAt + Y]!;
  } else if (motion === 'gap' && !isFacingFrom(actor.next.xMps, actor.next.yMps)) {
    wantX = -actor.stance.towardX;
    wantY = -actor.stance.towardY;
  } else {
    const sign = actor.isBackward ? -1 : 1;
    wantX = sign * numbers[nextAt + X_MPS]!;
    wantY = sign * numbers[nextAt + Y_MPS]!;
    if (wantX * wantX + wantY * wantY < FACING_FROM_MPS2) {
      keepFacing(numbers, at, nextAt);
      return;
    }
  }
  const size = Math.sqrt(wantX * wantX + wantY * wantY);
  if (size < SAME_PLACE_M) {
    keepFacing(numbers, at, nextAt);
    return;
  }
  wantX /= size;
  wantY /= size;
  // cos x ≥ 1 − x²/2 lies on the safe side, so at most the last hundredth of a turn is taken at once.
  const mostRad = actor.turnRadps * stretch.lengthS;
  if (numbers[at + FACING_X]! * wantX + numbers[at + FACING_Y]! * wantY >= 1 - (mostRad * mostRad) / 2) {
    numbers[nextAt + FACING_X] = wantX;
    numbers[nextAt + FACING_Y] = wantY;
  } else turnTowards(actor, stretch, wantX, wantY);
};

const keepFacing = (numbers: Float64Array, at: number, nextAt: number): void => {
  numbers[nextAt + FACING_X] = numbers[at + FACING_X]!;
  numbers[nextAt + FACING_Y] = numbers[at + FACING_Y]!;
};

/** Turns the body as far as it can be turned in the stretch towards a direction that is farther off. */
const turnTowards = (actor: Actor, { lengthS }: Stretch, wantX: number, wantY: number): void => {
  const { facingX, facingY } = actor;
  const mostRad = actor.turnRadps * lengthS;
  const turnRad = facingX * wantY - facingY * wantX < 0 ? -mostRad : mostRad;
  const cos = Math.cos(turnRad);
  const sin = Math.sin(turnRad);
  actor.nextFacingX = cos * facingX - sin * facingY;
  actor.nextFacingY = sin * facingX + cos * facingY;
};
