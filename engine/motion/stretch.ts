import { STEP_HZ } from '../drill/step-hz.ts';

/** One whole step of a run that is shown, seconds. */
export const STEP_S = 1 / STEP_HZ;

/** The stretch of time that everybody tries. One a run, changed in place, so that a step makes no garbage. */
export interface Stretch {
  fromS: number;
  toS: number;
  lengthS: number;
  /** The stride whose end is its end; −1 when it ends within one. */
  stride: number;
  /** Length of a whole stride of the run; not a number for a stretch of no run. */
  readonly wholeS: number;
}

/** A stretch of its own. All are made here, so that they are one kind of object for the compiler. */
export const stretchOf = (fromS: number, toS: number, wholeS = Number.NaN): Stretch => ({
  fromS,
  toS,
  lengthS: toS - fromS,
  stride: -1,
  wholeS,
});

/** Two times of a rep that lie a stride apart differ from it by rounding alone, at most this much. */
const ROUNDING_S = 1e-12;

/** A whole stride is given its exact length, always the same number, so that what depends on it alone is computed once. */
export const setStretch = (stretch: Stretch, fromS: number, toS: number, stride = -1): void => {
  const lengthS = toS - fromS;
  stretch.fromS = fromS;
  stretch.toS = toS;
  stretch.lengthS = Math.abs(lengthS - stretch.wholeS) < ROUNDING_S ? stretch.wholeS : lengthS;
  stretch.stride = stride;
};
