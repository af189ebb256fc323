import { STEP_HZ } from '../drill/step-hz.ts';

/** One whole step of a run, seconds. */
export const STEP_S = 1 / STEP_HZ;

/** The stretch of time that everybody tries. One a run, changed in place, so that a step makes no garbage. */
export interface Stretch {
  fromS: number;
  toS: number;
  lengthS: number;
  /** The sample on which it ends; −1 when it ends between two. */
  sample: number;
}

/** A stretch of its own. All are made here, so that they are one kind of object for the compiler. */
export const stretchOf = (fromS: number, toS: number): Stretch => ({
  fromS,
  toS,
  lengthS: toS - fromS,
  sample: -1,
});

/** Two times of a rep that lie a step apart differ from it by rounding alone, at most this much. */
const ROUNDING_S = 1e-12;

/** A whole step is given its exact length, always the same number, so that what depends on it alone is computed once. */
export const setStretch = (stretch: Stretch, fromS: number, toS: number, sample = -1): void => {
  const lengthS = toS - fromS;
  stretch.fromS = fromS;
  stretch.toS = toS;
  stretch.lengthS = Math.abs(lengthS - STEP_S) < ROUNDING_S ? STEP_S : lengthS;
  stretch.sample = sample;
};
