import { puckPath } from '../puck/path.ts';
import { type Actor, placeOf } from './actor.ts';
import { launch } from './launch.ts';
import { noteLanes } from './note-lanes.ts';
import type { PassAim, PassDeed } from './pass-aim.ts';
import type { PlayableAct } from './playable-parts.ts';
import type { PuckPlay } from './puck-play.ts';
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
  run.events.push({
    kind: 'pass',
    timeS: run.nowS,
    atM: placeOf(puck),
    spot: passer.spot.id,
    to: receiver.spot.id,
    act: act.id,
    speedMps: act.speedMps,
    puck: run.pucks.indexOf(puck),
  });
  const flight = launch(run, puck, passer, receiver, act.id, aim.path);
  if (Number.isFinite(aim.meetsAfterS)) flight.meetS = run.nowS + aim.meetsAfterS;
  else flight.isLate = true;
  noteLanes(run, passer, act, flight);
};

/**
 * A shot goes straight at the middle of the net at that end, past whoever stands there: the run knows no save. On ice with
 * small nets the two ends are the two nets.
 */
export const releaseShot = (
  run: RunState,
  shooter: Actor,
  act: PlayableAct & { readonly kind: 'shoot' },
): void => {
  const puck = puckOf(shooter);
  const net = run.rink.nets[act.atEnd === 'minusX' ? 0 : 1]!;
  const fromM = placeOf(puck);
  const launchRad = Math.atan2(net.atM.yM - fromM.yM, net.atM.xM - fromM.xM);
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
  launch(run, puck, shooter, null, act.id, path);
};

/** The puck on the stick of who passes or shoots: an act without one waits for it. */
const puckOf = (actor: Actor): PuckPlay => {
  if (!actor.puck) throw new Error(`spot ${actor.spot.id} lets go of a puck that is not on its stick`);
  return actor.puck;
};
