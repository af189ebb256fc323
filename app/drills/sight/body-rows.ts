import { estimateRow, type LevelId, type Row } from '@icewright/engine';

/** How tall people stand on the ice: what the view from the ice needs besides the run. */

const estimate = (name: string, value: number, range: Row['range'], source: string): Row =>
  estimateRow(name, value, 'm', range, source);

/** Standing height without skates. */
const HEIGHT_M: Readonly<Record<LevelId, number>> = {
  u10: 1.38,
  u14: 1.6,
  u18: 1.76,
  collegeWomen: 1.69,
  collegeMen: 1.83,
  pro: 1.85,
};

export const SKATES_M = estimate('skates lift by', 0.07, [0.05, 0.09], 'blade and holder, from memory');

/** Knees bent and head up: what is left of the height to the eyes. */
export const EYES_RATIO: Row = {
  name: 'eyes of a skater, share of the standing height',
  value: 0.86,
  unit: '',
  range: [0.78, 0.93],
  source: 'knees bent, head up; eyes about 11 cm below the top of the head of an adult standing',
  status: 'estimate',
};

export const heightOf = (level: LevelId): Row =>
  estimate(
    'height',
    HEIGHT_M[level],
    [HEIGHT_M[level] - 0.15, HEIGHT_M[level] + 0.15],
    'about the middle of the age',
  );

/** Eyes of a skater of this level above the ice, metres. */
export const eyeHeightM = (level: LevelId): number => (HEIGHT_M[level] + SKATES_M.value) * EYES_RATIO.value;

/** Eyes of a coach who stands on the bench's floor, behind the boards. */
export const BENCH_EYES_M = estimate(
  'eyes on the bench',
  1.9,
  [1.7, 2.2],
  'a standing adult on a floor 0.2 m above the ice',
);
export const BENCH_BEHIND_M = estimate(
  'behind the boards on the bench',
  1.5,
  [1, 2],
  'a bench is about 1.5 m deep',
);

export const STAND_EYES_M = estimate('eyes in the stand', 7, [4, 12], 'the upper rows of a small rink');
export const STAND_BEHIND_M = estimate(
  'behind the boards in the stand',
  9,
  [5, 15],
  'the upper rows of a small rink',
);

/** Net height under the bar: rule 2.1 of the rule books, 4 ft. */
export const BAR_M: Row = {
  name: 'net, under the bar',
  value: 1.219,
  unit: 'm',
  range: [1.2, 1.22],
  source: 'rule books, rule 2.1 (4 ft)',
  status: 'sourced',
};
/** The lowest side glass that the feet-type books allow: rule 1.3, 5 ft above the boards. */
export const GLASS_M: Row = {
  name: 'glass above the boards',
  value: 1.524,
  unit: 'm',
  range: [1.5, 1.83],
  source: 'rule books, rule 1.3 (5 ft at the sides; 1.8 m in the metric book)',
  status: 'sourced',
};
