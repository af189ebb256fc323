import { puckPath } from '../puck/path.ts';
import { fireCue } from './act-flow.ts';
import { type Actor, placeOf } from './actor.ts';
import { type ContestView, contestPerS } from './contest.ts';
import {
  CLEAN_STEAL_RATIO,
  CONTAIN_RATIO,
  LOOSE_KEEPS_RATIO,
  LOOSE_LEAST_MPS,
  LOOSE_TURN_RAD,
} from './contest-rows.ts';
import { hasHelp } from './help.ts';
import { launch } from './launch.ts';
import { freePuck, giveTo, type PuckPlay } from './puck-play.ts';
import type { RunState } from './run-state.ts';

export const contestViewOf = (): ContestView => {
  const nobody = () => ({ xM: 0, yM: 0, xMps: 0, yMps: 0 });
  return {
    by: nobody(),
    byFacing: { x: 1, y: 0 },
    reachM: 0,
    lungeReachM: 0,
    whom: nobody(),
    whomFacing: { x: 1, y: 0 },
    puck: { xM: 0, yM: 0 },
  };
};

/**
 * Whether the carrier has lost this puck by the end of the step tried: the sum of everybody's hazard since it came to the stick has
 * reached −ln(1 − u). Keeps the hazard at the end of the step.
 */
export const isLostBy = (run: RunState, puck: PuckPlay): boolean => {
  puck.triedPerS = allPerS(run, puck);
  if (puck.triedPerS === 0 && puck.contestPerS === 0) return false;
  if (Number.isNaN(puck.contestLimit)) puck.contestLimit = limitOf(run, puck);
  return puck.contest + triedContest(run, puck) >= puck.contestLimit;
};

/** Adds the step that was tried last to the sum. */
export const takeContest = (run: RunState, puck: PuckPlay): void => {
  puck.contest += triedContest(run, puck);
  puck.contestPerS = puck.triedPerS;
};

const triedContest = (run: RunState, puck: PuckPlay): number =>
  ((puck.contestPerS + puck.triedPerS) / 2) * run.stretch.lengthS;

/**
 * The puck is lost: to the opponent whose stick is most on it, or loose, off across the carrier's way (`CLEAN_STEAL_RATIO` says how
 * often which; without chance the likelier of the two).
 */
export const loseContest = (run: RunState, puck: PuckPlay): void => {
  const { owner: loser, contestBy: winner } = puck;
  if (!loser || !winner) throw new Error(`a puck was lost at ${run.nowS} s with nobody at it`);
  const luck = run.chance?.uniform(loser.index, 'contest', 2 * loser.possessions + 1) ?? 0.5;
  if (luck < CLEAN_STEAL_RATIO.value && !winner.puck) {
    giveTo(puck, winner, run.nowS);
    run.events.push({
      kind: 'steal',
      timeS: run.nowS,
      atM: placeOf(puck),
      spot: winner.spot.id,
      from: loser.spot.id,
    });
  } else {
    knockLoose(run, puck, loser, winner);
  }
  fireCue(run, { on: 'losesPuck', spot: loser.spot.id, timeS: run.nowS });
};

const knockLoose = (run: RunState, puck: PuckPlay, loser: Actor, by: Actor): void => {
  const speedMps = Math.hypot(loser.xMps, loser.yMps);
  const isMoving = speedMps > LOOSE_LEAST_MPS.value;
  const wayX = isMoving ? loser.xMps : loser.facingX;
  const wayY = isMoving ? loser.yMps : loser.facingY;
  const isLeft = wayX * (by.yM - loser.yM) - wayY * (by.xM - loser.xM) > 0;
  const launchRad = Math.atan2(wayY, wayX) + (isLeft ? -1 : 1) * LOOSE_TURN_RAD.value;
  const looseMps = Math.max(LOOSE_LEAST_MPS.value, LOOSE_KEEPS_RATIO.value * speedMps);
  const path = puckPath(run.rink.boards, run.puckModel, placeOf(puck), launchRad, looseMps);
  const act = loser.spot.acts[loser.actIndex]?.id ?? null;
  freePuck(puck);
  launch(run, puck, loser, null, act, path);
  setLoose(run, puck, loser, by);
};

/** From now on whoever is after it can have it, and the one who lost it. */
export const setLoose = (run: RunState, puck: PuckPlay, loser: Actor, by: Actor | null): void => {
  puck.looseS = run.nowS;
  puck.lostBy = loser;
  run.events.push({
    kind: 'loose',
    timeS: run.nowS,
    atM: placeOf(puck),
    spot: loser.spot.id,
    ...(by ? { by: by.spot.id } : {}),
  });
};

const limitOf = (run: RunState, { owner }: PuckPlay): number => {
  const luck = (owner && run.chance?.uniform(owner.index, 'contest', 2 * owner.possessions)) ?? 0.5;
  return -Math.log(1 - luck);
};

/** The hazard of all opponents together at the end of the step tried; keeps whose is the greatest. */
const allPerS = (run: RunState, puck: PuckPlay): number => {
  const { owner } = puck;
  if (owner?.spot.kind !== 'skater') return 0;
  let sum = 0;
  let most = 0;
  for (const by of run.actors) {
    if (!contests(by, owner)) continue;
    const freePerS = perSOf(run, puck, owner, by);
    if (freePerS === 0) continue;
    const perS = (isContaining(run, by, owner) ? CONTAIN_RATIO.value : 1) * freePerS;
    sum += perS;
    if (perS <= most) continue;
    most = perS;
    puck.contestBy = by;
  }
  return sum;
};

/**
 * Whoever of the other side is out for the puck, or keeps a gap, has the stick on it. A chase is a race to the skater, and who skates
 * a drawn route keeps to it.
 */
export const contests = (by: Actor, owner: Actor): boolean =>
  isAfterPuck(by) && by.puck === null && by.spot.side !== owner.spot.side && by.spot.kind === 'skater';

/** Plays on what happens, with the stick on the ice for a puck. */
export const isAfterPuck = ({ motion }: Actor): boolean =>
  motion === 'steal' || motion === 'gap' || motion === 'pickUp';

/** Who keeps a gap without help keeps between first: contain. With help: close ("contain or force", taught so). */
const isContaining = (run: RunState, by: Actor, owner: Actor): boolean =>
  by.motion === 'gap' && !hasHelp(run, by, owner);

const perSOf = (run: RunState, puck: PuckPlay, owner: Actor, by: Actor): number => {
  const { contest: view } = run;
  view.by = by.next;
  view.byFacing.x = by.nextFacingX;
  view.byFacing.y = by.nextFacingY;
  view.reachM = by.model.reachM;
  view.lungeReachM = by.model.lungeReachM;
  view.whom = owner.next;
  view.whomFacing.x = owner.nextFacingX;
  view.whomFacing.y = owner.nextFacingY;
  view.puck = puck.next;
  return contestPerS(view);
};
