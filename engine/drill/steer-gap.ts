import type { Boards } from '../rink/boards.ts';
import type { SprintPower } from '../skater/sprint.ts';
import type { IcePoint } from '../units/points.ts';
import { BOARDS_ROOM_M, CARRIES_ON_MPS, GAP_RESPONSE_S, SHADOW_BESIDE_M } from './drill-rows.ts';
import { type Body, boardsDistanceAt, pushInside } from './in-boards.ts';
import { limitPush, type Push } from './reactive-step.ts';

/** Whom a gap is held to: a body, and how fast it can come. */
export interface Carrier extends Body {
  readonly model: { readonly topSpeedMps: number; readonly carryRatio: number };
}

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
 * the closing speed wanted is at most the one that `brakeableMps` can still take off before the point, and at most
 * e / (4·response) for a distance e to go, so the point is reached without overshoot. A carrier who comes at nearly the
 * keeper's own speed leaves almost nothing to brake with, and one under way is expected to speed up to what can be carried,
 * so the keeper starts back early. A turn from backward to forward
 * skating costs nothing here.
 */
export const steerGap = (keeper: Keeper, whom: Carrier, boards: Boards): void => {
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
  steerToGoal(keeper, expectedRatio(whom));
};

/** Sets the push of a chaser who has come within reach: keeps up with `whom`, on the side where it came from. */
export const steerShadow = (shadow: Keeper, whom: Body): void => {
  const { goal } = shadow;
  const x = shadow.xM - whom.xM;
  const y = shadow.yM - whom.yM;
  const apartM = Math.sqrt(x * x + y * y);
  const scale = apartM > 0 ? SHADOW_BESIDE_M.value / apartM : 0;
  goal.xM = whom.xM + scale * x;
  goal.yM = whom.yM + scale * y;
  goal.xMps = whom.xMps;
  goal.yMps = whom.yMps;
  steerToGoal(shadow, 1);
};

/** How many times its present speed a skater under way is expected to come to; 1 for one who stands or is at the top. */
const expectedRatio = (whom: Carrier): number => {
  const speedMps = Math.sqrt(whom.xMps * whom.xMps + whom.yMps * whom.yMps);
  if (speedMps < CARRIES_ON_MPS.value) return 1;
  return Math.max(1, (whom.model.topSpeedMps * whom.model.carryRatio) / speedMps);
};

/**
 * Pushes so as to reach the goal and to stay with it: sets the push that brings the velocity to the wanted one within
 * `GAP_RESPONSE_S`, as far as full effort can, from `v' = a·v + (1 − a)·V·u` with a = e^(−response/τ).
 */
const steerToGoal = (keeper: Keeper, expected: number): void => {
  const { goal, push, power, responseKeeps } = keeper;
  const x = goal.xM - keeper.xM;
  const y = goal.yM - keeper.yM;
  const toGoM = Math.sqrt(x * x + y * y);
  const closeMps = toGoM > 0 ? closingMps(keeper, expected, x, y, toGoM) : 0;
  const scale = toGoM > 0 ? closeMps / toGoM : 0;
  const reachMps = (1 - responseKeeps) * power.topSpeedMps;
  push.x = (goal.xMps + x * scale - responseKeeps * keeper.xMps) / reachMps;
  push.y = (goal.yMps + y * scale - responseKeeps * keeper.yMps) / reachMps;
  limitPush(push);
};

/** Closing speed wanted: what the response allows, or less when that could not be taken off in time. */
const closingMps = (keeper: Keeper, expected: number, x: number, y: number, toGoM: number): number => {
  const nearMps = toGoM / (4 * GAP_RESPONSE_S.value);
  const spare = spareMps(keeper, expected, x, y, toGoM);
  const { tauS } = keeper.power;
  if (spare >= NO_SPARE_MPS && nearMps <= spare * surelyBrakeable(toGoM / (tauS * spare))) return nearMps;
  return Math.min(nearMps, brakeableMps(toGoM, spare, tauS));
};

/**
 * Speed the keeper has left against the closing direction while it goes along with the goal at `expected` times the goal's
 * present speed, metres a second, ≥ 0. While both speed up with the same τ, only the speeds they come to count.
 */
const spareMps = (keeper: Keeper, expected: number, x: number, y: number, toGoM: number): number => {
  const { goal, power } = keeper;
  const top2 = power.topSpeedMps * power.topSpeedMps;
  const xMps = expected * goal.xMps;
  const yMps = expected * goal.yMps;
  const closing = (xMps * x + yMps * y) / toGoM;
  const across2 = xMps * xMps + yMps * yMps - closing * closing;
  return Math.max(0, Math.sqrt(Math.max(0, top2 - across2)) + closing);
};

const NEWTON_STEPS = 3;

/**
 * Greatest closing speed c from which full effort brings a skater level with a moving goal within `toGoM` metres, when the
 * top speed is `spareMps` (A) more than the goal needs: the relative speed follows `ṙ = (A − r)/τ`, so from −c it is gone
 * after `τ·(c − A·ln(1 + c/A))` metres. Metres, seconds; with no speed to spare c = e/τ, with plenty √(2·(A/τ)·e).
 */
export const brakeableMps = (toGoM: number, spareMps: number, tauS: number): number => {
  const wayMps = toGoM / tauS;
  if (spareMps < NO_SPARE_MPS) return wayMps;
  const share = wayMps / spareMps;
  let c = surelyBrakeable(share);
  for (let i = 0; i < NEWTON_STEPS && c > 0; i++) c -= ((c - Math.log1p(c) - share) * (1 + c)) / c;
  return c * spareMps;
};

/** The first two terms of c/A in √(e/(τA)): never more than c/A, and near it while there is speed to spare. */
const surelyBrakeable = (share: number): number => Math.sqrt(2 * share) + (2 / 3) * share;

/** Below this the limit without speed to spare is as good as exact. */
const NO_SPARE_MPS = 1e-6;
