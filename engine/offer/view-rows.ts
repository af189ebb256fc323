import { estimateRow } from '../units/provenance.ts';

export const SHORTEST_LENS = estimateRow(
  'shortest focal length of a film camera, half diagonals of the picture',
  0.5,
  '',
  [0.4, 0.8],
  'our choice: 127° across the diagonal; a wider lens bends too much for one map',
);

export const LONGEST_LENS = estimateRow(
  'longest focal length of a film camera, half diagonals of the picture',
  12,
  '',
  [8, 30],
  'our choice: 9.5° across the diagonal, in which a third of a zone would fill the picture',
);

export const BENT_VIEW = estimateRow(
  'how far the axes of a view may be from square and from equally long',
  0.12,
  '',
  [0.05, 0.2],
  'our choice: a lens term of 2 %, or a picture cut by a tenth on one side, bends them by less',
);

export const STEEPEST_ROLL = estimateRow(
  'how far a camera may lean to one side, sine',
  0.2,
  '',
  [0.05, 0.35],
  'our choice: 11.5°, for a hand that holds a phone',
);

export const LOWEST_CAMERA = estimateRow(
  'lowest place of a camera above the ice',
  2,
  'm',
  [1, 4],
  'our choice: below it markings cannot be told apart',
);

export const HIGHEST_CAMERA = estimateRow(
  'highest place of a camera above the ice',
  45,
  'm',
  [30, 60],
  'our choice: under the roof of a large arena',
);

export const CAMERA_REACH = estimateRow(
  'farthest place of a camera from centre ice, along the ground',
  110,
  'm',
  [80, 130],
  'our choice: the last row of a large arena',
);

export const CIRCLE_MISFIT = estimateRow(
  'how far a second feature may be from where a circle alone puts it, share of its distance',
  0.2,
  '',
  [0.1, 0.4],
  'our choice: a circle ten metres wide tells far places poorly',
);

export const SAME_VIEW = estimateRow(
  'how far apart two views may put the middle one of all places and still be one view',
  0.5,
  'm',
  [0.3, 1],
  'our choice: as near as an offered calibration should be',
);

export const NEARER_CAMERA = estimateRow(
  'how much nearer a camera must be to its earlier place than its half turn, ratio',
  0.5,
  '',
  [0.3, 0.7],
  'our choice',
);

export const CREASE_SEEN = estimateRow(
  'share of the officials’ crease that must be seen to tell the sides',
  0.7,
  '',
  [0.5, 0.9],
  'our choice',
);

export const CREASE_UNSEEN = estimateRow(
  'share of it that may seem to be seen on the other side',
  0.3,
  '',
  [0.1, 0.4],
  'our choice: stray paint',
);

export const LEAST_CONTRAST = estimateRow(
  'how much redder or bluer than both its sides a line must be to be seen, ice = 0',
  0.07,
  '',
  [0.04, 0.15],
  'our choice; less in proportion where a line is thinner than 1.5 pixels',
);

export const SEEN_ODDS = estimateRow(
  'log odds for a view of ten pixels of line that are seen',
  1.8,
  '',
  [1, 2.5],
  'our choice: true lines are seen in three of four places, false ones in one of eight',
);

export const MISSING_ODDS = estimateRow(
  'the same for ten pixels that should be seen and are not',
  -1.3,
  '',
  [-2, -0.7],
  'our choice, by the same shares',
);

export const SPOT_SEEN_ODDS = estimateRow(
  'the same for a spot that is seen',
  5,
  '',
  [3, 8],
  'our choice: spots are rare, so one where it should be says much',
);

export const SPOT_MISSING_ODDS = estimateRow(
  'the same for a spot that is not',
  -2,
  '',
  [-4, -1],
  'our choice: a skater may stand on it',
);

export const UNEXPLAINED_ODDS = estimateRow(
  'the same for ten pixels of a found line that no marking explains',
  -0.6,
  '',
  [-1.3, -0.2],
  'our choice: advertisements and boards have lines of their own',
);

export const GIVEN_NEAR = estimateRow(
  'how far from a pin of the coach a view may draw its marking',
  12,
  'px',
  [6, 20],
  'our choice: a click on a small picture, and a view that is not yet measured',
);
