import { STEP_HZ } from '../drill/step-hz.ts';
import { ACTOR_NUMBERS, FACING_X, FACING_Y, X_MPS } from './actor-numbers.ts';
import { addSample } from './recorder.ts';
import type { RunState } from './run-state.ts';

/** Whether the run has come to where the next sample is taken. */
export const isSampleDue = ({ recorder, nowS }: RunState): boolean => nowS >= recorder.count / STEP_HZ;

/** Adds one sample of everybody and the pucks. */
export const recordSample = (run: RunState): void => {
  addSample(run, run.now, 0);
};

/**
 * Adds the samples that lie inside the stretch that has been tried and is now to be taken; those of a stride no longer than a sample have none.
 * Within a stretch nothing happens, so everybody is on the cubic with the velocities at both its ends, and a puck near the straight line.
 */
export const recordWithin = (run: RunState): void => {
  const { recorder, stretch } = run;
  for (;;) {
    const timeS = recorder.count / STEP_HZ;
    if (timeS >= stretch.toS) return;
    const share = (timeS - stretch.fromS) / stretch.lengthS;
    setBetween(run, share);
    addSample(run, recorder.between, share);
  }
};

const setBetween = ({ recorder, numbers, stretch }: RunState, share: number): void => {
  const { between } = recorder;
  const next = between.length;
  const rest = 1 - share;
  const h01 = share * share * (3 - 2 * share);
  const h10 = share * rest * rest * stretch.lengthS;
  const h11 = -share * share * rest * stretch.lengthS;
  for (let at = 0; at < next; at += ACTOR_NUMBERS) {
    for (let i = at; i < at + X_MPS; i++) {
      const fromMps = numbers[i + X_MPS]!;
      const toMps = numbers[next + i + X_MPS]!;
      between[i] = numbers[i]! + h01 * (numbers[next + i]! - numbers[i]!) + h10 * fromMps + h11 * toMps;
      between[i + X_MPS] = fromMps + share * (toMps - fromMps);
    }
    const x = rest * numbers[at + FACING_X]! + share * numbers[next + at + FACING_X]!;
    const y = rest * numbers[at + FACING_Y]! + share * numbers[next + at + FACING_Y]!;
    const size = Math.sqrt(x * x + y * y);
    between[at + FACING_X] = size > 0 ? x / size : numbers[at + FACING_X]!;
    between[at + FACING_Y] = size > 0 ? y / size : numbers[at + FACING_Y]!;
  }
};
