import { estimateRow } from '../units/provenance.ts';

/** Judgements about the ice a drill takes, and about what is moved where it is to take less. */

/** Whoever stood farthest beyond the red line stands here then. */
export const BROUGHT_INSIDE = estimateRow(
  'those outside half ice are brought inside the red line by',
  1,
  'm',
  [0.5, 2],
  'our choice: a skater and her stick',
);

/** Who stood farther inside stays where she was. */
export const BROUGHT_WITHIN = estimateRow(
  'those are moved who stood within this of the red line, for half ice',
  6,
  'm',
  [4, 9],
  'our choice: about three strides, so that most of the drill stays as it was',
);

export const STRIDE_OVER_LINE = estimateRow(
  'a way over a line that takes no other part of the ice',
  1.5,
  'm',
  [1, 2],
  'our choice: a stride',
);
