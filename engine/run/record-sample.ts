import { STEP_HZ } from '../drill/step-hz.ts';
import { ACTOR_NUMBERS } from './actor-numbers.ts';
import { addSample, addWithin } from './recorder.ts';
import type { RunState } from './run-state.ts';
import { ENDS_ROWS, setBetween } from './within-stretch.ts';

/** Whether the run has come to where the next sample is taken. */
export const isSampleDue = ({ recorder, nowS }: RunState): boolean => nowS >= recorder.nextS;

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
  if (recorder.nextS >= stretch.toS) return;
  const isKept = !recorder.writesColumns && (recorder.count + ENDS_ROWS - 1) / STEP_HZ < stretch.toS;
  for (let nth = 1; ; nth++) {
    const timeS = recorder.nextS;
    if (timeS >= stretch.toS) return;
    const share = (timeS - stretch.fromS) / stretch.lengthS;
    if (isKept) addWithin(run, nth, share);
    else {
      setAllBetween(run, share);
      addSample(run, recorder.between, share);
    }
  }
};

const setAllBetween = ({ recorder, numbers, stretch }: RunState, share: number): void => {
  const { between } = recorder;
  for (let at = 0; at < between.length; at += ACTOR_NUMBERS)
    setBetween(numbers, at, between.length + at, share, stretch.lengthS, between, at);
};
