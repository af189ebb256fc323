import { movingBodyAt } from '../motion/moving-body.ts';
import { puckPath } from '../puck/path.ts';
import { type Saucer, saucerAtTime } from '../puck/saucer.ts';
import { slideDistanceAtTime, slideStopTime, slowingOf } from '../puck/slide.ts';
import type { IcePoint } from '../units/points.ts';
import { type Actor, placeOf } from './actor.ts';
import { aimBank } from './aim-bank.ts';
import { bladeAt, type Foreseen, foreseenOf } from './foresee.ts';
import type { PassAim, PassDeed } from './pass-aim.ts';
import { aimRim, farOf, liftFor, saucerPath } from './pass-ways.ts';
import type { RunState } from './run-state.ts';

/** No puck is waited for longer than this, and none slides longer that is still passed to somebody. */
export const LONGEST_PASS_S = 8;

/**
 * Aims a pass at where the receiver's blade will be. A direct pass that cannot meet the blade is aimed at where it
 * comes nearest. Null only when a bank pass is asked for and no launch direction gives one.
 */
export const aimPass = (run: RunState, passer: Actor, receiver: Actor, act: PassDeed): PassAim | null => {
  const foreseen = foreseenOf(run, receiver);
  switch (act.way) {
    case 'bank':
      return aimBank(run, passer, receiver, foreseen, act);
    case 'rim':
      return aimRim(run, fromOf(passer), foreseen, receiver.model.lungeReachM, act.speedMps);
    case 'saucer': {
      const flat = aimDirect(run, passer, foreseen, act.speedMps, null);
      const meetsS = Number.isFinite(flat.meetsAfterS) ? flat.meetsAfterS : 0;
      const saucer = liftFor(run, act.speedMps, farOf(run, fromOf(passer), foreseen, meetsS));
      return aimDirect(run, passer, foreseen, act.speedMps, saucer);
    }
    case 'drop':
      return dropBack(run, passer, aimDirect(run, passer, foreseen, act.speedMps, null), act.speedMps);
    default:
      return aimDirect(run, passer, foreseen, act.speedMps, null);
  }
};

const fromOf = (passer: Actor): IcePoint => placeOf(passer.puck ?? passer);

/** A drop goes to the blade of who comes after, and straight back when that is not behind the passer. */
const dropBack = (run: RunState, passer: Actor, aim: PassAim, speedMps: number): PassAim => {
  const leg = aim.path.legs[0];
  const isBehind =
    leg?.kind === 'slide' && leg.direction.xM * passer.facingX + leg.direction.yM * passer.facingY < 0;
  if (isBehind) return aim;
  const backRad = Math.atan2(-passer.facingY, -passer.facingX);
  const path = puckPath(run.rink.boards, run.puckModel, fromOf(passer), backRad, speedMps);
  return { path, meetsAfterS: Number.NaN };
};

const SCAN_STEP_S = 1 / 30;
const BISECT_STEPS = 40;

const aimDirect = (
  run: RunState,
  passer: Actor,
  foreseen: Foreseen,
  speedMps: number,
  saucer: Saucer | null,
): PassAim => {
  const { puckModel, rink } = run;
  const slowing = slowingOf(puckModel);
  const fromM = placeOf(passer.puck ?? passer);
  const blade = movingBodyAt(0, 0);
  /** How far the puck is short of the blade, when it is sent to where the blade is then, metres. */
  const shortM = (afterS: number): number => {
    bladeAt(foreseen, run.nowS + afterS, blade);
    const farM = Math.hypot(blade.xM - fromM.xM, blade.yM - fromM.yM);
    const goneM = saucer
      ? saucerAtTime(puckModel, saucer, speedMps, afterS).distanceM
      : slideDistanceAtTime(slowing, speedMps, afterS);
    return farM - goneM;
  };
  const lastS = Math.min(LONGEST_PASS_S, saucer ? LONGEST_PASS_S : slideStopTime(slowing, speedMps));
  let nearestS = 0;
  let nearestM = shortM(0);
  let lowS = 0;
  let highS = 0;
  let meets = nearestM <= 0;
  while (!meets && highS < lastS) {
    lowS = highS;
    highS = Math.min(lastS, lowS + SCAN_STEP_S);
    const short = shortM(highS);
    meets = short <= 0;
    if (short < nearestM) {
      nearestM = short;
      nearestS = highS;
    }
  }
  for (let i = 0; meets && i < BISECT_STEPS && highS - lowS > 1e-10; i++) {
    const middleS = (lowS + highS) / 2;
    if (shortM(middleS) > 0) lowS = middleS;
    else highS = middleS;
  }
  bladeAt(foreseen, run.nowS + (meets ? highS : nearestS), blade);
  const launchRad = Math.atan2(blade.yM - fromM.yM, blade.xM - fromM.xM);
  const meetsAfterS = meets ? highS : Number.NaN;
  if (saucer) return { path: saucerPath(run, fromM, launchRad, speedMps, saucer), meetsAfterS, saucer };
  return { path: puckPath(rink.boards, puckModel, fromM, launchRad, speedMps), meetsAfterS };
};
