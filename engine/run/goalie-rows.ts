import { estimateRow, type Row } from '../units/provenance.ts';

/** What a goalie can do about a shot. Hand, stick, leg and body times of four goalies, a magazine test of the 1960s; the rest is ours. */

const GOALIES =
  'hand 0.18–0.21, stick 0.26–0.29, leg 0.46–0.53 s of four professional goalies, magazine test of the 1960s';

export const GOALIE_REACTS_S: Row = {
  ...estimateRow('a goalie reacts to a shot in', 0.2, 's', [0.18, 0.25], GOALIES),
  status: 'derived',
};
export const GOALIE_SLIDE_MPS = estimateRow(
  'a goalie slides across the crease at',
  3,
  'm/s',
  [2, 4.5],
  'our estimate: post to post, 1.8 m, in about a second with the push; no measured figure found',
);
export const GOALIE_PUSH_S = estimateRow(
  'a goalie’s push, time constant',
  0.3,
  's',
  [0.2, 0.5],
  'our estimate: one push of the back leg',
);
/** To what is at the body already, and to the far post. */
export const GOALIE_NEAR_S = estimateRow('a goalie’s move, to the body', 0.1, 's', [0.05, 0.15], GOALIES);
export const GOALIE_FAR_S = estimateRow('a goalie’s move, to the post', 0.35, 's', [0.25, 0.5], GOALIES);
export const GOALIE_BODY_M = estimateRow(
  'half of what a goalie’s body covers',
  0.38,
  'm',
  [0.3, 0.5],
  'pads and arms in the stance, about the width of two shoulders',
);
export const SHOT_DIRECTION_SD_RAD = estimateRow(
  'spread of a shot’s direction',
  0.035,
  'rad',
  [0.02, 0.06],
  'two degrees: a hand’s width at three metres, as a pass of an adult',
);
export const SHOT_AIM_RATIO = estimateRow(
  'shots are aimed inside this part of the mouth',
  0.8,
  '',
  [0.6, 0.95],
  'nobody aims at the post itself',
);
export const GOALIE_RESET_S = estimateRow(
  'a goalie is ready again after',
  4,
  's',
  [3, 5],
  'one goalie coach: 3 to 5 s before a shot to get ready; no study behind it',
);

export const GOALIE_BEFORE_NET = estimateRow(
  'a goalie is that of a net when put no farther before it than',
  3.5,
  'm',
  [2.5, 5],
  'our choice: out at the top of the crease and a little more',
);
