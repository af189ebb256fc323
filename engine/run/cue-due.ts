import type { Cue } from '../drill/drill.ts';
import type { PlayableAct } from '../drill/playable-parts.ts';
import type { Actor } from './actor.ts';
import { isSameNear } from './near-watch.ts';
import type { Fire, RunState } from './run-state.ts';

/** When the next act of an actor is due, and when its cue came (−Infinity when it has none or times itself). */
export interface Due {
  readonly dueS: number;
  readonly cueS: number;
}

/** What the start of the next act depends on. */
type Waiting = Pick<Actor, 'spot' | 'model' | 'nextActIndex' | 'freeSinceS' | 'actStartS'>;

const NEVER: Due = { dueS: Number.POSITIVE_INFINITY, cueS: Number.NEGATIVE_INFINITY };

/**
 * When the next act may start, as far as is known now. An act without cue follows on at once; `after` counts from the end of
 * the act before (from the whistle for the first act). Any other cue is answered one reaction after it came: the
 * reaction to an expected event, or for the reactive acts (chase, gap, steal, pickUp, screen) the time to read and choose. A cue counts when
 * it comes once the act before has *started*: one that comes too early is kept, and the act starts when the one before has
 * ended. The whistle is at 0 s and always kept.
 */
export const dueOf = (run: RunState, actor: Waiting): Due => {
  const act = actor.spot.acts[actor.nextActIndex];
  if (!act) return NEVER;
  const cue = act.cue;
  if (!cue) return { dueS: actor.freeSinceS, cueS: Number.NEGATIVE_INFINITY };
  if (cue.on === 'after') {
    return { dueS: actor.freeSinceS + cue.seconds, cueS: Number.NEGATIVE_INFINITY };
  }
  const cueS = cue.on === 'whistle' ? 0 : firstFireS(run.fires, cue, actor.actStartS);
  if (cueS === undefined) return NEVER;
  return { dueS: Math.max(actor.freeSinceS, cueS + reactionOf(actor, act)), cueS };
};

export const reactionOf = (actor: Pick<Actor, 'model'>, act: PlayableAct): number =>
  isReactive(act) ? actor.model.reactionS : actor.model.expectedReactionS;

export const isReactive = (act: PlayableAct): boolean =>
  act.kind === 'chase' ||
  act.kind === 'gap' ||
  act.kind === 'steal' ||
  act.kind === 'pickUp' ||
  act.kind === 'screen';

const firstFireS = (fires: readonly Fire[], cue: Cue, afterS: number): number | undefined =>
  fires.find(fire => fire.timeS >= afterS && answers(fire, cue))?.timeS;

const answers = (fire: Fire, cue: Cue): boolean => {
  if (fire.on !== cue.on) return false;
  switch (cue.on) {
    case 'receive':
    case 'shot':
    case 'losesPuck':
    case 'caught':
      return fire.spot === cue.spot;
    case 'reaches':
      return fire.spot === cue.spot && fire.near !== undefined && isSameNear(fire.near, cue);
    case 'spotCrosses':
      return fire.spot === cue.spot && fire.line === cue.line;
    case 'puckCrosses':
      return fire.line === cue.line;
    default:
      return false;
  }
};
