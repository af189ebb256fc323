import { pathOffNets } from '../puck/path-off-nets.ts';
import type { PuckPath } from '../puck/path-parts.ts';
import type { ActId } from '../units/ids.ts';
import { type Actor, placeOf } from './actor.ts';
import { firstInNetS } from './net-hit.ts';
import { type Flight, freePuck, type PuckPlay } from './puck-play.ts';
import type { RunState } from './run-state.ts';

/** Lets a puck slide from now along a path that was found without the nets; it comes off their frames. Nobody is to have it yet. */
export const launch = (
  run: RunState,
  puck: PuckPlay,
  from: Actor,
  to: Actor | null,
  act: ActId | null,
  free: PuckPath,
): Flight => {
  const { boards, nets, layout } = run.rink;
  const path = pathOffNets(boards, run.puckModel, free, { nets, postDiameterM: layout.postDiameterM });
  const flight: Flight = {
    path,
    releasedS: run.nowS,
    from,
    to,
    act,
    meetS: Number.POSITIVE_INFINITY,
    cutS: Number.POSITIVE_INFINITY,
    cutBy: null,
    cutX: 0,
    cutY: 0,
    netS: run.nowS + firstInNetS(path, nets),
    isShot: false,
    saveS: Number.POSITIVE_INFINITY,
    savedBy: null,
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
