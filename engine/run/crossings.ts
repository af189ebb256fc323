import { setStretch } from '../motion/stretch.ts';
import { endAct, fireCue } from './act-flow.ts';
import { type Actor, placeOf } from './actor.ts';
import { Y } from './actor-numbers.ts';
import { isLostBy, loseContest } from './contest-play.ts';
import { takeFree, takesFree } from './free-puck.ts';
import { comesNear, isNear, type NearWatch } from './near-watch.ts';
import { receive } from './play-flight.ts';
import { type PuckPlay, tryPuck } from './puck-play.ts';
import { isQuietUntil } from './quiet.ts';
import { type RunState, setZone } from './run-state.ts';
import { SAME_PLACE_M, tryStep } from './try-step.ts';

/** The first thing that happens inside a stretch without a known time: a line crossed, a chase at its end, a late pass in reach. */
export interface Crossing {
  readonly timeS: number;
  readonly what: Watch;
}

interface Watch {
  readonly kind: 'spotLine' | 'puckLine' | 'caught' | 'late' | 'near' | 'faces' | 'take' | 'contest';
  readonly actor: Actor | null;
  readonly puck: PuckPlay | null;
  /** For lines: the zone on the other side. */
  readonly zone: number;
  /** For `near`: the place. */
  readonly near?: NearWatch;
}

/**
 * The first crossing in (now, toS], when everybody has tried the step to `toS`. The time is the root of the motion itself,
 * by bisection: the trial is repeated with shorter steps. The trial positions are lost when there is one.
 */
export const crossingIn = (run: RunState, toS: number): Crossing | undefined => {
  if (isQuietUntil(run, toS) && !crossesLine(run)) return undefined;
  const watches = happeningNow(run);
  let first: Crossing | undefined;
  for (const what of watches) {
    const timeS = timeOf(run, what, first ? first.timeS : toS);
    if (!first || timeS < first.timeS) first = { timeS, what };
  }
  return first;
};

export const takeCrossing = (run: RunState, crossing: Crossing): void => {
  const { what } = crossing;
  const { actor, puck } = what;
  if (what.kind === 'puckLine' && puck) {
    const line = run.lineIds[Math.min(puck.zone, what.zone)]!;
    puck.zone = what.zone;
    run.events.push({ kind: 'puckCrosses', timeS: run.nowS, atM: placeOf(puck), line });
    fireCue(run, { on: 'puckCrosses', line, timeS: run.nowS });
  } else if (what.kind === 'late' && puck) {
    receive(run, puck);
  } else if (what.kind === 'contest' && puck) {
    loseContest(run, puck);
  } else if (what.kind === 'take' && puck && actor) {
    takeFree(run, puck, actor);
  } else if (what.kind === 'spotLine' && actor) {
    const line = run.lineIds[Math.min(actor.zone, what.zone)]!;
    const spot = actor.spot.id;
    setZone(run, actor, what.zone);
    run.events.push({ kind: 'spotCrosses', timeS: run.nowS, atM: placeOf(actor), spot, line });
    fireCue(run, { on: 'spotCrosses', spot, line, timeS: run.nowS });
  } else if (what.near) {
    const { near } = what.near;
    what.near.isNear = true;
    fireCue(run, { on: 'reaches', spot: what.near.actor.spot.id, near, timeS: run.nowS });
  } else if (what.kind === 'faces' && actor) {
    actor.endS = run.nowS;
  } else if (actor?.whom && actor.motion === 'steal') {
    // It goes on until the puck is won or gone; the skater who is after it has caught up once.
    actor.hasCaughtUp = true;
    fireCue(run, { on: 'caught', spot: actor.whom.spot.id, timeS: run.nowS });
  } else if (actor?.whom) {
    const { whom } = actor;
    run.events.push({
      kind: 'caught',
      timeS: run.nowS,
      atM: placeOf(whom),
      spot: whom.spot.id,
      by: actor.spot.id,
    });
    endAct(run, actor);
    fireCue(run, { on: 'caught', spot: whom.spot.id, timeS: run.nowS });
  }
};

/** Whether somebody or a puck is in another zone at the end of the step tried. */
const crossesLine = ({ actors, pucks, numbers, lineXM, zoneFromM, zoneToM }: RunState): boolean => {
  for (let a = 0; a < actors.length; a++) {
    const xM = numbers[actors[a]!.nextAt]!;
    if (xM > zoneToM[a]! || xM <= zoneFromM[a]!) return true;
  }
  for (const puck of pucks) if (zoneBeside(lineXM, puck.zone, puck.next.xM) !== puck.zone) return true;
  return false;
};

const NOTHING: readonly Watch[] = [];

/** What has happened at the end of the step tried. Makes no garbage while nothing has. */
const happeningNow = (run: RunState): readonly Watch[] => {
  const { lineXM, actors, numbers, zoneFromM, zoneToM } = run;
  let found: Watch[] | undefined;
  for (let a = 0; a < actors.length; a++) {
    const actor = actors[a]!;
    const xM = numbers[actor.nextAt]!;
    if (xM > zoneToM[a]! || xM <= zoneFromM[a]!) {
      const zone = zoneBeside(lineXM, actor.zone, xM);
      (found ??= []).push({ kind: 'spotLine', actor, puck: null, zone });
    }
    const { motion } = actor;
    if (motion === 'route' || motion === 'gap') continue;
    if ((motion === 'chase' || (motion === 'steal' && !actor.hasCaughtUp)) && isCaught(actor)) {
      (found ??= []).push({ kind: 'caught', actor, puck: null, zone: 0 });
    }
    if (motion === 'face' && facesIt(actor)) {
      (found ??= []).push({ kind: 'faces', actor, puck: null, zone: 0 });
    }
  }
  for (const near of run.nearWatches) {
    if (near.isNear) near.isNear = isNear(near.near, near.actor);
    else if (comesNear(near))
      (found ??= []).push({ kind: 'near', actor: near.actor, puck: null, zone: 0, near });
  }
  for (const puck of run.pucks) {
    const zone = zoneBeside(lineXM, puck.zone, puck.next.xM);
    if (zone !== puck.zone) (found ??= []).push({ kind: 'puckLine', actor: null, puck, zone });
    if (puck.flight?.isLate && isInReach(puck)) {
      (found ??= []).push({ kind: 'late', actor: null, puck, zone: 0 });
    }
    if (puck.owner) {
      if (isLostBy(run, puck)) (found ??= []).push({ kind: 'contest', actor: null, puck, zone: 0 });
      continue;
    }
    for (const actor of run.actors) {
      if (takesFree(run, puck, actor)) (found ??= []).push({ kind: 'take', actor, puck, zone: 0 });
    }
  }
  return found ?? NOTHING;
};

const BISECT_STEPS = 40;
const EXACT_S = 1e-9;

const timeOf = (run: RunState, what: Watch, lastS: number): number => {
  if (!happensBy(run, what, lastS)) return Number.POSITIVE_INFINITY;
  let lowS = run.nowS;
  let highS = lastS;
  for (let i = 0; i < BISECT_STEPS && highS - lowS > EXACT_S; i++) {
    const middleS = (lowS + highS) / 2;
    if (happensBy(run, what, middleS)) highS = middleS;
    else lowS = middleS;
  }
  return highS;
};

const happensBy = (run: RunState, what: Watch, timeS: number): boolean => {
  const { stretch } = run;
  const { boards } = run.rink;
  setStretch(stretch, run.nowS, timeS);
  const { actor, puck } = what;
  if (what.kind === 'contest' && puck) {
    for (const one of run.actors) tryStep(one, stretch, boards);
    tryPuck(puck, stretch, boards);
    return isLostBy(run, puck);
  }
  if (what.kind === 'take' && actor && puck) {
    tryStep(actor, stretch, boards);
    tryPuck(puck, stretch, boards);
    return takesFree(run, puck, actor);
  }
  if (actor) {
    tryStep(actor, stretch, boards);
    if (what.kind === 'spotLine') return zoneBeside(run.lineXM, actor.zone, actor.next.xM) === what.zone;
    if (what.near) return comesNear(what.near);
    if (what.kind === 'faces') return facesIt(actor);
    if (actor.whom) tryStep(actor.whom, stretch, boards);
    return isCaught(actor);
  }
  if (!puck) throw new Error(`a ${what.kind} of nobody and no puck`);
  const { owner, flight } = puck;
  if (owner) tryStep(owner, stretch, boards);
  tryPuck(puck, stretch, boards);
  if (what.kind === 'puckLine') return zoneBeside(run.lineXM, puck.zone, puck.next.xM) === what.zone;
  if (flight?.to) tryStep(flight.to, stretch, boards);
  return isInReach(puck);
};

/** The zone itself while x is in it, else the next one on that side. */
const zoneBeside = (lineXM: Float64Array, zone: number, xM: number): number => {
  if (zone < lineXM.length && xM > lineXM[zone]!) return zone + 1;
  return zone > 0 && xM <= lineXM[zone - 1]! ? zone - 1 : zone;
};

const isCaught = (chaser: Actor): boolean => {
  const { whom, model, numbers, nextAt } = chaser;
  if (!whom) return false;
  const x = numbers[whom.nextAt]! - numbers[nextAt]!;
  const y = numbers[whom.nextAt + Y]! - numbers[nextAt + Y]!;
  return x * x + y * y <= model.lungeReachM * model.lungeReachM;
};

/** Whether a `face` under way comes to its end in the step tried; one that is only kept up has none. */
const facesIt = (actor: Actor): boolean => {
  const { look, next } = actor;
  if (actor.actIndex < 0 || actor.endS < Number.POSITIVE_INFINITY || !look) return false;
  const x = look.xM - next.xM;
  const y = look.yM - next.yM;
  const farM = Math.sqrt(x * x + y * y);
  return farM < SAME_PLACE_M || x * actor.nextFacingX + y * actor.nextFacingY >= FACED_COS * farM;
};

/** A facing is taken on whole once it is within reach of the turn, so this is for rounding. */
const FACED_COS = 1 - 1e-12;

/** Whether the receiver of a late pass, with nothing on the stick, can have it. */
const isInReach = (puck: PuckPlay): boolean => {
  const to = puck.flight?.to;
  if (!to || to.puck) return false;
  return Math.hypot(puck.next.xM - to.next.xM, puck.next.yM - to.next.yM) <= to.model.reachM;
};
