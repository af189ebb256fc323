import { BLADE_AHEAD_M } from '../drill/drill-rows.ts';
import type { Actor } from './actor.ts';
import { Y } from './actor-numbers.ts';
import { CONTEST_FAR_M } from './contest.ts';
import { contests, isAfterPuck } from './contest-play.ts';
import type { NearWatch } from './near-watch.ts';
import type { PuckPlay } from './puck-play.ts';
import type { RunState } from './run-state.ts';

/** Nobody skates faster than this, m/s: the fuzz tests hold it. */
const FASTEST_MPS = 14;

/** After a look that found somebody near, none is taken for so many steps: near, the look costs more than it saves. */
const LOOKS_AGAIN_S = 4 / 120;

/**
 * Whether between skaters, pucks and the places of cues surely nothing happens up to this time of the rep, seconds, whatever everybody decides until
 * then: nobody comes within reach of anybody or anything, for it is too far. Lines are not meant: they are asked for at every step. False says
 * nothing. What is known stands in the run until something happens in it (`forgetQuiet`), so that most steps ask no more than for that time.
 */
export const isQuietUntil = (run: RunState, timeS: number): boolean => {
  if (timeS < run.quietUntilS) return true;
  if (run.nowS < run.quietAgainS) return false;
  run.quietUntilS = run.nowS + quietForS(run);
  if (timeS < run.quietUntilS) return true;
  run.quietAgainS = run.nowS + LOOKS_AGAIN_S;
  return false;
};

/** Something has happened: what was known of the time to come does not hold any more. */
export const forgetQuiet = (run: RunState): void => {
  run.quietUntilS = Number.NEGATIVE_INFINITY;
  run.quietAgainS = Number.NEGATIVE_INFINITY;
};

const quietForS = (run: RunState): number => {
  let leastS = Number.POSITIVE_INFINITY;
  for (const actor of run.actors) leastS = Math.min(leastS, untilGotS(actor));
  for (const watch of run.nearWatches) leastS = Math.min(leastS, untilNearS(watch));
  for (const puck of run.pucks) {
    leastS = Math.min(leastS, puck.owner ? untilContestS(run, puck, puck.owner) : untilTakenS(run, puck));
  }
  return leastS;
};

/** Until a chase can come to its end, or a turn of the body. */
const untilGotS = (actor: Actor): number => {
  const { motion, whom, numbers, at, model } = actor;
  if (motion === 'face') return actor.actIndex < 0 || actor.endS < Number.POSITIVE_INFINITY ? Infinity : 0;
  if (motion !== 'chase' && (motion !== 'steal' || actor.hasCaughtUp)) return Infinity;
  if (!whom) return Infinity;
  const x = numbers[whom.at]! - numbers[at]!;
  const y = numbers[whom.at + Y]! - numbers[at + Y]!;
  return (Math.sqrt(x * x + y * y) - model.lungeReachM) / (2 * FASTEST_MPS);
};

/** Until somebody can have come near to the place, or have left it again. */
const untilNearS = ({ actor, near, isNear }: NearWatch): number => {
  const farM = Math.hypot(actor.xM - near.atM.xM, actor.yM - near.atM.yM) - near.withinM;
  return (isNear ? -farM : farM) / FASTEST_MPS;
};

/** Until somebody's stick can come to a carried puck. */
const untilContestS = (run: RunState, puck: PuckPlay, owner: Actor): number => {
  if (puck.contestPerS !== 0 || puck.triedPerS !== 0) return 0;
  if (owner.spot.kind !== 'skater') return Infinity;
  const { numbers } = run;
  // The puck is no farther from its owner than the blade and the way it still has to settle.
  const puckM = BLADE_AHEAD_M.value + Math.hypot(puck.offsetXM, puck.offsetYM);
  let nearest2 = Infinity;
  for (const by of run.actors) {
    if (!contests(by, owner)) continue;
    const x = numbers[by.at]! - numbers[owner.at]!;
    const y = numbers[by.at + Y]! - numbers[owner.at + Y]!;
    nearest2 = Math.min(nearest2, x * x + y * y);
  }
  return (Math.sqrt(nearest2) - CONTEST_FAR_M - puckM) / (2 * FASTEST_MPS);
};

/** Until a puck that slides or lies can be within reach of somebody who may take it. */
const untilTakenS = (run: RunState, puck: PuckPlay): number => {
  const { flight, left, lostBy } = puck;
  const isLoose = Number.isFinite(puck.looseS);
  const lateFor = flight?.isLate ? flight.to : null;
  const closesMps = FASTEST_MPS + (flight ? fastestMps(flight.path.legs[0]) : 0);
  let leastM = Infinity;
  for (const actor of run.actors) {
    const may =
      actor === lateFor ||
      actor === left?.to ||
      actor.motion === 'pickUp' ||
      (isLoose && (actor === lostBy || isAfterPuck(actor)));
    if (!may) continue;
    leastM = Math.min(leastM, Math.hypot(puck.xM - actor.xM, puck.yM - actor.yM) - actor.model.reachM);
  }
  return leastM / closesMps;
};

/** A puck only slows, on the ice and off the boards; along a rim nothing is said. */
const fastestMps = (first: { readonly kind: string; readonly startMps?: number } | undefined): number =>
  first?.kind === 'slide' ? (first.startMps ?? Infinity) : Infinity;
