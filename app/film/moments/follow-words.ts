import { type Follow, STEP_SAID } from '@icewright/book';

/** What can come of a moment, in the order in which it usually does, with its key while a moment is chosen. */
export const FOLLOW_STEPS = (Object.keys(STEP_SAID) as Follow['step'][]).map(step => ({
  step,
  said: STEP_SAID[step],
}));

export const followSaid = (step: Follow['step']): string => STEP_SAID[step];
