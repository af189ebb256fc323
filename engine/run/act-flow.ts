import { TURN_RATE_RADPS } from '../drill/drill-rows.ts';
import type { PlayableAct } from '../drill/playable-parts.ts';
import { type Actor, placeOf } from './actor.ts';
import { dueOf, isReactive } from './cue-due.ts';
import type { Fire, RunState } from './run-state.ts';

/** Ends the act under way; what was chased is still shadowed until the next act. */
export const endAct = (run: RunState, actor: Actor): void => {
  const act = actor.spot.acts[actor.actIndex];
  if (!act) throw new Error(`spot ${actor.spot.id} has no act ${actor.actIndex} to end`);
  run.events.push({
    kind: 'actEnds',
    timeS: run.nowS,
    atM: placeOf(actor),
    spot: actor.spot.id,
    act: act.id,
  });
  if (act.kind === 'carry' && !actor.hadPuckInAct) {
    run.lackedPuck.push({ actor, act, timeS: run.nowS });
  }
  if (act.kind === 'chase') actor.motion = 'shadow';
  else if (act.kind !== 'face') ease(actor);
  actor.turnRadps = TURN_RATE_RADPS.value;
  if (endsAtRest(act)) {
    actor.xMps = 0;
    actor.yMps = 0;
  }
  actor.actIndex = -1;
  actor.endS = Number.POSITIVE_INFINITY;
  actor.freeSinceS = run.nowS;
  actor.dueS = dueOf(run, actor).dueS;
};

const endsAtRest = (act: PlayableAct): boolean =>
  act.kind === 'stop' || ((act.kind === 'skate' || act.kind === 'carry') && act.stops);

/** Tells everybody who waits, and everybody in a reactive act, what has just happened. */
export const fireCue = (run: RunState, fire: Fire): void => {
  run.fires.push(fire);
  for (const actor of run.actors) {
    if (actor.waitsForPuck || actor.motion === 'cutOff') continue;
    if (actor.actIndex < 0) actor.dueS = Math.min(actor.dueS, dueOf(run, actor).dueS);
    else if (isReactive(actor.spot.acts[actor.actIndex]!)) actor.dueS = dueWhileReacting(run, actor);
  }
};

/** A reactive act gives way when the cue of the next act comes; an act without such a cue waits for its end. */
export const dueWhileReacting = (run: RunState, actor: Actor): number => {
  const cue = actor.spot.acts[actor.nextActIndex]?.cue;
  if (!cue || cue.on === 'after' || cue.on === 'whistle') return Number.POSITIVE_INFINITY;
  return Math.max(run.nowS, dueOf(run, actor).dueS);
};

export const ease = (actor: Actor): void => {
  actor.motion = 'ease';
  actor.power = actor.model;
  actor.route = null;
  actor.whom = null;
  actor.laneTo = null;
  actor.look = null;
  actor.prey = null;
};
