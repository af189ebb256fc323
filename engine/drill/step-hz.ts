/** Samples of a run a second. */
export const STEP_HZ = 120;
