import { CARRIES_ON_MPS, TURN_RATE_RADPS } from '../drill/drill-rows.ts';
import { limitToStance } from '../motion/keeper-stance.ts';
import { steerGap } from '../motion/steer-gap.ts';
import { type Actor, placeOf } from './actor.ts';
import { FORCE_GAP_M } from './contest-rows.ts';
import { hasHelp } from './help.ts';
import { keepApart, makeRoom, roomFor } from './keep-apart.ts';
import type { RunState } from './run-state.ts';

/** Begins a gap. Who comes skating forward with his back to whom he is to keep off has turned round already. */
export const startGap = (run: RunState, actor: Actor, whom: Actor, gapM: number): void => {
  actor.whom = whom;
  actor.motion = 'gap';
  actor.isBackward = false;
  actor.power = actor.model;
  actor.actGapM = gapM;
  actor.isBackedUp = isBackedUp(run, actor, whom);
  const { stance, xMps, yMps } = actor;
  const goesAway = xMps * (whom.xM - actor.xM) + yMps * (whom.yM - actor.yM) < 0;
  const facesWay = xMps * actor.facingX + yMps * actor.facingY > 0;
  stance.isTurned = goesAway && facesWay && Math.hypot(xMps, yMps) > CARRIES_ON_MPS.value;
  stance.changesUntilS = Number.NEGATIVE_INFINITY;
};

/**
 * Sets the push of a skater who keeps a gap to `whom`; `run.self` and `run.other` are their bodies. Contain or force: without help the gap of the act is kept; with a mate on the
 * carrier's heels the stick goes on the puck, `FORCE_GAP_M` from it on its line to the net (coaching text on gap control). A change between
 * backward and forward is an event of the run.
 */
export const steerKeeper = (run: RunState, keeper: Actor, whom: Actor): void => {
  const begins = steersTo(run, keeper, whom);
  const { stance, model } = keeper;
  const { xMps, yMps } = run.self;
  if (begins) {
    const to = stance.isTurned ? 'forward' : 'backward';
    run.events.push({ kind: 'turnsRound', timeS: run.nowS, atM: placeOf(keeper), spot: keeper.spot.id, to });
  }
  const isChanging = run.nowS < stance.changesUntilS;
  keeper.turnRadps = isChanging
    ? Math.max(TURN_RATE_RADPS.value, Math.PI / model.transitionS)
    : TURN_RATE_RADPS.value;
  keeper.isBackward = !stance.isTurned && xMps * stance.towardX + yMps * stance.towardY < 0;
  if (isChanging) keepAside(keeper, run);
  else {
    if (run.isAnew || keeper.mayMeet) roomFor(keeper, run.self, run);
    makeRoom(keeper);
  }
  limitToStance(keeper.push, keeper);
};

/** Who is changing has no push ahead: he can only give way to the side. */
const keepAside = (keeper: Actor, run: RunState): void => {
  const { push, xMps, yMps } = keeper;
  const speed2 = xMps * xMps + yMps * yMps;
  if (speed2 === 0) return;
  const { x, y } = push;
  keepApart(keeper, run.self, run);
  const aside = ((push.y - y) * xMps - (push.x - x) * yMps) / speed2;
  push.x = x - aside * yMps;
  push.y = y + aside * xMps;
};

const steersTo = (run: RunState, keeper: Actor, whom: Actor): boolean => {
  const { puck } = whom;
  const { self, other } = run;
  const dares = keeper.isBackedUp;
  if (!puck || !hasHelp(run, keeper, whom)) {
    keeper.gapM = keeper.actGapM;
    return steerGap(keeper, self, other, run.rink.boards, whom.model, run, dares, run.isAnew);
  }
  // The puck, going with who has it.
  other.xM = puck.xM;
  other.yM = puck.yM;
  keeper.gapM = Math.min(FORCE_GAP_M.value, keeper.actGapM);
  return steerGap(keeper, self, other, run.rink.boards, whom.model, run, dares, run.isAnew);
};

/** Whether a mate is to take the puck from the same carrier, now or later: the keeper knows who comes back. */
const isBackedUp = (run: RunState, keeper: Actor, whom: Actor): boolean => {
  for (const { spot } of run.actors) {
    if (spot === keeper.spot || spot.side !== keeper.spot.side) continue;
    for (const act of spot.acts) if (act.kind === 'steal' && act.whom === whom.spot.id) return true;
  }
  return false;
};
