import {
  BOARDS_ROOM_M,
  CARRIES_ON_MPS,
  GAP_RESPONSE_S,
  SHADOW_BESIDE_M,
  STANDING_MPS,
} from '../drill/drill-rows.ts';
import { type Body, boardsDistanceAt, pushInside } from '../drill/in-boards.ts';
import type { Boards } from '../rink/boards.ts';
import type { SprintPower } from '../skater/sprint.ts';
import type { IcePoint } from '../units/points.ts';
import { limitPush, type Push } from './reactive-step.ts';

/** How fast the one whom a gap is held to can come. */
export interface Carrier {
  readonly topSpeedMps: number;
  readonly carryRatio: number;
}

export interface Keeper {
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
 * the closing speed wanted, along the way the point moves and across it, is at most the one that can still be taken off
 * before the point (`brakeableMps`), and at most e / (4·response) for a distance e to go, so the point is reached without
 * overshoot. A carrier who comes at nearly the keeper's own speed leaves almost nothing to brake with, and one under way is
 * expected to speed up to what can be carried, so the keeper starts back early; `carrier` says how fast that is. `self`: the keeper's own body. A turn from backward to forward skating costs
 * nothing here.
 */
export const steerGap = (keeper: Keeper, self: Body, whom: Body, boards: Boards, carrier: Carrier): void => {
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
  steerToGoal(keeper, self, expectedRatio(whom, carrier));
};

/** Sets the push of a chaser who has come within reach: keeps up with `whom`, on the side where it came from. */
export const steerShadow = (shadow: Keeper, self: Body, whom: Body): void => {
  const { goal } = shadow;
  const x = self.xM - whom.xM;
  const y = self.yM - whom.yM;
  const apartM = Math.sqrt(x * x + y * y);
  const scale = apartM > 0 ? SHADOW_BESIDE_M.value / apartM : 0;
  goal.xM = whom.xM + scale * x;
  goal.yM = whom.yM + scale * y;
  goal.xMps = whom.xMps;
  goal.yMps = whom.yMps;
  steerToGoal(shadow, self, 1);
};

/** How many times its present speed a skater under way is expected to come to; 1 for one who stands or is at the top. */
const expectedRatio = (whom: Body, { topSpeedMps, carryRatio }: Carrier): number => {
  const speedMps = Math.sqrt(whom.xMps * whom.xMps + whom.yMps * whom.yMps);
  if (speedMps < CARRIES_ON_MPS.value) return 1;
  return Math.max(1, (topSpeedMps * carryRatio) / speedMps);
};

/**
 * Pushes so as to reach the goal and to stay with it: sets the push that brings the velocity to the wanted one within
 * `GAP_RESPONSE_S`, as far as full effort can, from `v' = a·v + (1 − a)·V·u` with a = e^(−response/τ). Along the way the goal
 * moves and across it are closed each for itself, and for who is ahead of the goal along comes first: who is up to its speed too
 * late is passed, who is on the line too late is still in front.
 */
export const steerToGoal = (keeper: Omit<Keeper, 'gapM' | 'netM'>, self: Body, expected: number): void => {
  const { goal, push, power, responseKeeps } = keeper;
  const x = goal.xM - self.xM;
  const y = goal.yM - self.yM;
  let alongX = goal.xMps;
  let alongY = goal.yMps;
  let size = Math.sqrt(alongX * alongX + alongY * alongY);
  const goalMps = size;
  if (size < STANDING_MPS.value) {
    alongX = x;
    alongY = y;
    size = Math.sqrt(x * x + y * y);
  }
  alongX = size > 0 ? alongX / size : 1;
  alongY = size > 0 ? alongY / size : 0;
  const alongM = x * alongX + y * alongY;
  const acrossM = y * alongX - x * alongY;
  const { topSpeedMps } = power;
  // Who is ahead of the goal must get up to its speed before it is there; who is behind must only slow down to it.
  const comesToMps = expected * goalMps;
  const spareAlongMps = alongM < 0 ? Math.max(0, topSpeedMps - comesToMps) : topSpeedMps + goalMps;
  const wantAlong = goalMps + closingMps(alongM, spareAlongMps, power.tauS);
  const wantAcross = closingMps(acrossM, topSpeedMps, power.tauS);
  const isAlong = self.xMps * alongX + self.yMps * alongY;
  const isAcross = self.yMps * alongX - self.xMps * alongY;
  const reachMps = (1 - responseKeeps) * topSpeedMps;
  let pushAlong = (wantAlong - responseKeeps * isAlong) / reachMps;
  let pushAcross = (wantAcross - responseKeeps * isAcross) / reachMps;
  if (alongM < 0) {
    pushAlong = Math.max(-1, Math.min(1, pushAlong));
    const leftRatio = Math.sqrt(1 - pushAlong * pushAlong);
    pushAcross = Math.max(-leftRatio, Math.min(leftRatio, pushAcross));
  }
  push.x = pushAlong * alongX - pushAcross * alongY;
  push.y = pushAlong * alongY + pushAcross * alongX;
  limitPush(push);
};

/** Closing speed wanted over a signed distance: what the response allows, or less when that could not be taken off in time. */
const closingMps = (signedM: number, spareMps: number, tauS: number): number => {
  const toGoM = Math.abs(signedM);
  if (toGoM === 0) return 0;
  const nearMps = toGoM / (4 * GAP_RESPONSE_S.value);
  const isSure = spareMps >= NO_SPARE_MPS && nearMps <= spareMps * surelyBrakeable(toGoM / (tauS * spareMps));
  const mps = isSure ? nearMps : Math.min(nearMps, brakeableMps(toGoM, spareMps, tauS));
  return signedM < 0 ? -mps : mps;
};

const NEWTON_STEPS = 2;
/** From here down the first two terms are right to a ten-thousandth, and Newton would only lose digits. */
const SMALL_SHARE = 1e-3;

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
  if (share > SMALL_SHARE) {
    for (let i = 0; i < NEWTON_STEPS; i++) c -= ((c - Math.log(1 + c) - share) * (1 + c)) / c;
  }
  return c * spareMps;
};

/** The first two terms of c/A in √(e/(τA)): never more than c/A, and near it while there is speed to spare. */
const surelyBrakeable = (share: number): number => Math.sqrt(2 * share) + (2 / 3) * share;

/** Below this the limit without speed to spare is as good as exact. */
const NO_SPARE_MPS = 1e-6;
