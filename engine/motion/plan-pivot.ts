import { CARRIES_ON_MPS } from '../drill/drill-rows.ts';
import type { BodyAsked } from './body-asked.ts';
import { PIVOT_LOSS_RATIO } from './body-rows.ts';
import type { RouteWay } from './kept-routes.ts';
import { evenlySlowingWay, standingWay } from './straight-way.ts';

/**
 * The way of a change between forward and backward at speed: straight on for the level's transition time T, without a push,
 * while the speed falls evenly by the part ℓ of the row `PIVOT_LOSS_RATIO`: v·T·(1 − ℓ/2) metres. `backward` is that after the
 * change. Metres, seconds, frame of the rink. A skater no faster than `CARRIES_ON_MPS` stays at that one place for T; the caller
 * turns it on the spot.
 * Source: the level's row `transitionS`; the loss is an estimate.
 */
export const pivotWayOf = ({ boards, model, from, isBackward }: BodyAsked): RouteWay => {
  const speedMps = Math.hypot(from.xMps, from.yMps);
  const forS = model.transitionS;
  if (speedMps <= CARRIES_ON_MPS.value) return { ...standingWay(from, false), durationS: forS };
  return evenlySlowingWay(boards, from, speedMps * (1 - PIVOT_LOSS_RATIO.value), forS, !isBackward);
};
