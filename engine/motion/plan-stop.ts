import type { BodyAsked } from './body-asked.ts';
import type { RouteWay } from './kept-routes.ts';
import { evenlySlowingWay } from './straight-way.ts';

/**
 * The way of a stop: straight on along the motion, slowing by the level's stop deceleration a, v²/2a metres and v/a seconds,
 * to standing. Metres, seconds, frame of the rink. A skater who stands has no way: duration 0. Where the boards come
 * first the body is kept at its room to them; that it was too fast is a finding of the run, not of this.
 * Source: even deceleration by the level's row `stopDecelMps2`.
 */
export const stopWayOf = ({ boards, model, from, isBackward }: BodyAsked): RouteWay =>
  evenlySlowingWay(boards, from, 0, Math.hypot(from.xMps, from.yMps) / model.stopDecelMps2, isBackward);
