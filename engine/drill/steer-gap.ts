import type { Boards } from '../rink/boards.ts';
import type { SprintPower } from '../skater/sprint.ts';
import type { IcePoint } from '../units/points.ts';
import { BOARDS_ROOM_M, GAP_RESPONSE_S } from './drill-rows.ts';
import { type Body, boardsDistanceAt, pushInside } from './in-boards.ts';
import { limitPush, type Push } from './reactive-step.ts';

export interface Keeper extends Body {
  readonly push: Push;
  readonly power: SprintPower;
  readonly netM: IcePoint;
  readonly gapM: number;
  /** The moving point that is steered to; overwritten. */
  readonly goal: Body;
  /** e^(−`GAP_RESPONSE_S`/τ) of this skater. */
  readonly responseKeeps: number;
}

/**
 * Sets the push of a skater who holds a gap: stands on the line from `whom` to the net, `gapM` before `whom`
 * (or at the net, when `whom` is nearer to it than that). Aims at that moving point at full effort and slows in time:
 * the closing speed wanted is at most `√(2·(V/τ)·e)` for a distance e to go (what the law can brake from any speed), and at
 * most e / response, so the point is reached without overshoot. A turn from backward to forward skating costs nothing here.
 */
export const steerGap = (keeper: Keeper, whom: Body, boards: Boards): void => {
  const { goal, netM, gapM } = keeper;
  const netX = netM.xM - whom.xM;
  const netY = netM.yM - whom.yM;
  const toNetM = Math.sqrt(netX * netX + netY * netY);
  const aheadRatio = toNetM > 0 ? Math.min(1, gapM / toNetM) : 1;
  goal.xM = whom.xM + aheadRatio * netX;
  goal.yM = whom.yM + aheadRatio * netY;
  // The point's own velocity: q + d·n moves with w − (d/r)·(w − (w·n)n); at the net it stands.
  goal.xMps = 0;
  goal.yMps = 0;
  if (aheadRatio < 1) {
    const along = (whom.xMps * netX + whom.yMps * netY) / (toNetM * toNetM);
    goal.xMps = whom.xMps - aheadRatio * (whom.xMps - along * netX);
    goal.yMps = whom.yMps - aheadRatio * (whom.yMps - along * netY);
  }
  if (boardsDistanceAt(boards, goal.xM, goal.yM) < BOARDS_ROOM_M.value) pushInside(boards, goal);
  steerToGoal(keeper);
};

/** A skater who has caught somebody stays this near: beside, not on top. */
const BESIDE_M = 1.5;

/** Sets the push of a chaser who has come within reach: keeps up with `whom`, on the side where it came from. */
export const steerShadow = (shadow: Keeper, whom: Body): void => {
  const { goal } = shadow;
  const x = shadow.xM - whom.xM;
  const y = shadow.yM - whom.yM;
  const apartM = Math.sqrt(x * x + y * y);
  const scale = apartM > 0 ? BESIDE_M / apartM : 0;
  goal.xM = whom.xM + scale * x;
  goal.yM = whom.yM + scale * y;
  goal.xMps = whom.xMps;
  goal.yMps = whom.yMps;
  steerToGoal(shadow);
};

/**
 * Pushes so as to reach the goal and to stay with it: sets the push that brings the velocity to the wanted one within
 * `GAP_RESPONSE_S`, as far as full effort can, from `v' = a·v + (1 − a)·V·u` with a = e^(−response/τ).
 */
const steerToGoal = (keeper: Keeper): void => {
  const { goal, push, power, responseKeeps } = keeper;
  const x = goal.xM - keeper.xM;
  const y = goal.yM - keeper.yM;
  const toGoM = Math.sqrt(x * x + y * y);
  const brakeMps2 = power.topSpeedMps / power.tauS;
  const closeMps = Math.min(toGoM / (4 * GAP_RESPONSE_S.value), Math.sqrt(2 * brakeMps2 * toGoM));
  const scale = toGoM > 0 ? closeMps / toGoM : 0;
  const reachMps = (1 - responseKeeps) * power.topSpeedMps;
  push.x = (goal.xMps + x * scale - responseKeeps * keeper.xMps) / reachMps;
  push.y = (goal.yMps + y * scale - responseKeeps * keeper.yMps) / reachMps;
  limitPush(push);
};
