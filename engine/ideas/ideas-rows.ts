import { estimateRow } from '../units/provenance.ts';

/** Defaults of the likeness to the game and of the ideas: all of them our own judgement. */

/** What somebody counts who stood in the picture and is not in the drill, or the other way round. */
export const MISSING_M = estimateRow(
  'somebody missing counts as',
  8,
  'm',
  [5, 12],
  'about the way between two skaters of a five in one zone',
);

export const RUN_UP_M = estimateRow(
  'run-up before the picture',
  14,
  'm',
  [8, 20],
  'two seconds from standing: game speed is nearly reached when the picture comes',
);

export const FINISH_FROM_GOAL_M = estimateRow(
  'a rush ends before the goal line',
  8,
  'm',
  [6, 11],
  'stop room of every level in front of net and boards, and a shot from the house',
);

export const PICTURE_M = estimateRow(
  'about the puck',
  18,
  'm',
  [12, 25],
  'who is further away changes nothing in the next two seconds',
);

export const PYLON_M = estimateRow(
  'in the way',
  8,
  'm',
  [4, 12],
  'near enough to be skated or passed around',
);

/** Shares in which the thing wanted comes: as hard as a drill should be, easier, harder. */
export const WANTED_RATIO = estimateRow(
  'comes in so many reps',
  0.6,
  '',
  [0.5, 0.7],
  'hard enough that it must be wanted, and yet more often done than not: common practice, no source',
);
export const SIMPLER_RATIO = estimateRow('simpler', 0.85, '', [0.75, 0.95], 'nearly always, for a first day');
export const HARDER_RATIO = estimateRow('harder', 0.35, '', [0.2, 0.45], 'one in three, when it is a habit');

/** What counts in the order of ideas, in metres of likeness. */
export const PART_COSTS_M = estimateRow(
  'one part more',
  0.15,
  'm',
  [0.05, 0.4],
  'the simplest drill that sets the problem is the best; a part is a person, an act, a cue or a thing',
);
export const FINDING_COSTS_M = estimateRow('a finding to look at', 2, 'm', [1, 4], 'it must be mended first');
export const MISSED_COSTS_M = estimateRow(
  'off the wanted rate by a tenth',
  1,
  'm',
  [0.5, 2],
  'too easy or too hard teaches less',
);
export const GO_GAINS_M = estimateRow(
  'one rep a minute more',
  0.25,
  'm',
  [0.1, 0.5],
  'more goes, more learning: the reason for simple drills',
);
export const MOVING_GAINS_M = estimateRow(
  'ten in a hundred more move',
  0.5,
  'm',
  [0.2, 1],
  'the same, for all',
);

export const COACH_BEHIND = estimateRow(
  'a coach passes from behind the one who gets it by',
  6,
  'm',
  [4, 9],
  'our choice: a short pass that she sees over her shoulder',
);

export const COACH_ASIDE = estimateRow(
  'a coach passes from the side of the one who gets it by',
  9,
  'm',
  [6, 12],
  'our choice: out of the way of the rep',
);

export const IDEA_TEAM = estimateRow(
  'skaters that the lines of an idea are drawn for',
  20,
  '',
  [15, 22],
  'our choice: a full team',
);

export const IDEA_WAITING = estimateRow(
  'waiting skaters drawn at one line of an idea, at most',
  5,
  '',
  [3, 8],
  'our choice: a longer line is no longer counted by eye',
);

export const IDEA_PUCKS = estimateRow(
  'pucks laid out beside the coach of an idea',
  12,
  '',
  [6, 30],
  'our choice: a few minutes of reps',
);

export const IDEA_MOVES = estimateRow(
  'a start may be moved for a wanted rate by',
  12,
  'm',
  [8, 15],
  'our choice: beyond it is another picture',
);

export const GOES_ON = estimateRow(
  'who goes with the play goes on beyond the picture by',
  6,
  'm',
  [4, 8],
  'our choice: about a second',
);

export const IDEA_GAP_RATIO = estimateRow(
  'share of an asked gap that a defender of an idea tries to keep',
  0.7,
  '',
  [0.5, 0.9],
  'our choice: who tries for all of it is outside it half the time',
);

export const START_APART = estimateRow(
  'two of an idea start no nearer to each other than',
  2.5,
  'm',
  [2, 3.5],
  'our choice: room for a skater and the stick',
);

export const ROOM_BEFORE_LINE = estimateRow(
  'a line that an idea is about is farther off than',
  6,
  'm',
  [4, 9],
  'our choice: three strides; nearer it is over before anything can come of it',
);
