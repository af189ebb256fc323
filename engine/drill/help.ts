import type { Actor } from './actor.ts';
import { HELP_WITHIN_M } from './contest-rows.ts';
import type { RunState } from './run-state.ts';

const WITHIN_M2 = HELP_WITHIN_M.value ** 2;

/** Whether a mate of `by` who is out for the puck is near the carrier. */
export const hasHelp = (run: RunState, by: Actor, carrier: Actor): boolean => {
  for (const mate of run.actors) {
    if (mate === by || mate.motion !== 'steal' || mate.spot.side !== by.spot.side) continue;
    const x = mate.xM - carrier.xM;
    const y = mate.yM - carrier.yM;
    if (x * x + y * y <= WITHIN_M2) return true;
  }
  return false;
};
