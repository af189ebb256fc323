import type { Boards } from '../rink/boards.ts';
import type { SprintPower } from '../skater/sprint.ts';
import type { IcePoint } from '../units/points.ts';
import { GAP_RESPONSE_S } from './drill-rows.ts';
import { type Body, standingPointOf } from './in-boards.ts';
import { type Push, pushTowardsVelocity } from './reactive-step.ts';

/**
 * Sets the push of a skater who holds a gap: stands on the line from `whom` to the net, `distanceM` before `whom`
 * (or at the net, when `whom` is nearer to it than that). Aims at that moving point at full effort and slows in time:
 * the closing speed wanted is at most `√(2·(V/τ)·e)` for a distance e to go (what the law can brake from any speed), and at
 * most e / response, so the point is reached without overshoot. A turn from backward to forward skating costs nothing here.
 */
export const steerGap = (
  push: Push,
  keeper: Body,
  whom: Body,
  netM: IcePoint,
  distanceM: number,
  power: SprintPower,
  boards: Boards,
): void => {
  const netX = netM.xM - whom.xM;
  const netY = netM.yM - whom.yM;
  const toNetM = Math.sqrt(netX * netX + netY * netY);
  const aheadRatio = toNetM > 0 ? Math.min(1, distanceM / toNetM) : 1;
  const pointX = whom.xM + aheadRatio * netX;
  const pointY = whom.yM + aheadRatio * netY;
  // The point's own velocity: q + d·n moves with w − (d/r)·(w − (w·n)n); at the net it stands.
  let pointXMps = 0;
  let pointYMps = 0;
  if (aheadRatio < 1) {
    const along = (whom.xMps * netX + whom.yMps * netY) / (toNetM * toNetM);
    pointXMps = whom.xMps - aheadRatio * (whom.xMps - along * netX);
    pointYMps = whom.yMps - aheadRatio * (whom.yMps - along * netY);
  }
  const stand = standingPointOf(boards, { xM: pointX, yM: pointY });
  steerToMovingPoint(push, keeper, stand.xM, stand.yM, pointXMps, pointYMps, power);
};

/** A skater who has caught somebody stays this near: beside, not on top. */
const BESIDE_M = 1.5;

/** Sets the push of a chaser who has come within reach: keeps up with `whom`, on the side where it came from. */
export const steerShadow = (push: Push, shadow: Body, whom: Body, power: SprintPower): void => {
  const x = shadow.xM - whom.xM;
  const y = shadow.yM - whom.yM;
  const apartM = Math.sqrt(x * x + y * y);
  const scale = apartM > 0 ? BESIDE_M / apartM : 0;
  steerToMovingPoint(push, shadow, whom.xM + scale * x, whom.yM + scale * y, whom.xMps, whom.yMps, power);
};

/** Pushes so as to reach a point that moves with this velocity, and to stay with it. */
const steerToMovingPoint = (
  push: Push,
  body: Body,
  pointXM: number,
  pointYM: number,
  pointXMps: number,
  pointYMps: number,
  power: SprintPower,
): void => {
  const x = pointXM - body.xM;
  const y = pointYM - body.yM;
  const toGoM = Math.sqrt(x * x + y * y);
  const brakeMps2 = power.topSpeedMps / power.tauS;
  const closeMps = Math.min(toGoM / (4 * GAP_RESPONSE_S.value), Math.sqrt(2 * brakeMps2 * toGoM));
  const scale = toGoM > 0 ? closeMps / toGoM : 0;
  pushTowardsVelocity(push, body, pointXMps + x * scale, pointYMps + y * scale, power, GAP_RESPONSE_S.value);
};
