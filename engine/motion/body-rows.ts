import type { Row } from '../units/provenance.ts';

/** Defaults of the acts of the body. The level's own rows give stopping, turning, and the time of a change of facing. */

/** Part of the speed that a change between forward and backward costs. */
export const PIVOT_LOSS_RATIO: Row = {
  name: 'speed lost in a change between forward and backward',
  value: 0.1,
  unit: '',
  range: [0.05, 0.15],
  source: 'our estimate; no measured figure found',
  status: 'estimate',
};

/** Turns smaller than this are none. */
export const LEAST_TURN_RAD: Row = {
  name: 'smallest turn',
  value: 0.02,
  unit: 'rad',
  range: [0.01, 0.1],
  source: 'our choice: a degree, less than anybody skates straight',
  status: 'estimate',
};
