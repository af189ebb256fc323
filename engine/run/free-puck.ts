import { ease, endAct, fireCue } from './act-flow.ts';
import { type Actor, placeOf } from './actor.ts';
import { isAfterPuck } from './contest-play.ts';
import { giveTo, type PuckPlay, takeOne } from './puck-play.ts';
import type { RunState } from './run-state.ts';

/**
 * Whether this skater takes this free puck at the end of the step tried: within reach of two hands, with nothing on the stick,
 * and its to take. That is a puck the skater is going for, or that was left for the skater; and a loose one, for whoever plays on what happens and for the one
 * who lost it, once they have reacted.
 */
export const takesFree = (run: RunState, puck: PuckPlay, actor: Actor): boolean => {
  if (actor.puck || puck.owner || !mayTake(run, puck, actor)) return false;
  const x = puck.next.xM - actor.next.xM;
  const y = puck.next.yM - actor.next.yM;
  return x * x + y * y <= actor.model.reachM * actor.model.reachM;
};

const mayTake = (run: RunState, puck: PuckPlay, actor: Actor): boolean => {
  if (Number.isFinite(puck.looseS)) {
    if (actor.spot.kind !== 'skater' || !(isAfterPuck(actor) || puck.lostBy === actor)) return false;
    return run.stretch.toS >= puck.looseS + actor.model.reactionS;
  }
  return puck.left?.to === actor || (actor.motion === 'pickUp' && actor.prey === puck);
};

/** Takes it; the act that went for a puck has its end. */
export const takeFree = (run: RunState, puck: PuckPlay, actor: Actor): void => {
  const { left } = puck;
  const { nowS } = run;
  const spot = actor.spot.id;
  takeOne(run.pucks, puck);
  giveTo(puck, actor, nowS);
  if (left?.to === actor) {
    run.events.push({ kind: 'receive', timeS: nowS, atM: placeOf(puck), spot, from: left.by.spot.id });
    fireCue(run, { on: 'receive', spot, timeS: nowS });
  } else {
    run.events.push({ kind: 'pickUp', timeS: nowS, atM: placeOf(puck), spot });
  }
  endQuest(run, actor);
};

/** Who went for a puck has it: the act that did has its end, and so has the way to meet a pass. */
export const endQuest = (run: RunState, actor: Actor): void => {
  if (actor.motion !== 'pickUp') return;
  if (actor.actIndex >= 0) endAct(run, actor);
  else ease(actor);
};

/** Whether anybody may go for it: it lies, is loose, or slides by after whom it was meant for has missed it. */
export const isFree = (puck: PuckPlay): boolean => {
  if (puck.state === 'lies') return !puck.isDead;
  const { flight } = puck;
  return flight !== null && (flight.to === null || flight.isLate);
};

/** The nearest free puck, and null when there is none. Metres from the skater's middle. */
export const nearestFree = (run: RunState, actor: Actor): PuckPlay | null => {
  let nearest: PuckPlay | null = null;
  let nearestM2 = Number.POSITIVE_INFINITY;
  for (const puck of run.pucks) {
    const apartM2 = (puck.xM - actor.xM) ** 2 + (puck.yM - actor.yM) ** 2;
    if (!isFree(puck) || apartM2 >= nearestM2) continue;
    nearest = puck;
    nearestM2 = apartM2;
  }
  return nearest;
};

/**
 * Whether an act that goes for somebody's puck has nothing more to go for: the own side has it, or it has gone to another
 * opponent, or into a net. A pass on its way is waited for.
 */
export const isQuestOver = (actor: Actor): boolean => {
  if (actor.actIndex < 0) return false;
  if (actor.motion === 'pickUp') return actor.puck !== null;
  if (actor.motion !== 'steal') return false;
  if (actor.whom?.puck) actor.prey = actor.whom.puck;
  const { prey } = actor;
  if (!prey) return actor.puck !== null;
  return prey.isDead || (prey.owner !== null && prey.owner !== actor.whom);
};
