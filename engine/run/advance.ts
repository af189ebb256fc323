import { setStretch } from '../motion/stretch.ts';
import { endAct } from './act-flow.ts';
import { startAct } from './act-play.ts';
import type { Actor } from './actor.ts';
import { isLostBy, takeContest } from './contest-play.ts';
import { crossingIn, takeCrossing } from './crossings.ts';
import { isQuestOver } from './free-puck.ts';
import { nextFlightS, noteMiss, playFlight } from './play-flight.ts';
import { takePuck, tryPuck } from './puck-play.ts';
import { forgetQuiet } from './quiet.ts';
import { isSampleDue, recordSample, recordWithin } from './record-sample.ts';
import type { RunState } from './run-state.ts';
import { steer } from './steer.ts';
import { decidesAtEveryStep, isLook, strideEndS } from './stride.ts';
import { takeAll, tryAll } from './try-step.ts';

/**
 * Takes the run to the end of that stride. Everything with a known time is met exactly; in between, everybody is moved on trial, and
 * when a line is crossed or a chaser comes within reach inside the stretch, only up to there.
 */
export const advanceTo = (run: RunState, stride: number): void => {
  const untilS = stride / run.strideHz;
  if (isLook(run, stride)) run.isAnew = true;
  if (knownTimeOf(run) <= run.nowS) playAllDue(run);
  let cuts = 0;
  while (run.nowS < untilS) {
    const knownS = knownTimeOf(run);
    const toS = Math.min(strideEndS(run, untilS), knownS);
    for (const actor of run.actors) {
      if (!actor.route && (run.isAnew || decidesAtEveryStep(run, actor))) steer(run, actor);
    }
    run.isAnew = false;
    moveOnTrial(run, toS, toS === untilS ? stride : WITHIN_STRIDE);
    const crossing = cuts < MOST_CUTS ? crossingIn(run, toS) : undefined;
    if (crossing) {
      cuts++;
      moveOnTrial(run, crossing.timeS, WITHIN_STRIDE);
      for (const puck of run.pucks) if (puck.owner) isLostBy(run, puck);
    }
    const reachedS = crossing ? crossing.timeS : toS;
    if (!(reachedS < run.quietUntilS)) for (const puck of run.pucks) if (puck.owner) takeContest(run, puck);
    recordWithin(run);
    takeAll(run);
    for (const puck of run.pucks) takePuck(puck, run.stretch);
    run.nowS = reachedS;
    for (const puck of run.pucks) noteMiss(run, puck);
    if (crossing) {
      takeCrossing(run, crossing);
      forgetQuiet(run);
    }
    if (crossing || reachedS >= knownS) playAllDue(run);
    if (isSampleDue(run)) recordSample(run);
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
  forgetQuiet(run);
  run.knownS = Number.NaN;
  run.isAnew = true;
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

const WITHIN_STRIDE = -1;

const moveOnTrial = (run: RunState, toS: number, stride: number): void => {
  setStretch(run.stretch, run.nowS, toS, stride);
  tryAll(run);
  for (const puck of run.pucks) tryPuck(puck, run.stretch, run.rink.boards);
};
