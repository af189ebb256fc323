import { REP_WAITS, STILL_MOVES_MPS } from '../drill/drill-rows.ts';
import type { Actor } from './actor.ts';
import { isFree } from './free-puck.ts';
import type { PuckPlay } from './puck-play.ts';
import type { RunState } from './run-state.ts';

/** How long a rep waits for a pass that has missed its receiver, and for a shot that has missed the net, seconds. */
const LOOK_AFTER_S = REP_WAITS.value;

/**
 * Whether anything of the rep is still to come: a scripted act under way or due, a chase that has not caught, a puck on
 * its way, or a motion that somebody's cue waits for. A gap or a screen alone keeps no rep alive.
 */
export const isRepAlive = (run: RunState): boolean =>
  run.actors.some(actor => isAtWork(run, actor)) ||
  run.pucks.some(puck => isUnderWay(run, puck)) ||
  run.actors.some(actor => mayStillBeCued(run, actor));

const isAtWork = (run: RunState, actor: Actor): boolean =>
  actor.dueS < Number.POSITIVE_INFINITY ||
  (actor.actIndex >= 0 &&
    actor.motion !== 'gap' &&
    actor.motion !== 'screen' &&
    !waitsForNothing(run, actor)) ||
  (actor.motion === 'pickUp' && actor.prey !== null && isFree(actor.prey)) ||
  actor.motion === 'cutOff';

/** Goes for a puck when there is none to be had. */
const waitsForNothing = (run: RunState, actor: Actor): boolean => {
  if (actor.motion === 'pickUp') return actor.prey === null && !run.pucks.some(isFree);
  return actor.motion === 'steal' && run.pucks.every(puck => puck.state === 'lies');
};

const isUnderWay = (run: RunState, { flight }: PuckPlay): boolean => {
  if (!flight) return false;
  if (Math.min(flight.meetS, flight.cutS, flight.netS, flight.saveS) < Number.POSITIVE_INFINITY) return true;
  return run.nowS < flight.releasedS + LOOK_AFTER_S;
};

const mayStillBeCued = (run: RunState, actor: Actor): boolean => {
  const cue = actor.spot.acts[actor.nextActIndex]?.cue;
  if (!cue || actor.waitsForPuck) return false;
  switch (cue.on) {
    case 'receive':
      return run.pucks.some(({ flight }) => flight?.to?.spot.id === cue.spot);
    case 'losesPuck':
      return run.pucks.some(({ flight }) => flight?.from.spot.id === cue.spot);
    case 'reaches':
    case 'spotCrosses':
      return run.actors.some(other => other.spot.id === cue.spot && isMoving(other));
    case 'puckCrosses':
      return run.pucks.some(({ flight, owner }) => flight !== null || (owner !== null && isMoving(owner)));
    default:
      return false;
  }
};

const isMoving = (actor: Actor): boolean => Math.hypot(actor.xMps, actor.yMps) > STILL_MOVES_MPS.value;
