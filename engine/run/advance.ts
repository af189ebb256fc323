import { STANDING_MPS } from '../drill/drill-rows.ts';
import { steerChase } from '../motion/steer-chase.ts';
import { steerShadow } from '../motion/steer-gap.ts';
import { steerScreen } from '../motion/steer-screen.ts';
import { setStretch } from '../motion/stretch.ts';
import { endAct } from './act-flow.ts';
import { startAct } from './act-play.ts';
import type { Actor } from './actor.ts';
import { isLostBy, takeContest } from './contest-play.ts';
import { crossingIn, takeCrossing } from './crossings.ts';
import { isQuestOver } from './free-puck.ts';
import { steerKeeper } from './help.ts';
import { keepApart } from './keep-apart.ts';
import { nextFlightS, noteMiss, playFlight } from './play-flight.ts';
import { takePuck, tryPuck } from './puck-play.ts';
import type { RunState } from './run-state.ts';
import { steerPickUp, steerSteal } from './steer-steal.ts';
import { takeStep, tryStep } from './try-step.ts';

/**
 * Takes the run to `untilS`. Everything with a known time is met exactly; in between, everybody is moved on trial, and
 * when a line is crossed or a chaser comes within reach inside the stretch, only up to there.
 */
export const advanceTo = (run: RunState, untilS: number): void => {
  if (knownTimeOf(run) <= run.nowS) playAllDue(run);
  let cuts = 0;
  while (run.nowS < untilS) {
    const knownS = knownTimeOf(run);
    const toS = Math.min(untilS, knownS);
    for (const actor of run.actors) if (actor.motion !== 'route') steer(run, actor);
    moveOnTrial(run, toS);
    const crossing = cuts < MOST_CUTS ? crossingIn(run, toS) : undefined;
    if (crossing) {
      cuts++;
      moveOnTrial(run, crossing.timeS);
      for (const puck of run.pucks) if (puck.owner) isLostBy(run, puck);
    }
    const reachedS = crossing ? crossing.timeS : toS;
    for (const puck of run.pucks) if (puck.owner) takeContest(run, puck);
    for (const actor of run.actors) takeStep(actor);
    for (const puck of run.pucks) takePuck(puck, run.stretch);
    run.nowS = reachedS;
    for (const puck of run.pucks) noteMiss(run, puck);
    if (crossing) takeCrossing(run, crossing);
    if (crossing || reachedS >= knownS) playAllDue(run);
  }
};

/**
 * A step is cut at no more crossings than this; what else crosses in it is found in the next one. Sixty skaters and their pucks over a
 * line and within reach at once are fewer, so it is met only by what trembles on a line, and the rep still ends.
 */
const MOST_CUTS = 400;

/** The next known time; looked for again only after something was played, which alone can change it. */
const knownTimeOf = (run: RunState): number => {
  if (Number.isNaN(run.knownS)) run.knownS = nextKnownS(run);
  return run.knownS;
};

const playAllDue = (run: RunState): void => {
  playDue(run);
  run.knownS = Number.NaN;
};

/** Plays all that is due now: ends of acts, the puck's meetings, then starts, passes and shots last. */
const playDue = (run: RunState): void => {
  for (;;) {
    let played = false;
    for (const puck of run.pucks) if (playFlight(run, puck)) played = true;
    for (const actor of run.actors) {
      if (actor.endS <= run.nowS || isQuestOver(actor)) {
        endAct(run, actor);
        played = true;
      }
    }
    for (const actor of run.actors) {
      if (actor.dueS <= run.nowS && !leavesPuck(actor)) {
        startAct(run, actor);
        played = true;
      }
    }
    if (!played) {
      const due = run.actors.find(actor => actor.dueS <= run.nowS);
      if (!due) return;
      startAct(run, due);
    }
  }
};

const leavesPuck = (actor: Actor): boolean => {
  const kind = actor.spot.acts[actor.nextActIndex]?.kind;
  return kind === 'pass' || kind === 'shoot';
};

const nextKnownS = (run: RunState): number => {
  let nextS = Number.POSITIVE_INFINITY;
  for (const puck of run.pucks) nextS = Math.min(nextS, nextFlightS(puck));
  for (const actor of run.actors) {
    if (actor.dueS < nextS) nextS = actor.dueS;
    if (actor.endS < nextS) nextS = actor.endS;
    if (actor.motion === 'cutOff' && actor.reactsAtS > run.nowS && actor.reactsAtS < nextS) {
      nextS = actor.reactsAtS;
    }
  }
  return nextS;
};

const moveOnTrial = (run: RunState, toS: number): void => {
  const { stretch } = run;
  setStretch(stretch, run.nowS, toS);
  for (const actor of run.actors) tryStep(actor, stretch, run.rink.boards);
  for (const puck of run.pucks) tryPuck(puck, stretch, run.rink.boards);
};

const steer = (run: RunState, actor: Actor): void => {
  const { push, whom } = actor;
  switch (actor.motion) {
    case 'shadow':
      steerShadow(actor, whom!);
      keepApart(actor, run.actors);
      return;
    case 'chase':
      steerChase(actor, whom!);
      keepApart(actor, run.actors);
      return;
    case 'steal':
      steerSteal(run, actor, whom!);
      keepApart(actor, run.actors);
      return;
    case 'pickUp':
      steerPickUp(run, actor);
      keepApart(actor, run.actors);
      return;
    case 'gap':
      steerKeeper(run, actor, whom!);
      keepApart(actor, run.actors);
      return;
    case 'screen':
      steerScreen(actor, whom!, run.rink.boards);
      keepApart(actor, run.actors);
      return;
    case 'cutOff':
      if (run.nowS < actor.reactsAtS) {
        push.x = actor.xMps / actor.power.topSpeedMps;
        push.y = actor.yMps / actor.power.topSpeedMps;
      } else {
        push.x = actor.cutX;
        push.y = actor.cutY;
      }
      return;
    default:
      push.x = 0;
      push.y = 0;
      if (isSlow(actor)) {
        actor.xMps = 0;
        actor.yMps = 0;
      }
  }
};

const isSlow = (actor: Actor): boolean =>
  actor.xMps * actor.xMps + actor.yMps * actor.yMps < STANDING_MPS.value * STANDING_MPS.value;
