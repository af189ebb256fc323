import type { Row } from '../units/provenance.ts';

export const CLICK_SD: Row = {
  name: 'how well a click hits a marking',
  value: 1,
  unit: 'px',
  range: [0.3, 4],
  source: 'our choice for a loupe under the pointer; the coach can change it',
  status: 'estimate',
};

export const FOOT_SD: Row = {
  name: 'how well a click hits the point between the skates',
  value: 2,
  unit: 'px',
  range: [0.5, 8],
  source: 'our choice: twice a click on a marking, because the point is not painted',
  status: 'estimate',
};

/** Above this the first-order ± of the tie can no longer be believed: the sheet itself may be turned. */
export const LOOSEST_DEPTH: Row = {
  name: 'relative ± of the depth among the pins at which they are refused',
  value: 0.2,
  unit: '',
  range: [0.1, 0.3],
  source: 'our choice: first-order ± of x/w is off by about 4 % of itself at 0.2',
  status: 'estimate',
};

export const RAISE_SD_AT: Row = {
  name: 'chance below which residuals are taken as larger than clicks explain',
  value: 0.05,
  unit: '',
  range: [0.01, 0.1],
  source: 'our choice',
  status: 'estimate',
};

export const FALSE_ALARM: Row = {
  name: 'chance of naming a pin though all are right',
  value: 0.01,
  unit: '',
  range: [0.001, 0.05],
  source: 'our choice; shared among the pins (Bonferroni)',
  status: 'estimate',
};

export const SEVERAL_RATIO: Row = {
  name: 'residuals over the click, from which on several pins must be wrong',
  value: 4,
  unit: '',
  range: [3, 8],
  source: 'our choice',
  status: 'estimate',
};

export const NEAREST_HORIZON: Row = {
  name: 'relative ± of the depth at which a point is too near the horizon',
  value: 0.25,
  unit: '',
  range: [0.1, 0.3],
  source: 'our choice: beyond it the first-order ± cannot be believed',
  status: 'estimate',
};

export const OFF_THE_ICE: Row = {
  name: 'how far outside the boards, beyond its ellipse, a place is off the ice',
  value: 1,
  unit: 'm',
  range: [0.3, 3],
  source: 'our choice: a body leaning over the boards is still on the ice',
  status: 'estimate',
};

export const FAR_BETTER: Row = {
  name: 'share of the residuals that another sheet may leave to be named instead',
  value: 0.5,
  unit: '',
  range: [0.2, 0.7],
  source: 'our choice',
  status: 'estimate',
};
