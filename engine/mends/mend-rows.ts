import { estimateRow, type Row } from '../units/provenance.ts';

/** How great the changes of a mend are against each other. All are judgements: a coach would rather move a pylon than change the idea. */

const size = (name: string, value: number, low: number, high: number, why: string): Row =>
  estimateRow(`size of a mend: ${name}`, value, 'm', [low, high], `our choice: ${why}`);

export const SECOND_OF_DELAY = size(
  'a second later',
  2,
  1,
  5,
  'half a second is as easily coached as a metre',
);
export const TENTH_OF_EFFORT = size(
  'a tenth less effort',
  1.5,
  1,
  3,
  'slower than full is harder to keep to than a place',
);
export const MPS_OF_PASS = size('1 m/s of a pass', 0.8, 0.5, 2, 'passers do not feel less than this');
export const STOP_ADDED = size('a stop', 1, 0.5, 3, 'it changes the end only');
export const OTHER_WAY = size('another way to pass', 4, 2, 8, 'another skill');
export const OTHER_CUE = size('another cue', 3, 1, 6, 'another thing to read');
export const PUCK_ADDED = size('a puck', 2, 1, 5, 'they lie in a bucket');
export const ACT_ADDED = size('one more act', 4, 2, 8, 'one more thing to remember');
export const OTHER_DEED = size('another act in its place', 8, 5, 12, 'another drill, almost');
export const QUARTER_TURN = size('a line turned a quarter', 1.5, 0.5, 3, 'the line stands elsewhere');

export const SECOND_OF_FLOW = size('a second between goes', 0.3, 0.1, 1, 'the coach whistles');
export const BOTH_ENDS = size(
  'both ends, one end or by turns',
  5,
  2,
  8,
  'nets, goalies and lines have to be there',
);

/** No more runs than this are tried for one finding. */
export const MOST_TRIES: Row = {
  name: 'runs tried for one mend, at most',
  value: 40,
  unit: 'runs',
  range: [20, 100],
  source: 'our choice: a tenth of a second of computing',
  status: 'estimate',
};

export const SOONEST_GO = estimateRow(
  'two reps start no nearer to each other, by a mend, than',
  3,
  's',
  [2, 5],
  'our choice: somebody has to look and go',
);

export const MEND_EASES_TO = estimateRow(
  'a mend counts that leaves of what was amiss at most',
  0.75,
  '',
  [0.5, 0.9],
  'our choice: less of a change is not worth a change',
);

export const LEAST_LEG = estimateRow(
  'a mend leaves no way shorter than',
  1.5,
  'm',
  [1, 3],
  'our choice: a stride',
);

export const SOFTEST_PASS = estimateRow(
  'a mend makes no pass softer than',
  4,
  'm/s',
  [3, 6],
  'our choice: softer dies on its way',
);

export const MEND_CHANGES_DRILL = estimateRow(
  'a mend is said to change the drill when the share of reps that come out as wanted moves by more than',
  0.15,
  '',
  [0.1, 0.25],
  'our choice: between six and nine in ten lies whether a drill teaches what it is for',
);
