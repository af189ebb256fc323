import { puckPath } from '../puck/path.ts';
import type { PuckPath } from '../puck/path-parts.ts';
import { slideTimeAtDistance } from '../puck/slide.ts';
import type { Net } from '../rink/rink.ts';
import { type Actor, placeOf } from './actor.ts';
import { noteLanes } from './note-lanes.ts';
import type { PassAim, PassDeed } from './pass-aim.ts';
import type { PlayableAct } from './playable-parts.ts';
import { type Flight, freePuck, type PuckPlay } from './puck-play.ts';
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
  const flight = launch(run, puck, passer, receiver, act, aim.path);
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
  launch(run, puck, shooter, null, act, path);
};

/** The puck on the stick of who passes or shoots: an act without one waits for it. */
const puckOf = (actor: Actor): PuckPlay => {
  if (!actor.puck) throw new Error(`spot ${actor.spot.id} lets go of a puck that is not on its stick`);
  return actor.puck;
};

const launch = (
  run: RunState,
  puck: PuckPlay,
  from: Actor,
  to: Actor | null,
  act: PlayableAct,
  path: PuckPath,
): Flight => {
  const flight: Flight = {
    path,
    releasedS: run.nowS,
    from,
    to,
    act: act.id,
    meetS: Number.POSITIVE_INFINITY,
    cutS: Number.POSITIVE_INFINITY,
    cutBy: null,
    cutX: 0,
    cutY: 0,
    netS: run.nowS + firstInNetS(path, run.rink.nets),
    nextBounce: 0,
    isLate: false,
    missM: Number.POSITIVE_INFINITY,
    missAtS: run.nowS,
    missAtM: placeOf(puck),
  };
  freePuck(puck);
  puck.state = 'slides';
  puck.flight = flight;
  return flight;
};

/**
 * When the path first comes to rest in a net, seconds after the release: half the net's depth behind its mouth, entered from
 * the front between the posts. Infinity when it does not. Posts, sides and backs of nets stop nothing here.
 */
const firstInNetS = (path: PuckPath, nets: readonly Net[]): number => {
  for (const leg of path.legs) {
    if (leg.kind !== 'slide') continue;
    for (const net of nets) {
      const facingX = Math.cos(net.facingRad);
      const facingY = Math.sin(net.facingRad);
      const into = -(leg.direction.xM * facingX + leg.direction.yM * facingY);
      const startX = leg.startM.xM - net.atM.xM;
      const startY = leg.startM.yM - net.atM.yM;
      const beforeM = startX * facingX + startY * facingY;
      if (into <= 0 || beforeM <= 0) continue;
      const toMouthM = beforeM / into;
      const acrossM = Math.abs(
        (startX + toMouthM * leg.direction.xM) * facingY - (startY + toMouthM * leg.direction.yM) * facingX,
      );
      if (acrossM >= net.openingM / 2) continue;
      const mouthS = slideTimeAtDistance(leg.slowing, leg.startMps, toMouthM);
      if (!(mouthS <= leg.durationS)) continue;
      const restS = slideTimeAtDistance(leg.slowing, leg.startMps, toMouthM + net.depthM / (2 * into));
      return leg.startS + (restS <= leg.durationS ? restS : mouthS);
    }
  }
  return Number.POSITIVE_INFINITY;
};
