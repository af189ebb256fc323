import { GAP_RESPONSE_S, STANDING_MPS } from '../drill/drill-rows.ts';
import type { Body } from '../drill/in-boards.ts';
import type { SprintPower } from '../skater/sprint.ts';
import { backwardTopMps, type StanceAbility } from './keeper-stance.ts';
import { limitPush, type Push } from './reactive-step.ts';

/** A stance that limits its skater, and what turning out of it costs. */
export type TurningAbility = StanceAbility & { readonly model: { readonly transitionS: number } };

/** Who steers to a moving point. */
export interface Follower {
  readonly push: Push;
  readonly power: SprintPower;
  /** The moving point that is steered to, and how many times its present speed it is expected to come to; overwritten. */
  readonly goal: Body;
  expectedRatio: number;
  /** e^(−`GAP_RESPONSE_S`/τ) of this skater. */
  readonly responseKeeps: number;
}

/**
 * Pushes so as to reach the goal and to stay with it: sets the push that brings the velocity to the wanted one within
 * `GAP_RESPONSE_S`, as far as full effort can, from `v' = a·v + (1 − a)·V·u` with a = e^(−response/τ). Along the way the goal
 * moves and across it are closed each for itself, and for who is ahead of the goal along comes first: who is up to its speed too
 * late is passed, who is on the line too late is still in front. The goal is taken to keep its speed.
 */
export const steerToGoal = (follower: Follower, self: Body): void => {
  follower.expectedRatio = 1;
  pushToGoal(follower, self, null);
};

/**
 * The same for one whose stance limits what he can do in some directions; the push may still be longer than that. Along comes first also for
 * who is behind a moving goal by less than `frontM`, metres: he is still in front of what comes after it.
 */
export const pushToGoal = (
  keeper: Follower,
  self: Readonly<Body>,
  stands: TurningAbility | null,
  dares = false,
  frontM = 0,
): void => {
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
  // Backward parts of the ways along and across, all four tops follow from them; nothing is backward for one who is turned or has no stance.
  const stance = stands && !stands.stance.isTurned ? stands.stance : null;
  const backRatio = stands ? stands.model.backwardRatio : 1;
  const backAlong = stance ? -(alongX * stance.towardX + alongY * stance.towardY) : 0;
  const backAcross = stance ? alongY * stance.towardX - alongX * stance.towardY : 0;
  const onMps = backwardTopMps(backAlong, backRatio, topSpeedMps);
  const offMps = backwardTopMps(-backAlong, backRatio, topSpeedMps);
  const asideMps = backwardTopMps(-Math.sign(acrossM) * backAcross, backRatio, topSpeedMps);
  // Who is ahead of the goal must get up to its speed before it is there; who is behind must only slow down to it.
  const comesToMps = keeper.expectedRatio * goalMps;
  const isAlong = self.xMps * alongX + self.yMps * alongY;
  const isAcross = self.yMps * alongX - self.xMps * alongY;
  // Whose stance is too slow for what the goal comes to has to turn on the way, while it gains on him: at half of what it gains now, since
  // that falls to nothing until he is there.
  const mustTurn = alongM < 0 && stands !== null && onMps < comesToMps;
  const turnM = mustTurn
    ? stands.model.transitionS * Math.max(0, (goalMps - isAlong) * (dares ? 0.5 : 1))
    : 0;
  const spareMps = Math.max(0, (mustTurn && dares ? topSpeedMps : onMps) - comesToMps);
  const wantAlong =
    alongM < 0
      ? goalMps + closingMps(Math.min(0, alongM + turnM), spareMps, power.tauS)
      : goalMps + closingMps(alongM, offMps + goalMps, power.tauS);
  const wantAcross = closingMps(acrossM, asideMps, power.tauS);
  const reachMps = (1 - responseKeeps) * topSpeedMps;
  let pushAlong = (wantAlong - responseKeeps * isAlong) / reachMps;
  let pushAcross = (wantAcross - responseKeeps * isAcross) / reachMps;
  if (alongM < (goalMps < STANDING_MPS.value ? 0 : frontM)) {
    const mostRatio = onMps / topSpeedMps;
    pushAlong = Math.max(-mostRatio, Math.min(mostRatio, pushAlong));
    const asideRatio =
      backwardTopMps(Math.sign(pushAcross) * backAcross, backRatio, topSpeedMps) / topSpeedMps;
    const leftRatio = asideRatio * Math.sqrt(1 - (pushAlong / mostRatio) ** 2);
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
