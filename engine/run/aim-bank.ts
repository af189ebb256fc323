import { movingBodyAt } from '../motion/moving-body.ts';
import { type BankSearch, bankSearch } from '../pass/bank-pass.ts';
import type { BankPass, Receiver } from '../pass/pass-parts.ts';
import { puckPath } from '../puck/path.ts';
import { wrapRad } from '../units/angles.ts';
import type { IcePoint } from '../units/points.ts';
import { type Actor, placeOf } from './actor.ts';
import { findCutOff } from './cut-off.ts';
import { bladeAt, type Foreseen } from './foresee.ts';
import { keptOrBegun, keptOrFound } from './kept-banks.ts';
import type { PassAim, PassDeed } from './pass-aim.ts';
import type { RunState } from './run-state.ts';

/** The meeting is found when puck and blade agree this well. */
const MEETS_WITHIN_M = 0.02;
const MOST_TRIES = 6;

/**
 * The best pass off the boards to a receiver whose future is foreseen; null when no launch direction gives one. Best: no
 * opponent can cut it off, then one bounce before two, then the soonest. A pass that would follow the boards round a corner
 * is not offered. The bank solver takes a receiver at steady velocity, so a curved route is replaced by its tangent at the meeting
 * and solved again until the two agree.
 */
export const aimBank = (
  run: RunState,
  passer: Actor,
  receiver: Actor,
  foreseen: Foreseen,
  act: PassDeed,
): PassAim | null => {
  let fallback: PassAim | null = null;
  const { boards } = run.rink;
  const { speedMps } = act;
  const fromM = placeOf(passer.puck ?? passer);
  const asked = { boards, act, fromM, nowS: run.nowS, foreseen };
  for (const bounceCount of [1, 2] as const) {
    const passes = keptOrFound(asked, bounceCount, () => {
      const search = keptOrBegun(asked, bounceCount, () =>
        bankSearch(boards, run.puckModel, fromM, speedMps, { bounceCount }),
      );
      return search(tangentAt(run, foreseen, guessS(run, fromM, foreseen, speedMps)))
        .filter(pass => !pass.followsBoards)
        .flatMap(pass => settle(run, foreseen, search, pass) ?? [])
        .filter(pass => !pass.followsBoards)
        .sort((a, b) => a.arrivalS - b.arrivalS);
    });
    for (const pass of passes) {
      const path = puckPath(boards, run.puckModel, fromM, pass.launchRad, speedMps);
      const aim = { path, meetsAfterS: pass.arrivalS };
      if (!isCutOff(run, passer, receiver, aim)) return aim;
      fallback ??= aim;
    }
  }
  return fallback;
};

/** Solves again with the tangent at the last meeting until it holds; null when it does not settle. */
const settle = (run: RunState, foreseen: Foreseen, search: BankSearch, first: BankPass): BankPass | null => {
  let pass = first;
  const blade = movingBodyAt(0, 0);
  for (let i = 0; i < MOST_TRIES; i++) {
    bladeAt(foreseen, run.nowS + pass.arrivalS, blade);
    if (Math.hypot(blade.xM - pass.meetM.xM, blade.yM - pass.meetM.yM) < MEETS_WITHIN_M) return pass;
    const near = nearestTo(pass.launchRad, search, tangentAt(run, foreseen, pass.arrivalS));
    if (!near) return null;
    pass = near;
  }
  return null;
};

/** A later tangent mostly moves a pass by less than the first; when it does not, farther directions are looked at, at last all round. */
const NEAR_RADS = [0.3, 0.9, Math.PI] as const;

/** The pass to this receiver that leaves nearest to a direction; null when there is none. */
const nearestTo = (launchRad: number, search: BankSearch, receiver: Receiver): BankPass | null => {
  const apartRad = (pass: BankPass): number => Math.abs(wrapRad(pass.launchRad - launchRad));
  const nearestOf = (passes: readonly BankPass[]): BankPass | null =>
    passes.reduce<BankPass | null>(
      (best, one) => (!best || apartRad(one) < apartRad(best) ? one : best),
      null,
    );
  let beyondRad = 0;
  for (const withinRad of NEAR_RADS) {
    const near = nearestOf(search(receiver, { launchRad, withinRad, beyondRad }));
    // One farther off than that was only met beside: there may be nearer ones on the other side.
    if (near && apartRad(near) <= withinRad) return near;
    beyondRad = withinRad;
  }
  return null;
};

/** A receiver at steady velocity whose blade is where the foreseen one is at `meetS`. */
const tangentAt = (run: RunState, foreseen: Foreseen, meetS: number): Receiver => {
  const blade = movingBodyAt(0, 0);
  bladeAt(foreseen, run.nowS + meetS, blade);
  return {
    atM: { xM: blade.xM - meetS * blade.xMps, yM: blade.yM - meetS * blade.yMps },
    velocityMps: { xMps: blade.xMps, yMps: blade.yMps },
    bladeOffsetM: { xM: 0, yM: 0 },
  };
};

/** A bank pass goes about half as far again as a straight one. Only where the search begins. */
const DETOUR = 1.5;

const guessS = (run: RunState, fromM: IcePoint, foreseen: Foreseen, speedMps: number): number => {
  const blade = movingBodyAt(0, 0);
  bladeAt(foreseen, run.nowS, blade);
  return (DETOUR * Math.hypot(blade.xM - fromM.xM, blade.yM - fromM.yM)) / speedMps;
};

const isCutOff = (run: RunState, passer: Actor, receiver: Actor, aim: PassAim): boolean =>
  run.actors.some(
    actor =>
      actor.spot.side !== passer.spot.side &&
      actor.spot.kind === 'skater' &&
      actor !== receiver &&
      !actor.puck &&
      findCutOff(actor, aim.path, aim.meetsAfterS) !== undefined,
  );
