import { CARRIES_ON_MPS } from '../drill/drill-rows.ts';
import type { Body } from '../drill/in-boards.ts';
import { PIVOT_LOSS_RATIO, TURNS_AGAIN_S, TURNS_BACK_RATIO } from './body-rows.ts';
import { facingTopSpeedMps, type StanceAbility } from './keeper-stance.ts';
import type { Push } from './reactive-step.ts';

/** Who keeps a gap, and the moving point he steers to; his own body is given as `self`. */
export interface TurningKeeper extends StanceAbility {
  readonly goal: Body;
  /** How many times its present speed the point is expected to come to. */
  expectedRatio: number;
  readonly push: Push;
  readonly power: { readonly topSpeedMps: number; readonly tauS: number };
  readonly model: { readonly backwardRatio: number; readonly transitionS: number };
}

/**
 * Decides whether the keeper changes now between backward and forward; changes the stance when he does, and says whether that is a change
 * that costs him time. He faces whom he keeps off for as long as that can be. He turns forward
 * - when the point he is to hold goes faster than he can in that stance, as late as that allows: when what he is ahead of the point is
 *   what the turn and the speeding up after it cost (`turnCostM`);
 * - when he is off the point, and forward he is on it sooner by more than a change there and one back (`savedByTurningS`).
 *
 * He turns back when the point is slower than `TURNS_BACK_RATIO` of his backward top speed, less than half a change is to be
 * saved, and he himself would come out of the change no faster than that top speed. A change costs the level's transition time, as a
 * pivot; only who is skating towards whom he keeps off faces him going forward, and it costs him nothing. Seconds of the rep; metres, frame of
 * the rink. Source: the level's rows `backwardRatio` and `transitionS`, the law of `pivotWayOf` and that of the sprint.
 */
export const changesStance = (keeper: TurningKeeper, self: Body, nowS: number): boolean => {
  const { stance, power, model } = keeper;
  if (nowS < stance.changesUntilS + TURNS_AGAIN_S.value) return false;
  if (!(stance.isTurned ? wantsBack(keeper, self) : wantsForward(keeper, self))) return false;
  const isFree = self.xMps * stance.towardX + self.yMps * stance.towardY > CARRIES_ON_MPS.value;
  const speedMps = Math.sqrt(self.xMps * self.xMps + self.yMps * self.yMps);
  const endMps = speedMps * (1 - PIVOT_LOSS_RATIO.value);
  if (stance.isTurned && !isFree && endMps > model.backwardRatio * power.topSpeedMps) return false;
  stance.isTurned = !stance.isTurned;
  if (isFree) return false;
  stance.changesUntilS = nowS + model.transitionS;
  stance.slowsMps2 = (speedMps - endMps) / model.transitionS;
  return true;
};

const wantsForward = (keeper: TurningKeeper, self: Body): boolean => {
  const { goal, expectedRatio, model, power } = keeper;
  if (savedByTurningS(keeper, self) > 2 * model.transitionS) return true;
  const goalMps = Math.sqrt(goal.xMps * goal.xMps + goal.yMps * goal.yMps);
  if (goalMps === 0) return false;
  const x = goal.xMps / goalMps;
  const y = goal.yMps / goalMps;
  const isMps = self.xMps * x + self.yMps * y;
  const stayM = wayToMatchM(goalMps - isMps, facingTopSpeedMps(keeper, x, y) - goalMps, power.tauS);
  // Nobody turns before a point that does not gain on him.
  if (stayM <= Math.max(0, turnCostM(keeper, goalMps, isMps, goalMps))) return false;
  const aheadM = (self.xM - goal.xM) * x + (self.yM - goal.yM) * y;
  return aheadM <= turnCostM(keeper, goalMps, isMps, expectedRatio * goalMps);
};

const wantsBack = (keeper: TurningKeeper, self: Body): boolean => {
  const { goal, power, model } = keeper;
  const goalMps = Math.sqrt(goal.xMps * goal.xMps + goal.yMps * goal.yMps);
  if (goalMps >= TURNS_BACK_RATIO.value * model.backwardRatio * power.topSpeedMps) return false;
  return savedByTurningS(keeper, self) < model.transitionS / 2;
};

/**
 * How much sooner a keeper at full speed is on the moving point when he skates forward than when he faces whom he keeps off, seconds: over a
 * distance e with the speed s at which the way closes, `|g + s·ê| = top`, for g the point's velocity. 0 on the point; Infinity when he can get
 * there only forward. Speeding up is left out.
 */
const savedByTurningS = (keeper: TurningKeeper, self: Body): number => {
  const { goal, power } = keeper;
  const x = goal.xM - self.xM;
  const y = goal.yM - self.yM;
  const offM = Math.sqrt(x * x + y * y);
  if (offM === 0) return 0;
  const forwardMps = closesAtMps(goal, x / offM, y / offM, power.topSpeedMps);
  if (forwardMps <= 0) return 0;
  const wayX = goal.xMps + (forwardMps * x) / offM;
  const wayY = goal.yMps + (forwardMps * y) / offM;
  const wayMps = Math.sqrt(wayX * wayX + wayY * wayY);
  const canMps = facingTopSpeedMps(keeper, wayX / wayMps, wayY / wayMps);
  const facingMps = closesAtMps(goal, x / offM, y / offM, canMps);
  return facingMps > 0 ? offM / facingMps - offM / forwardMps : Number.POSITIVE_INFINITY;
};

/** The larger s of |g + s·ê| = top; 0 when there is none. */
const closesAtMps = (goal: Body, x: number, y: number, topMps: number): number => {
  const away = goal.xMps * x + goal.yMps * y;
  const square = topMps * topMps - goal.xMps * goal.xMps - goal.yMps * goal.yMps + away * away;
  return square > 0 ? Math.sqrt(square) - away : 0;
};

/**
 * Metres by which a point that goes at `goalMps` and comes to `comesToMps` by the skater's own law gains on a skater who goes the same way at
 * `isMps`, turns forward now and then skates as hard as he can, until he is as fast: the transition time without a push, then `wayToMatchM`.
 */
export const turnCostM = (
  { power, model }: Pick<TurningKeeper, 'power' | 'model'>,
  goalMps: number,
  isMps: number,
  comesToMps: number,
): number => {
  const lossMps = PIVOT_LOSS_RATIO.value * Math.max(0, isMps);
  const turningM = (goalMps - isMps + lossMps / 2) * model.transitionS;
  return turningM + wayToMatchM(goalMps - isMps + lossMps, power.topSpeedMps - comesToMps, power.tauS);
};

/**
 * Metres by which a point gains until a skater who is `lackMps` slower has its speed, when his top speed is `spareMps` above its own: `τ·(c − A·ln(1 + c/A))`,
 * of `brakeableMps`. 0 when he lacks nothing, Infinity when he lacks something and has nothing to spare.
 */
const wayToMatchM = (lackMps: number, spareMps: number, tauS: number): number => {
  if (lackMps <= 0) return 0;
  return spareMps > 0 ? tauS * (lackMps - spareMps * Math.log(1 + lackMps / spareMps)) : Infinity;
};

/** Sets the push of one who is changing between forward and backward: straight on, the speed falling evenly. */
export const glideThroughChange = (
  keeper: TurningKeeper & { readonly stepKeeps: number },
  self: Body,
  stepS: number,
): void => {
  const { push, power, stance, stepKeeps } = keeper;
  const speedMps = Math.sqrt(self.xMps * self.xMps + self.yMps * self.yMps);
  if (speedMps === 0) {
    push.x = 0;
    push.y = 0;
    return;
  }
  // V·u = (v' − a·v)/(1 − a) gives v' after the step.
  const afterMps = Math.max(0, speedMps - stance.slowsMps2 * stepS);
  const scale = (afterMps - stepKeeps * speedMps) / ((1 - stepKeeps) * power.topSpeedMps * speedMps);
  push.x = scale * self.xMps;
  push.y = scale * self.yMps;
};
