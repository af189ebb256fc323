import { estimateRow, type Row } from '../units/provenance.ts';

export const MIND_KEPT: Row = estimateRow(
  'how long a skater goes on wanting the same velocity, while his way is smoothed',
  0.6,
  's',
  [0.3, 1.5],
  'our choice: between a reaction and a stride or two; the shorter, the more freely the way bends',
);

export const BODY_HEIGHT: Row = estimateRow(
  'height of a skater with skates and helmet, bent as he skates',
  1.75,
  'm',
  [1.3, 2.1],
  'our choice; only the part of the picture that is compared hangs on it',
);

export const BODY_HALF_WIDTH: Row = estimateRow(
  'half the width of a skater that is compared',
  0.45,
  'm',
  [0.3, 0.7],
  'our choice: shoulders and arms, without the stick',
);

export const TEMPLATE_KEPT: Row = estimateRow(
  'how long what a skater looks like is remembered while he is followed',
  0.25,
  's',
  [0.1, 1],
  'our choice: a stride changes a body in half a second, a shorter memory drifts more',
);

export const FIRST_LOOK_KEPT: Row = estimateRow(
  'how long what a skater looked like in the hand frame counts beside what he looked like lately',
  0.8,
  's',
  [0.3, 3],
  'our choice: within about a second he has turned or taken two strides',
);

export const MOST_UNLIKE: Row = estimateRow(
  'how unlike a place may be to the skater and still be him (share of what sets him off from the ice)',
  0.6,
  '',
  [0.3, 0.9],
  'our choice: two bodies of one team behind each other differ by about as much',
);

export const EDGE_NEAR: Row = estimateRow(
  'how near the side of the picture feet may be, and still be believed to be the skater’s',
  0.2,
  'm',
  [0, 0.45],
  'our choice: nearer, up to half of the body is out of the picture, and a line of the ice is as like it as he is',
);

export const FAR_FROM_GUESS: Row = estimateRow(
  'sds from what the hand frames alone say, from which on a place is not believed to be the skater',
  3,
  '',
  [2, 5],
  'our choice',
);

export const FOLLOW_SD: Row = estimateRow(
  'how well a followed body tells where its feet are, next to a hand frame (sd, each way)',
  0.05,
  'm',
  [0.02, 0.3],
  'our choice: most looks are so near on films A and D of the fixtures; held on B and C',
);

export const FOLLOW_DRIFT: Row = estimateRow(
  'by how much that grows each second away from a hand frame (sd)',
  0.08,
  'm/s',
  [0.02, 0.4],
  'our choice, set on films A and D of the fixtures and held on B and C',
);

export const ERRS_TOGETHER: Row = estimateRow(
  'how long the error of a followed body stays the same',
  0.4,
  's',
  [0.1, 1],
  'our choice: about a stride; frames within it count as one',
);

export const MEET: Row = estimateRow(
  'how near each other forward and backward following are where they have the same body',
  0.6,
  'm',
  [0.3, 1],
  'our choice: less than a body’s width and its lean',
);

export const MET_SHARE: Row = estimateRow(
  'share of the frames in which both ways must have the same body, or he is looked for once more',
  0.8,
  '',
  [0.5, 1],
  'our choice',
);

export const UNCHECKED: Row = estimateRow(
  'how many times as unsure a way is that the other did not meet again',
  3,
  '',
  [1, 6],
  'our choice, set on films A and D of the fixtures and held on B and C',
);

export const HEAVY_TAIL: Row = estimateRow(
  'degrees of freedom of the errors of found places (Student’s t): the fewer, the less a far one counts',
  3,
  '',
  [2, 10],
  'our choice: most are as near as a lean, a few belong to another body',
);

export const WAYS_APART: Row = estimateRow(
  'sds apart from which on forward and backward following disagree',
  3,
  '',
  [2, 5],
  'our choice',
);

export const BEYOND_HANDS: Row = estimateRow(
  'how far a skater is followed beyond the first and the last frame in which a hand put him',
  2,
  's',
  [0.5, 5],
  'our choice: one way alone cannot be checked by the other',
);

export const TOO_UNSURE: Row = estimateRow(
  'sd of a skater’s place from which on it is not told',
  1.5,
  'm',
  [0.5, 3],
  'our choice: he may then be anywhere within the width of a zone’s circle',
);
