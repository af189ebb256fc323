import { estimateRow, type Row } from '../units/provenance.ts';

/** Saucer passes. */
const row = (name: string, value: number, range: Row['range'], source: string): Row =>
  estimateRow(name, value, 'm', range, source);

export const STICK_CLEAR_M = row(
  'a puck higher than this goes over a blade',
  0.1,
  [0.06, 0.3],
  'a blade is 5 to 8 cm high; the shaft half a metre from it is at 30 to 40 cm',
);

export const SAUCER_HIGHEST_M = row(
  'highest a saucer pass is lifted',
  0.4,
  [0.25, 0.6],
  'over the shaft near the blade; about 0.57 s in the air',
);

export const SAUCER_LANDS_BEFORE_M = row(
  'a saucer pass is meant to land this far before the blade',
  1.5,
  [0.5, 3],
  'flat on the ice when the blade has it',
);
