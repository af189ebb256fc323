import { BLADE_AHEAD_M, SETTLE_S } from '../drill/drill-rows.ts';
import { boardsDistanceAt, pushInside } from '../drill/in-boards.ts';
import type { Stretch } from '../motion/stretch.ts';
import { placeOnPath } from '../puck/place-on-path.ts';
import { PUCK_ROWS } from '../puck/puck-rows.ts';
import type { Boards } from '../rink/boards.ts';
import { type Actor, bladeXOf, bladeYOf } from './actor.ts';
import type { Puck, PuckFlight } from './puck-parts.ts';

export type PuckPlay = Puck<Actor>;
export type Flight = PuckFlight<Actor>;

/** Pucks that lie at a place, metres; `zone` is the number of rink lines with smaller x. */
export const lyingPuck = (xM: number, yM: number, count: number, zone: number): PuckPlay => ({
  state: 'lies',
  count,
  owner: null,
  flight: null,
  xM,
  yM,
  xMps: 0,
  yMps: 0,
  next: { xM, yM },
  contest: 0,
  contestPerS: 0,
  triedPerS: 0,
  contestLimit: Number.NaN,
  contestBy: null,
  looseS: Number.NaN,
  lostBy: null,
  left: null,
  isDead: false,
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
    const keeps = settles(puck) ? settlesTo(stretch.lengthS) : 0;
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

/** The part of its way to the blade that a puck still has to settle after so long. Most stretches are a whole stride: that is kept. */
const settlesTo = (lengthS: number): number => {
  if (lengthS !== lastLengthS) {
    lastLengthS = lengthS;
    lastKeeps = Math.exp(-lengthS / SETTLE_S.value);
  }
  return lastKeeps;
};

let lastLengthS = Number.NaN;
let lastKeeps = Number.NaN;

export const takePuck = (puck: PuckPlay, stretch: Stretch): void => {
  if (puck.flight && stretch.lengthS > 0) {
    puck.xMps = (puck.next.xM - puck.xM) / stretch.lengthS;
    puck.yMps = (puck.next.yM - puck.yM) / stretch.lengthS;
  }
  puck.xM = puck.next.xM;
  puck.yM = puck.next.yM;
  if (settles(puck)) {
    const keeps = settlesTo(stretch.lengthS);
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
  owner.possessions++;
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
  puck.xMps = 0;
  puck.yMps = 0;
  puck.contest = 0;
  puck.contestPerS = 0;
  puck.contestLimit = Number.NaN;
  puck.contestBy = null;
  puck.looseS = Number.NaN;
  puck.lostBy = null;
  puck.left = null;
};
