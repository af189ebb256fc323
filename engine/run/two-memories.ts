import { type RunMemory, runMemory } from './recorder.ts';

/** Two memories that take turns: the run before stays whole while the next one is written, the one before that is overwritten. */
export interface TwoRunMemories {
  readonly next: () => RunMemory;
}

/**
 * For who shows one run while the next is computed, as under a dragging hand: no run makes memory anew, and the run that is
 * on the screen is never written into. Owned by the caller; whoever keeps a run longer than the next one copies it.
 */
export const twoRunMemories = (): TwoRunMemories => {
  let current = runMemory();
  let other = runMemory();
  return {
    next: () => {
      [current, other] = [other, current];
      return current;
    },
  };
};
