import { bankPasses } from '../pass/bank-pass.ts';
import type { BankPass, Receiver } from '../pass/pass-parts.ts';
import { puckPath } from '../puck/path.ts';
import { type Actor, placeOf } from './actor.ts';
import { findCutOff } from './cut-off.ts';
import { bladeAt, type Foreseen } from './foresee.ts';
import type { PassAim } from './pass-aim.ts';
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
  speedMps: number,
): PassAim | null => {
  let fallback: PassAim | null = null;
  for (const bounceCount of [1, 2] as const) {
    const solved = solutionsAt(run, foreseen, speedMps, bounceCount, guessS(run, foreseen, speedMps))
      .filter(pass => !pass.followsBoards)
      .map(pass => settle(run, foreseen, speedMps, bounceCount, pass))
      .filter(pass => pass !== null)
      .sort((a, b) => a.arrivalS - b.arrivalS);
    for (const pass of solved) {
      const path = puckPath(run.rink.boards, run.puckModel, placeOf(run.puck), pass.launchRad, speedMps);
      const aim = { path, meetsAfterS: pass.arrivalS };
      if (!isCutOff(run, passer, receiver, aim)) return aim;
      fallback ??= aim;
    }
  }
  return fallback;
};

/** Solves again with the tangent at the last meeting until it holds; null when it does not settle. */
const settle = (
  run: RunState,
  foreseen: Foreseen,
  speedMps: number,
  bounceCount: 1 | 2,
  first: BankPass,
): BankPass | null => {
  let pass = first;
  for (let i = 0; i < MOST_TRIES; i++) {
    const blade = { xM: 0, yM: 0, xMps: 0, yMps: 0 };
    bladeAt(foreseen, run.nowS + pass.arrivalS, blade);
    if (Math.hypot(blade.xM - pass.meetM.xM, blade.yM - pass.meetM.yM) < MEETS_WITHIN_M) return pass;
    const again = solutionsAt(run, foreseen, speedMps, bounceCount, pass.arrivalS);
    const near = again.reduce<BankPass | null>(
      (best, one) =>
        !best || apartRad(one.launchRad, pass.launchRad) < apartRad(best.launchRad, pass.launchRad)
          ? one
          : best,
      null,
    );
    if (!near) return null;
    pass = near;
  }
  return null;
};

const solutionsAt = (
  run: RunState,
  foreseen: Foreseen,
  speedMps: number,
  bounceCount: 1 | 2,
  meetS: number,
): readonly BankPass[] =>
  bankPasses(run.rink.boards, run.puckModel, placeOf(run.puck), speedMps, tangentAt(run, foreseen, meetS), {
    bounceCount,
  });

/** A receiver at steady velocity whose blade is where the foreseen one is at `meetS`. */
const tangentAt = (run: RunState, foreseen: Foreseen, meetS: number): Receiver => {
  const blade = { xM: 0, yM: 0, xMps: 0, yMps: 0 };
  bladeAt(foreseen, run.nowS + meetS, blade);
  return {
    atM: { xM: blade.xM - meetS * blade.xMps, yM: blade.yM - meetS * blade.yMps },
    velocityMps: { xMps: blade.xMps, yMps: blade.yMps },
    bladeOffsetM: { xM: 0, yM: 0 },
  };
};

/** A bank pass goes about half as far again as a straight one. Only where the search begins. */
const DETOUR = 1.5;

const guessS = (run: RunState, foreseen: Foreseen, speedMps: number): number => {
  const blade = { xM: 0, yM: 0, xMps: 0, yMps: 0 };
  bladeAt(foreseen, run.nowS, blade);
  return (DETOUR * Math.hypot(blade.xM - run.puck.xM, blade.yM - run.puck.yM)) / speedMps;
};

const isCutOff = (run: RunState, passer: Actor, receiver: Actor, aim: PassAim): boolean =>
  run.actors.some(
    actor =>
      actor.spot.side !== passer.spot.side &&
      actor.spot.kind === 'skater' &&
      actor !== receiver &&
      findCutOff(actor, aim.path, aim.meetsAfterS) !== undefined,
  );

const apartRad = (a: number, b: number): number => Math.abs(Math.atan2(Math.sin(a - b), Math.cos(a - b)));
