import type { Body } from '../drill/in-boards.ts';
import type { SprintPower } from '../skater/sprint.ts';
import type { Stretch } from './stretch.ts';

/** Where the push points: u of `v̇ = (V·u − v)/τ`, |u| ≤ 1. Changed in place, so that a step makes no garbage. */
export interface Push {
  x: number;
  y: number;
}

/** No push; all are made here, so that they are one kind of object for the compiler, with room for fractions. */
export const pushOf = (): Push => {
  const push = { x: Number.NaN, y: Number.NaN };
  push.x = 0;
  push.y = 0;
  return push;
};

/** What moves a body; `stepKeeps` is e^(−h/τ) for a whole step of the run, which most stretches are. */
export interface Pushed {
  readonly push: Push;
  readonly power: SprintPower;
  readonly stepKeeps: number;
}

/**
 * Moves the body through a stretch of `lengthS` ≥ 0 seconds under a push that stays the same: the exact solution of
 * `v̇ = (V·u − v)/τ`, so a longer step is as true as a shorter one:
 * `v' = a·v + (1 − a)·V·u`, `p' = p + V·u·h + (v − V·u)·τ·(1 − a)`, `a = e^(−h/τ)`.
 * Source: Fujimura & Sugihara 2005 (the sprint law in the plane). The law turns as hard as it speeds up: V/τ is within
 * 16 % of the lateral acceleration of the levels from U14 up, but a full reversal asks for (V + v)/τ, about twice what
 * a stop gives, so a chaser who must turn right round is shown up to half a second too quick.
 */
export const moveUnderPush = (body: Body, by: Pushed, over: Readonly<Stretch>): void => {
  const { push, power } = by;
  const { lengthS } = over;
  const keeps = lengthS === over.wholeS ? by.stepKeeps : Math.exp(-lengthS / power.tauS);
  const drawnS = power.tauS * (1 - keeps);
  const wantX = power.topSpeedMps * push.x;
  const wantY = power.topSpeedMps * push.y;
  body.xM += wantX * lengthS + (body.xMps - wantX) * drawnS;
  body.yM += wantY * lengthS + (body.yMps - wantY) * drawnS;
  body.xMps = keeps * body.xMps + (1 - keeps) * wantX;
  body.yMps = keeps * body.yMps + (1 - keeps) * wantY;
};

/** Shortens the push to the unit disc: nobody pushes harder than at full power. */
export const limitPush = (push: Push): void => {
  const size = Math.sqrt(push.x * push.x + push.y * push.y);
  if (size > 1) {
    push.x /= size;
    push.y /= size;
  }
};
