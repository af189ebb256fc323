import type { ActDeed } from '../drill/drill.ts';
import { TURN_RATE_RADPS } from '../drill/drill-rows.ts';
import type { PlayableAct } from '../drill/playable-parts.ts';
import type { RouteDeed } from '../motion/kept-routes.ts';
import { dueWhileReacting, ease } from './act-flow.ts';
import type { Actor } from './actor.ts';
import { noteOffTheIce } from './note-acts.ts';
import { type BodyDeed, planWay } from './plan-body-act.ts';
import type { PuckPlay } from './puck-play.ts';
import { actorNamed, type RunState } from './run-state.ts';

type Deed<Kind extends ActDeed['kind']> = PlayableAct & { readonly kind: Kind };

/** Starts an act that goes along a way known from now: a drawn route, a stop, a turn, a change of facing. */
export const playWay = (run: RunState, actor: Actor, act: PlayableAct & (RouteDeed | BodyDeed)): void => {
  const route = planWay(run, actor, act, run.nowS, actor);
  if (act.kind === 'pivot') {
    actor.turnRadps = Math.max(TURN_RATE_RADPS.value, Math.PI / actor.model.transitionS);
    if (route.xM.length === 1) {
      turnOnTheSpot(run, actor);
      return;
    }
  }
  actor.route = route;
  actor.motion = 'route';
  actor.isBackward = route.backward;
  actor.endS = route.endS;
  noteOffTheIce(run, actor, act, route);
};

/** Who stands turns half round within the transition time. */
const turnOnTheSpot = (run: RunState, actor: Actor): void => {
  ease(actor);
  actor.motion = 'face';
  actor.look = { xM: actor.xM - FAR_M * actor.facingX, yM: actor.yM - FAR_M * actor.facingY };
  actor.endS = run.nowS + actor.model.transitionS;
};

/** Far enough that a last glide of centimetres does not turn the direction. */
const FAR_M = 1e3;

/** Starts to turn the body towards a spot, or the puck when nobody is named. It goes on looking there until the next act. */
export const playFace = (run: RunState, actor: Actor, act: Deed<'face'>): void => {
  ease(actor);
  actor.motion = 'face';
  actor.look = act.whom === undefined ? nearestPuck(run, actor) : actorNamed(run, act.whom);
  // Without a puck there is nothing to turn to.
  if (!actor.look) actor.endS = run.nowS;
};

/** The nearest puck that is played, else the nearest that lies; not one's own. */
const nearestPuck = (run: RunState, actor: Actor): PuckPlay | null => {
  let nearest: PuckPlay | null = null;
  let nearestM = Number.POSITIVE_INFINITY;
  for (const puck of run.pucks) {
    if (puck === actor.puck) continue;
    const farM = Math.hypot(puck.xM - actor.xM, puck.yM - actor.yM) + (puck.state === 'lies' ? LAST_M : 0);
    if (farM >= nearestM) continue;
    nearest = puck;
    nearestM = farM;
  }
  return nearest;
};

/** Farther than any rink is long: puts pucks that lie behind those that are played. */
const LAST_M = 1e3;

/** Starts to keep the stick in a lane. */
export const playScreen = (run: RunState, actor: Actor, act: Deed<'screen'>): void => {
  const { netM } = actor;
  actor.whom = actorNamed(run, act.from);
  actor.laneTo =
    act.to === undefined ? { xM: netM.xM, yM: netM.yM, xMps: 0, yMps: 0 } : actorNamed(run, act.to);
  actor.alongRatio = act.alongRatio;
  actor.motion = 'screen';
  actor.isBackward = false;
  actor.power = actor.model;
  actor.dueS = dueWhileReacting(run, actor);
};
