import { estimateRow } from '../units/provenance.ts';

/** Defaults of the drill run. The skater's own figures (V, τ, stop, reach, reaction) are rows of the level. */

/** Nearest a skater's middle comes to the boards, and the reserve in the stopping rule. */
export const BOARDS_ROOM_M = estimateRow(
  'room to the boards',
  0.5,
  'm',
  [0.3, 0.8],
  'half a skater in gear; the d − 0.5 of the stopping rule',
);

/** The carried puck lies this far before the skater's middle, along the facing. */
export const BLADE_AHEAD_M = estimateRow(
  'blade ahead of the middle',
  1.0,
  'm',
  [0.7, 1.5],
  'well inside the reach with two hands, 1.2 to 1.6 m by level',
);

/** A rep is never longer than this. */
export const REP_LIMIT_S = estimateRow('longest rep', 40, 's', [20, 60], 'about one shift');

export const PATHS_NEAR_M = estimateRow(
  'paths cross within',
  1.2,
  'm',
  [0.8, 2],
  'two skaters with sticks; most injuries are unintended contact (Darling et al. 2010: 66 %)',
);

export const PATHS_NEAR_S = estimateRow(
  'paths cross within this time',
  0.3,
  's',
  [0.2, 0.5],
  'timing of a rep differs by about this much',
);

export const BOARDS_ZONE_M = estimateRow(
  'last metres before the boards',
  3,
  'm',
  [2, 4],
  'the danger zone of 0.5 to 1.5 m and a stride before it',
);

export const ACTS_OVERLAP_S = estimateRow(
  'a cue may come this early',
  0.5,
  's',
  [0.2, 1],
  'a skater can hold back half a second without changing what is practised',
);

/** How quickly a skater in a gap sets the speed that is wanted. */
export const GAP_RESPONSE_S = estimateRow(
  'response time of the gap',
  0.1,
  's',
  [0.05, 0.2],
  'a part of one push; the gap closes with four times this, which is the quickest without overshoot',
);

/** A chase looks ahead no further than this for the place to meet. */
export const CHASE_LOOK_S = estimateRow(
  'how far ahead a chaser looks',
  3,
  's',
  [1, 5],
  'nobody foresees a skater longer; straight on at the present speed',
);

/** Slower than this a skater stands. */
export const STANDING_MPS = estimateRow(
  'stands',
  0.05,
  'm/s',
  [0.01, 0.2],
  'not to be seen at a step of 1/120 s',
);

/** The facing follows the direction of motion no faster than this. */
export const TURN_RATE_RADPS = estimateRow(
  'quickest turn of the body',
  6,
  'rad/s',
  [4, 10],
  'half a turn in half a second, as a change between forward and backward takes 0.25 to 0.6 s',
);

/** A received puck comes to the middle of the blade in this time. */
export const SETTLE_S = estimateRow(
  'time to settle a received puck',
  0.1,
  's',
  [0.05, 0.25],
  'the drawn puck joins the blade without a jump; the control rate of the level is not used here',
);

/** Efforts below this do not get a skater anywhere and are run as this. */
export const LEAST_EFFORT_RATIO = estimateRow('least effort', 0.1, '', [0.05, 0.3], 'a slow glide');

/** A skater who has caught somebody stays this near: beside, not on top. */
export const SHADOW_BESIDE_M = estimateRow(
  'beside the one caught',
  1.5,
  'm',
  [1.2, 1.8],
  'within the lunge of every level, outside the bodies',
);

/** Skaters who are steered keep their bodies this far from others'. */
export const KEEP_APART_M = estimateRow(
  'skaters keep apart',
  1.2,
  'm',
  [0.9, 1.6],
  'two bodies in gear with their arms; the same as paths that cross',
);

/** How far ahead a steered skater sees another body come. */
export const KEEP_APART_S = estimateRow(
  'skaters mind each other this far ahead',
  1.2,
  's',
  [0.6, 1.5],
  'a reaction and a push to the side',
);

/** How quickly the missing room between two skaters is made up. */
export const MAKE_ROOM_S = estimateRow('time to make room', 0.25, 's', [0.15, 0.5], 'one push to the side');

/** Two bodies nearer than this, middle to middle, touch. */
export const BODIES_TOUCH_M = estimateRow(
  'bodies touch within',
  0.8,
  'm',
  [0.6, 1],
  'shoulder to shoulder in gear: twice the half body of the room to the boards, less the give',
);

/** Touching for longer than this is said. */
export const BODIES_TOUCH_S = estimateRow(
  'bodies touch for',
  0.2,
  's',
  [0.1, 0.4],
  'shorter than this is within how much the timing of a rep differs',
);

/** A gap is held within this part of the wanted distance. */
export const GAP_TOLERANCE_RATIO = estimateRow(
  'a gap is held within this part of it',
  0.35,
  '',
  [0.2, 0.5],
  'half a stick on a gap of a stick and a half',
);

/** A gap that is off for no longer than this is held. */
export const GAP_OFF_S = estimateRow('a gap may be off for', 0.5, 's', [0.3, 1], 'one stride and a look');

/** A gap is judged from when it is first right, at the latest this long after its act has started. */
export const GAP_SETTLE_S = estimateRow(
  'time to set a gap',
  3,
  's',
  [2, 4],
  'fifteen metres from standing at full effort',
);

/** A skater faster than this leaves in the direction of motion; a slower one in any. */
export const CARRIES_ON_MPS = estimateRow(
  'carries on along its motion from',
  0.5,
  'm/s',
  [0.2, 1],
  'one step turns a skater this slow',
);

/** Slower than this the facing is kept: the direction of so small a velocity means nothing. */
export const FACING_FROM_MPS = estimateRow(
  'faces the way it moves from',
  0.3,
  'm/s',
  [0.1, 0.5],
  'a hand wide in a third of a second',
);

/** A skater who brakes exactly in time is not flagged for rounding. */
export const BOARDS_TOLERANCE_RATIO = estimateRow(
  'braking counts as in time up to',
  1.02,
  '',
  [1, 1.05],
  'rounding of places sampled at 120 Hz',
);

/** Faster than this a skater may still cross a line that somebody's cue waits for. */
export const STILL_MOVES_MPS = estimateRow(
  'still under way from',
  0.2,
  'm/s',
  [0.1, 0.5],
  'four times the speed at which a skater stands: a glide of a few centimetres is left',
);

/** Spread of the speed of a pass as a share of it. */
export const PASS_SPEED_SD_RATIO = estimateRow(
  'spread of pass speed',
  0.07,
  '',
  [0.03, 0.15],
  'a pass is hit to about a metre a second',
);

/** A route through closer points would copy the ± of the following. */
export const DRILL_POINT_EVERY = estimateRow(
  'how often a way followed on film gives a point of a drill’s route',
  0.8,
  's',
  [0.4, 2],
  'our choice: fewer points leave out turns, more copy the ± of the following',
);

export const LEAST_WAY = estimateRow(
  'length of a way followed on film below which a skater only stands in the drill',
  2,
  'm',
  [1, 4],
  'our choice: about what standing and drifting makes',
);

export const RUN_UP_FROM = estimateRow(
  'speed at the beginning of a stretch of film from which a skater gets a run-up in its drill',
  1,
  'm/s',
  [0.5, 2],
  'our choice: slower is a drift, which two strides make',
);

export const RUN_UP_MOST = estimateRow(
  'longest run-up to the beginning of a stretch of film',
  15,
  'm',
  [10, 20],
  'our choice: every level is within a tenth of its top speed by then, and a longer one takes the drill into the other zone',
);

export const REP_WAITS = estimateRow(
  'a rep waits for a pass or a shot that went astray',
  2,
  's',
  [1, 4],
  'our choice: so long somebody looks after it',
);

export const PUSHED_FROM = estimateRow(
  'a puck that is left with a push moves on from',
  0.3,
  'm/s',
  [0.1, 0.6],
  'our choice: weaker does not take it off the place of the blade',
);
