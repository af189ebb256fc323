import type { PuckPath } from '../puck/path-parts.ts';
import { PUCK_ROWS } from '../puck/puck-rows.ts';
import type { Boards } from '../rink/boards.ts';
import type { ActId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import { type Actor, bladeXOf, bladeYOf } from './actor.ts';
import { BLADE_AHEAD_M, SETTLE_S } from './drill-rows.ts';
import { boardsDistanceAt, pushInside } from './in-boards.ts';
import { type Place, placeOnPath } from './place-on-path.ts';
import type { Stretch } from './stretch.ts';

/** A puck that slides free after a pass or a shot. Times are of the rep. */
export interface Flight {
  readonly path: PuckPath;
  readonly releasedS: number;
  readonly from: Actor;
  readonly to: Actor | null;
  readonly act: ActId;
  /** When puck and blade are to meet; Infinity when they do not, or did not. */
  meetS: number;
  /** When an opponent's stick is first on it; Infinity when none is. */
  cutS: number;
  cutBy: Actor | null;
  /** The push that gets the stick there. */
  cutX: number;
  cutY: number;
  /** When it comes to rest in a net; Infinity when it does not. */
  netS: number;
  nextBounce: number;
  /** The meeting has failed; the receiver still takes the puck when it slides by within reach. */
  isLate: boolean;
  /** Nearest the puck came to the receiver's middle once the meeting had failed, metres, and when. */
  missM: number;
  missAtS: number;
  missAtM: IcePoint;
}

/**
 * A puck of the rep, or a heap of `count` that lies together, changed in place. `offset` is what a received puck still has to go
 * to the blade.
 */
export interface PuckPlay {
  state: 'lies' | 'carried' | 'slides';
  count: number;
  owner: Actor | null;
  flight: Flight | null;
  xM: number;
  yM: number;
  readonly next: Place;
  offsetXM: number;
  offsetYM: number;
  zone: number;
}

/** Pucks that lie at a place, metres; `zone` is the number of rink lines with smaller x. */
export const lyingPuck = (xM: number, yM: number, count: number, zone: number): PuckPlay => ({
  state: 'lies',
  count,
  owner: null,
  flight: null,
  xM,
  yM,
  next: { xM, yM },
  offsetXM: 0,
  offsetYM: 0,
  zone,
});

/** Takes one puck off a heap: the others are a heap of their own, which comes after all others in `pucks`. */
export const takeOne = (pucks: PuckPlay[], puck: PuckPlay): void => {
  if (puck.count <= 1) return;
  pucks.push(lyingPuck(puck.xM, puck.yM, puck.count - 1, puck.zone));
  puck.count = 1;
};

/** Sets `next` to where the puck is at the end of the stretch; a carried puck goes with the step its owner tries. */
export const tryPuck = (puck: PuckPlay, stretch: Stretch, boards: Boards): void => {
  const { owner, flight } = puck;
  if (owner) {
    const keeps = settles(puck) ? Math.exp(-stretch.lengthS / SETTLE_S.value) : 0;
    puck.next.xM = owner.next.xM + BLADE_AHEAD_M.value * owner.nextFacingX + keeps * puck.offsetXM;
    puck.next.yM = owner.next.yM + BLADE_AHEAD_M.value * owner.nextFacingY + keeps * puck.offsetYM;
    if (boardsDistanceAt(boards, puck.next.xM, puck.next.yM) < PUCK_ROOM_M) {
      pushInside(boards, puck.next, PUCK_ROOM_M);
    }
  } else if (flight) {
    placeOnPath(flight.path, stretch.toS - flight.releasedS, puck.next);
  } else {
    puck.next.xM = puck.xM;
    puck.next.yM = puck.yM;
  }
};

const PUCK_ROOM_M = PUCK_ROWS.puckRadiusM.value;

const settles = (puck: PuckPlay): boolean => puck.offsetXM !== 0 || puck.offsetYM !== 0;

export const takePuck = (puck: PuckPlay, stretch: Stretch): void => {
  puck.xM = puck.next.xM;
  puck.yM = puck.next.yM;
  if (settles(puck)) {
    const keeps = Math.exp(-stretch.lengthS / SETTLE_S.value);
    puck.offsetXM *= keeps;
    puck.offsetYM *= keeps;
  }
};

/** The puck comes to this stick where it is, and settles to the blade from there. A pass or shot that waits for it is due. */
export const giveTo = (puck: PuckPlay, owner: Actor, nowS: number): void => {
  if (puck.count > 1) throw new Error(`a heap of ${puck.count} pucks was given to ${owner.spot.id}`);
  if (owner.puck) throw new Error(`${owner.spot.id} was given a puck at ${nowS} s and has one`);
  freePuck(puck);
  puck.state = 'carried';
  puck.owner = owner;
  owner.puck = puck;
  puck.offsetXM = puck.xM - bladeXOf(owner);
  puck.offsetYM = puck.yM - bladeYOf(owner);
  owner.hadPuckInAct = true;
  if (owner.waitsForPuck) owner.dueS = nowS;
};

export const letLie = (puck: PuckPlay): void => {
  freePuck(puck);
  puck.state = 'lies';
};

/** Nobody's from now on; the caller says what it does then. */
export const freePuck = (puck: PuckPlay): void => {
  if (puck.owner) puck.owner.puck = null;
  puck.owner = null;
  puck.flight = null;
  puck.offsetXM = 0;
  puck.offsetYM = 0;
};
