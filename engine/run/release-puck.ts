import type { PlayableAct } from '../drill/playable-parts.ts';
import { puckPath } from '../puck/path.ts';
import { type Actor, placeOf } from './actor.ts';
import { findGoalie, saveAfterS, shotRad } from './goalie.ts';
import { launch } from './launch.ts';
import { noteLanes } from './note-lanes.ts';
import type { PassAim, PassDeed } from './pass-aim.ts';
import { lowAgainS } from './pass-ways.ts';
import { letLie, type PuckPlay } from './puck-play.ts';
import type { RunState } from './run-state.ts';

/** Sends the pass on its way, with whoever of the other side cuts it off. */
export const releasePass = (
  run: RunState,
  passer: Actor,
  receiver: Actor,
  act: PlayableAct & PassDeed,
  aim: PassAim,
): void => {
  const puck = puckOf(passer);
  notePass(run, puck, passer, receiver, act, act.speedMps);
  const flight = launch(run, puck, passer, receiver, act.id, aim.path);
  if (Number.isFinite(aim.meetsAfterS)) flight.meetS = run.nowS + aim.meetsAfterS;
  else flight.isLate = true;
  // A drop is there for who comes after, also once it lies.
  if (act.way === 'drop' || (act.way === 'rim' && flight.isLate)) puck.left = { by: passer, to: receiver };
  if (act.way === 'rim' && flight.isLate) goToMeet(receiver, puck);
  noteLanes(run, passer, act, flight, aim.saucer ? lowAgainS(run, aim.saucer) : 0);
};

/** A receiver with nothing to do goes to meet a rim that does not come by. */
const goToMeet = (receiver: Actor, puck: PuckPlay): void => {
  const isIdle = receiver.actIndex < 0 && receiver.dueS === Number.POSITIVE_INFINITY;
  if (!isIdle || receiver.puck || receiver.motion === 'cutOff') return;
  receiver.motion = 'pickUp';
  receiver.prey = puck;
};

const notePass = (
  run: RunState,
  puck: PuckPlay,
  passer: Actor,
  receiver: Actor,
  act: PlayableAct,
  speedMps: number,
): void => {
  run.events.push({
    kind: 'pass',
    timeS: run.nowS,
    atM: placeOf(puck),
    spot: passer.spot.id,
    to: receiver.spot.id,
    act: act.id,
    speedMps,
    puck: run.pucks.indexOf(puck),
  });
};

/** Leaves the puck where it is for the one named: a drop without a push. */
export const leaveFor = (run: RunState, passer: Actor, receiver: Actor, act: PlayableAct): void => {
  const puck = puckOf(passer);
  notePass(run, puck, passer, receiver, act, 0);
  letLie(puck);
  puck.left = { by: passer, to: receiver };
};

/**
 * A shot goes straight at the net at that end (`shotRad`), along the ice; a goalie who stands before it may stop it (`saveAfterS`), and skaters in
 * its way stop nothing. On ice with small nets the two ends are the two nets.
 */
export const releaseShot = (
  run: RunState,
  shooter: Actor,
  act: PlayableAct & { readonly kind: 'shoot' },
): void => {
  const puck = puckOf(shooter);
  const net = run.rink.nets[act.atEnd === 'minusX' ? 0 : 1]!;
  const fromM = placeOf(puck);
  const launchRad = shotRad(run, shooter, fromM, net);
  const path = puckPath(run.rink.boards, run.puckModel, fromM, launchRad, act.speedMps);
  run.events.push({
    kind: 'shot',
    timeS: run.nowS,
    atM: fromM,
    spot: shooter.spot.id,
    act: act.id,
    speedMps: act.speedMps,
    puck: run.pucks.indexOf(puck),
  });
  const flight = launch(run, puck, shooter, null, act.id, path);
  flight.isShot = true;
  const goalie = findGoalie(run, net);
  if (!goalie) return;
  const afterS = saveAfterS(run, goalie, path, net);
  goalie.shotAtS = run.nowS;
  if (afterS === null) return;
  flight.saveS = run.nowS + afterS;
  flight.savedBy = goalie;
};

/** The puck on the stick of who passes or shoots: an act without one waits for it. */
const puckOf = (actor: Actor): PuckPlay => {
  if (!actor.puck) throw new Error(`spot ${actor.spot.id} lets go of a puck that is not on its stick`);
  return actor.puck;
};
