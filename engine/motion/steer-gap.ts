import { CARRIES_ON_MPS, KEEP_APART_M, SHADOW_BESIDE_M } from '../drill/drill-rows.ts';
import { type Body, keepInside } from '../drill/in-boards.ts';
import type { Boards } from '../rink/boards.ts';
import type { IcePoint } from '../units/points.ts';
import { type Follower, pushToGoal, steerToGoal } from './push-to-goal.ts';
import { changesStance, glideThroughChange, type TurningKeeper } from './turn-round.ts';

/** How fast the one whom a gap is held to can come. */
export interface Carrier {
  readonly topSpeedMps: number;
  readonly carryRatio: number;
}

export interface Keeper extends TurningKeeper, Follower {
  readonly power: Follower['power'];
  /** Length h of a whole stride of the run, seconds, and e^(−h/τ) of this skater for it. */
  readonly stepS: number;
  readonly stepKeeps: number;
  readonly netM: IcePoint;
  readonly gapM: number;
}

/**
 * Sets the push of a skater who holds a gap: stands on the line from `whom` to the net, `gapM` before `whom`
 * (or at the net, when `whom` is nearer to it than that). Aims at that moving point at full effort and slows in time:
 * the closing speed wanted, along the way the point moves and across it, is at most the one that can still be taken off
 * before the point (`brakeableMps`), and at most e / (4·response) for a distance e to go, so the point is reached without
 * overshoot. A carrier who comes at nearly the keeper's own speed leaves almost nothing to brake with, and one under way is
 * expected to speed up to what can be carried, so the keeper starts back early; `carrier` says how fast that is. Nearer than the gap but still
 * before `whom` he takes the gap back first and the line after it, unless he `dares`: a mate comes for the puck, and he stays on its line. The keeper faces `whom` and
 * goes backward before him no faster than the level can, and turns forward when that does not do (`changesStance`): true when
 * he begins such a change in this step. `clock` says the seconds of the rep.
 */
export const steerGap = (
  keeper: Keeper,
  self: Body,
  whom: Body,
  boards: Boards,
  carrier: Carrier,
  clock: { readonly nowS: number },
  dares: boolean,
  mayTurn: boolean,
): boolean => {
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
  keepInside(boards, goal);
  faceTo(keeper, self, whom);
  keeper.expectedRatio = expectedRatio(whom, carrier);
  const { nowS } = clock;
  const isFreeToTurn = mayTurn && nowS >= keeper.stance.changesUntilS && hasTimeToTurn(keeper, self, whom);
  const begins = isFreeToTurn && changesStance(keeper, self, nowS);
  if (nowS < keeper.stance.changesUntilS) glideThroughChange(keeper, self, keeper.stepS);
  else pushToGoal(keeper, self, keeper, dares, !dares && isNearer(self, whom, gapM) ? gapM : 0);
  return begins;
};

/** Nobody begins to turn whom the other would run into meanwhile. */
const hasTimeToTurn = (keeper: Keeper, self: Body, whom: Body): boolean => {
  const { stance, model } = keeper;
  const gainMps = (self.xMps - whom.xMps) * stance.towardX + (self.yMps - whom.yMps) * stance.towardY;
  const apartM = (whom.xM - self.xM) * stance.towardX + (whom.yM - self.yM) * stance.towardY;
  return apartM - gainMps * model.transitionS > KEEP_APART_M.value;
};

const faceTo = (keeper: Keeper, self: Body, whom: Body): void => {
  const x = whom.xM - self.xM;
  const y = whom.yM - self.yM;
  const apartM = Math.sqrt(x * x + y * y);
  if (apartM === 0) return;
  keeper.stance.towardX = x / apartM;
  keeper.stance.towardY = y / apartM;
};

/** Sets the push of a chaser who has come within reach: keeps up with `whom`, on the side where it came from. */
export const steerShadow = (shadow: Follower, self: Body, whom: Body): void => {
  const { goal } = shadow;
  const x = self.xM - whom.xM;
  const y = self.yM - whom.yM;
  const apartM = Math.sqrt(x * x + y * y);
  const scale = apartM > 0 ? SHADOW_BESIDE_M.value / apartM : 0;
  goal.xM = whom.xM + scale * x;
  goal.yM = whom.yM + scale * y;
  goal.xMps = whom.xMps;
  goal.yMps = whom.yMps;
  steerToGoal(shadow, self);
};

/** How many times its present speed a skater under way is expected to come to; 1 for one who stands or is at the top. */
const expectedRatio = (whom: Body, { topSpeedMps, carryRatio }: Carrier): number => {
  const speedMps = Math.sqrt(whom.xMps * whom.xMps + whom.yMps * whom.yMps);
  if (speedMps < CARRIES_ON_MPS.value) return 1;
  return Math.max(1, (topSpeedMps * carryRatio) / speedMps);
};

const isNearer = (self: Body, whom: Body, thanM: number): boolean => {
  const x = self.xM - whom.xM;
  const y = self.yM - whom.yM;
  return x * x + y * y < thanM * thanM;
};
