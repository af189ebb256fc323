import { estimateRow } from '../units/provenance.ts';

/** How people differ from each other and from themselves, where the level's rows do not say it. */

export const TAU_SD_RATIO = estimateRow(
  'spread of the time constant between skaters',
  0.06,
  '',
  [0.03, 0.1],
  'on-ice sprint profiles repeat within a CV of 10 % (Perez, Guilhem & Brocherie 2022); people of one team differ less',
);

export const REACTION_SD_RATIO = estimateRow(
  'spread of a reaction, read and choose',
  0.2,
  '',
  [0.1, 0.3],
  'our estimate: between people and from go to go together',
);

export const EXPECTED_REACTION_SD_RATIO = estimateRow(
  'spread of a reaction, expected event',
  0.12,
  '',
  [0.06, 0.2],
  'our estimate: less than where a choice is made',
);

/** For a skater with timed tests of her own: what is left is how she differs from day to day. */
export const OWN_SPEED_SD_RATIO = estimateRow(
  'spread of one skater’s own speed from go to go',
  0.02,
  '',
  [0.01, 0.03],
  'our estimate: fatigue and ice within one practice',
);

/** Draws further out than this are set to it: nobody stands still or flies. */
export const SPREAD_CUT_SD = estimateRow(
  'a draw is cut at this many standard deviations',
  3,
  '',
  [2.5, 4],
  'one in 370 is further out',
);

/** "Level with the puck" when nothing else is asked for. */
export const LEVEL_WITHIN_M = estimateRow(
  'level with the puck within',
  0.5,
  'm',
  [0, 1.5],
  'our choice: half a body; a stick reaches further',
);

export const ASKED_KEPT_RATIO = estimateRow(
  'reps that must still come to the question, of those that do now',
  0.8,
  '',
  [0.6, 0.95],
  'our choice: a drill that is changed to come out well must go on being played',
);

export const ASKED_LEAST_RATIO = estimateRow(
  'reps that must come to the question at all',
  0.1,
  '',
  [0.05, 0.5],
  'our choice: of fewer than one in ten the rate is that of luck',
);

/** Each way. */
export const TUNE_MOVES = estimateRow(
  'a spot may be moved for a tuned answer by',
  8,
  'm',
  [5, 12],
  'our choice: beyond it is another drill',
);

export const TUNE_DELAY = estimateRow(
  'longest delay a tuned answer may have',
  5,
  's',
  [3, 8],
  'our choice: nobody holds still longer before an act',
);

export const TUNE_GAP = estimateRow(
  'widest gap a tuned answer may have',
  8,
  'm',
  [6, 10],
  'our choice: wider is no gap that is kept',
);

export const TUNE_SOFTEST = estimateRow(
  'softest pass of a tuned answer',
  5,
  'm/s',
  [3, 8],
  'our choice: softer dies on its way',
);

export const TUNE_HARDEST = estimateRow(
  'hardest pass of a tuned answer',
  25,
  'm/s',
  [20, 30],
  'our choice: about the hardest passes of grown players',
);

export const TUNE_EFFORT = estimateRow(
  'least effort of a tuned answer',
  0.4,
  '',
  [0.3, 0.6],
  'our choice: with less of it nobody trains',
);
