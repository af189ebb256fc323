import { steerGap } from '../motion/steer-gap.ts';
import type { Actor } from './actor.ts';
import { FORCE_GAP_M, HELP_S } from './contest-rows.ts';
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

/**
 * Sets the push of a skater who keeps a gap to `whom`; `run.self` and `run.other` are their bodies. Contain or force: without help the gap of the act is kept; with a mate on the
 * carrier's heels the stick goes on the puck, `FORCE_GAP_M` from it on its line to the net (coaching text on gap control).
 */
export const steerKeeper = (run: RunState, keeper: Actor, whom: Actor): void => {
  const { puck } = whom;
  const { self, other } = run;
  if (!puck || !hasHelp(run, keeper, whom)) {
    keeper.gapM = keeper.actGapM;
    steerGap(keeper, self, other, run.rink.boards, whom.model);
    return;
  }
  // The puck, going with who has it.
  other.xM = puck.xM;
  other.yM = puck.yM;
  keeper.gapM = Math.min(FORCE_GAP_M.value, keeper.actGapM);
  steerGap(keeper, self, other, run.rink.boards, whom.model);
};
