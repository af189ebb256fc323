import type { Actor } from './actor.ts';
import { HELP_S } from './contest-rows.ts';
import type { RunState } from './run-state.ts';

/** Whether a mate of `by` who is out for the puck is no more than `HELP_S` from the carrier, at the mate's top speed. */
export const hasHelp = (run: RunState, by: Actor, carrier: Actor): boolean => {
  for (const mate of run.actors) {
    if (mate === by || mate.motion !== 'steal' || mate.spot.side !== by.spot.side) continue;
    const x = mate.xM - carrier.xM;
    const y = mate.yM - carrier.yM;
    const withinM = HELP_S.value * mate.power.topSpeedMps;
    if (x * x + y * y <= withinM * withinM) return true;
  }
  return false;
};
