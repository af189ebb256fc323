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

/** Who keeps a gap does not turn round again before this. */
export const TURNS_AGAIN_S: Row = {
  name: 'least time between two changes of who keeps a gap',
  value: 1,
  unit: 's',
  range: [0.5, 1.5],
  source: 'our estimate: a stride or two to see what the change was good for',
  status: 'estimate',
};

/** Who keeps a gap and has turned forward turns back when the point he holds is slower than this part of his backward top speed. */
export const TURNS_BACK_RATIO: Row = {
  name: 'turns back to backward under this part of the backward top speed',
  value: 0.85,
  unit: '',
  range: [0.7, 0.95],
  source: 'our estimate: far enough below it that nobody turns to and fro',
  status: 'estimate',
};
