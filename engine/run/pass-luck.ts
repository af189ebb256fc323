import { PASS_SPEED_SD_RATIO } from '../drill/drill-rows.ts';
import { puckPath } from '../puck/path.ts';
import type { Actor } from './actor.ts';
import type { PassAim } from './pass-aim.ts';
import { saucerPath } from './pass-ways.ts';
import type { PuckPlay } from './puck-play.ts';
import type { RunState } from './run-state.ts';

/**
 * The pass as it leaves the stick: with chance, off in direction by the level's spread (rad) and in speed by `PASS_SPEED_SD_RATIO`, both
 * normal; the meeting is still looked for when it was meant to be. Without chance, as aimed.
 */
export const withPassLuck = (run: RunState, passer: Actor, aim: PassAim, speedMps: number): PassAim => {
  const { chance } = run;
  const first = aim.path.legs[0];
  if (!chance || first?.kind !== 'slide') return aim;
  const nth = passer.passes++;
  const offRad = passer.model.passDirectionSdRad * chance.normal(passer.index, 'passDirection', nth);
  const ratio = Math.max(0.1, 1 + PASS_SPEED_SD_RATIO.value * chance.normal(passer.index, 'passSpeed', nth));
  const launchRad = Math.atan2(first.direction.yM, first.direction.xM) + offRad;
  const { saucer } = aim;
  const path = saucer
    ? saucerPath(run, first.startM, launchRad, ratio * speedMps, saucer)
    : puckPath(run.rink.boards, run.puckModel, first.startM, launchRad, ratio * speedMps);
  return { ...aim, path };
};

/**
 * Whether a passed puck within reach is brought under control: with chance, with P = 1 − exp(−rate · T), rate the level's
 * `controlRatePerS` and T the time for which the puck is within the lunge of a stick that gives with it (Spearman 2018, MIT Sloan:
 * control as a Poisson process in the time at the ball). A blade that gives brings the puck evenly to rest against the skater over the
 * way in reach, which takes twice as long as letting it slide through: our reading, a derived one. Without chance always.
 */
export const hasControl = (run: RunState, puck: PuckPlay, receiver: Actor): boolean => {
  const { chance } = run;
  if (!chance) return true;
  const luck = chance.uniform(receiver.index, 'control', receiver.receptions++);
  return luck < 1 - Math.exp(-receiver.model.controlRatePerS * timeInReachS(puck, receiver));
};

/** Coming evenly to rest over a way takes twice as long as sliding over it at the first speed. */
const GIVES = 2;

const timeInReachS = (puck: PuckPlay, { xM, yM, xMps, yMps, model }: Actor): number => {
  const vx = puck.xMps - xMps;
  const vy = puck.yMps - yMps;
  const speed = Math.hypot(vx, vy);
  if (speed === 0) return Number.POSITIVE_INFINITY;
  const acrossM = Math.abs((puck.xM - xM) * vy - (puck.yM - yM) * vx) / speed;
  return (GIVES * 2 * Math.sqrt(Math.max(0, model.lungeReachM ** 2 - acrossM ** 2))) / speed;
};
