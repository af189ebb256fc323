import { STEP_HZ } from '../drill/step-hz.ts';
import type { Actor } from './actor.ts';
import { Y } from './actor-numbers.ts';
import type { RunState } from './run-state.ts';

/** Who reacts decides this often a second, and whenever anything happens. See docs/decisions/who-is-far-decides-less-often.md. */
export const LOOK_HZ = 40;

/** Strides from one look to the next; those of runs with fewer strides than looks are one each. */
export const stridesPerLook = (strideHz: number): number => Math.max(1, Math.floor(strideHz / LOOK_HZ));

/** Whether everybody looks at the beginning of that stride, 1 or more. */
export const isLook = ({ strideHz }: RunState, stride: number): boolean =>
  (stride - 1) % stridesPerLook(strideHz) === 0;

/**
 * Until when the run may be stepped at once, seconds after the whistle: to the end of the stride `untilS`, or only to the next sample when
 * strides are longer and somebody is close to whom or what they go for. Who is far off decides the same a moment later; who is close
 * does not.
 */
export const strideEndS = (run: RunState, untilS: number): number => {
  if (run.strideHz === STEP_HZ || !run.actors.some(actor => isClose(run, actor))) return untilS;
  return Math.min(untilS, (Math.floor(run.nowS * STEP_HZ + LEAST) + 1) / STEP_HZ);
};

const CLOSE_M = 6;
/** A time that is a sample but for rounding, in samples. */
const LEAST = 1e-6;

/**
 * Whether a skater decides anew at every step and not only at every look: who keeps a gap or a lane, for they follow a place that moves, and who is
 * close to whom or what they go for.
 */
export const decidesAtEveryStep = (run: RunState, actor: Actor): boolean =>
  actor.motion === 'gap' || actor.motion === 'screen' || isClose(run, actor);

/** Whether a skater is so close to whom or what they go for that a moment counts. */
const isClose = ({ numbers }: RunState, { motion, at, whom, prey }: Actor): boolean => {
  if (motion !== 'chase' && motion !== 'steal' && motion !== 'pickUp') return false;
  const of = prey ?? whom;
  if (!of) return false;
  const x = numbers[at]! - of.xM;
  const y = numbers[at + Y]! - of.yM;
  return x * x + y * y < CLOSE_M * CLOSE_M;
};
