import { LEAST_EFFORT_RATIO, PUSHED_FROM } from '../drill/drill-rows.ts';
import type { PlayableAct } from '../drill/playable-parts.ts';
import { isPuckAct } from '../drill/puck-start.ts';
import type { SprintPower } from '../skater/sprint.ts';
import { dueWhileReacting, ease, endAct, fireCue } from './act-flow.ts';
import { type Actor, placeOf } from './actor.ts';
import { aimPass } from './aim-pass.ts';
import { startGap } from './keep-gap.ts';
import { noteNoBankPass, noteTwoActs } from './note-acts.ts';
import { withPassLuck } from './pass-luck.ts';
import { playFace, playScreen, playWay } from './play-body.ts';
import { giveTo, letLie, type PuckPlay, takeOne } from './puck-play.ts';
import { leaveFor, releasePass, releaseShot } from './release-puck.ts';
import { actorNamed, type RunState } from './run-state.ts';

/** Starts the act that is due. A pass or a shot without the puck waits for it; nothing else waits. */
export const startAct = (run: RunState, actor: Actor): void => {
  const act = actor.spot.acts[actor.nextActIndex];
  if (!act) throw new Error(`spot ${actor.spot.id} has no act ${actor.nextActIndex} to start`);
  if (isPuckAct(act.kind)) pickUpNear(run, actor);
  if ((act.kind === 'pass' || act.kind === 'shoot') && !actor.puck) {
    actor.dueS = Number.POSITIVE_INFINITY;
    actor.waitsForPuck = true;
    return;
  }
  if (actor.actIndex >= 0) endAct(run, actor);
  noteTwoActs(run, actor, act);
  actor.waitsForPuck = false;
  actor.actIndex = actor.nextActIndex;
  actor.nextActIndex++;
  actor.actStartS = run.nowS;
  actor.dueS = Number.POSITIVE_INFINITY;
  actor.endS = Number.POSITIVE_INFINITY;
  actor.hadPuckInAct = actor.puck !== null;
  run.events.push({
    kind: 'actStarts',
    timeS: run.nowS,
    atM: placeOf(actor),
    spot: actor.spot.id,
    act: act.id,
  });
  doAct(run, actor, act);
};

const doAct = (run: RunState, actor: Actor, act: PlayableAct): void => {
  switch (act.kind) {
    case 'skate':
    case 'carry':
    case 'stop':
    case 'turn':
    case 'pivot':
      playWay(run, actor, act);
      return;
    case 'face':
      playFace(run, actor, act);
      return;
    case 'screen':
      playScreen(run, actor, act);
      return;
    case 'hold':
      ease(actor);
      actor.endS = run.nowS + act.seconds;
      return;
    case 'chase':
      actor.whom = actorNamed(run, act.whom);
      actor.motion = 'chase';
      actor.isBackward = false;
      actor.power = poweredBy(actor, act.effortRatio);
      actor.dueS = dueWhileReacting(run, actor);
      return;
    case 'steal':
    case 'pickUp':
      actor.whom = act.kind === 'steal' ? actorNamed(run, act.whom) : null;
      actor.prey = null;
      actor.hasCaughtUp = false;
      actor.motion = act.kind;
      actor.isBackward = false;
      actor.power = poweredBy(actor, act.effortRatio);
      actor.dueS = dueWhileReacting(run, actor);
      return;
    case 'leave':
      leavePuck(run, actor, act);
      endAct(run, actor);
      return;
    case 'gap':
      startGap(run, actor, actorNamed(run, act.whom), act.distanceM);
      actor.dueS = dueWhileReacting(run, actor);
      return;
    case 'pass': {
      const receiver = actorNamed(run, act.toSpot);
      if (act.way === 'drop' && act.speedMps < LEFT_MPS) {
        leaveFor(run, actor, receiver, act);
        endAct(run, actor);
        return;
      }
      const aim = aimPass(run, actor, receiver, act);
      if (aim) releasePass(run, actor, receiver, act, withPassLuck(run, actor, aim, act.speedMps));
      else noteNoBankPass(run, actor, receiver, act);
      endAct(run, actor);
      return;
    }
    case 'shoot':
      releaseShot(run, actor, act);
      endAct(run, actor);
      fireCue(run, { on: 'shot', spot: actor.spot.id, timeS: run.nowS });
      return;
    default:
      endAct(run, actor);
  }
};

/** A push weaker than this does not move the puck off the blade's place. */
const LEFT_MPS = PUSHED_FROM.value;

const poweredBy = ({ model }: Actor, effortRatio: number): SprintPower => ({
  topSpeedMps: model.topSpeedMps * Math.max(LEAST_EFFORT_RATIO.value, effortRatio),
  tauS: model.tauS,
});

/** Lets the puck lie where it is; who has none has nothing to leave. */
const leavePuck = (run: RunState, actor: Actor, act: PlayableAct): void => {
  const { puck } = actor;
  if (!puck) {
    run.lackedPuck.push({ actor, act, timeS: run.nowS });
    return;
  }
  letLie(puck);
  run.events.push({ kind: 'leave', timeS: run.nowS, atM: placeOf(puck), spot: actor.spot.id });
  fireCue(run, { on: 'losesPuck', spot: actor.spot.id, timeS: run.nowS });
};

/** Who has none on the stick takes the nearest puck that lies within a lunge. */
const pickUpNear = (run: RunState, actor: Actor): void => {
  if (actor.puck) return;
  let nearest: PuckPlay | undefined;
  let nearestM = actor.model.lungeReachM;
  for (const puck of run.pucks) {
    const apartM = Math.hypot(puck.xM - actor.xM, puck.yM - actor.yM);
    if (puck.state !== 'lies' || puck.isDead || apartM > nearestM || (nearest && apartM === nearestM))
      continue;
    nearest = puck;
    nearestM = apartM;
  }
  if (!nearest) return;
  takeOne(run.pucks, nearest);
  giveTo(nearest, actor, run.nowS);
};
