import { estimateRow } from '../units/provenance.ts';

/**
 * The contest for a carried puck. No study of sticks on pucks was found: every figure is an estimate, and a team fits the first
 * three to its own tagged contests (`fitContest`).
 */

export const CONTEST_RATE_PER_S = estimateRow(
  'how soon a stick on the carrier wins the puck, from the front',
  1,
  '1/s',
  [0.4, 2.5],
  'about two of three carriers lose it to a stick that can be on it for a whole second; a battle is a matter of a second or two',
);

export const CONTEST_SIDE_RATIO = estimateRow(
  'the same from the side, stick on puck',
  0.9,
  '',
  [0.5, 1.4],
  'the carrier puts the body between, but on one side only',
);

export const CONTEST_BEHIND_RATIO = estimateRow(
  'the same from behind, stick lift',
  0.6,
  '',
  [0.3, 1],
  'the body is in the way and the stick must come under the other’s',
);

export const CONTEST_SPEED_MPS = estimateRow(
  'relative speed at which half the chance is left',
  3,
  'm/s',
  [1.5, 5],
  'a stick that goes by at three metres a second is within a blade of the puck for a tenth of one',
);

export const SIDE_REACH_RATIO = estimateRow(
  'reach to a side / reach to the front',
  0.8,
  '',
  [0.6, 1],
  'full on the stick side, about 60 % on the off side; the drill does not say which hand, so the middle of the two',
);

export const BEHIND_REACH_RATIO = estimateRow(
  'reach behind / reach to the front',
  0.35,
  '',
  [0.2, 0.5],
  'nobody plays a puck behind the own back for long',
);

export const LIFTED_FROM_M = estimateRow(
  'the stick can be lifted from here on, before the carrier’s middle',
  0.5,
  'm',
  [0.3, 0.7],
  'the lower half of the stick between the hands and the blade',
);

export const CONTAIN_RATIO = estimateRow(
  'who keeps a gap without help plays the puck at this part of the rate',
  0.1,
  '',
  [0.05, 0.3],
  'without help the gap comes first and the stick only steers, so about one carry in seven is poked away in the second and a half before the line; contain, and force with help: coaching text on gap control',
);

export const HELP_S = estimateRow(
  'a mate who is after the puck is help when this far from the carrier at full speed',
  1,
  's',
  [0.6, 1.5],
  'a carrier loses about a second in getting by a stick: who comes within that second covers for a defender who is beaten',
);

export const FORCE_GAP_M = estimateRow(
  'who has help stands this near to the puck, between it and the net',
  1,
  'm',
  [0.7, 1.5],
  'stick on puck: the blade is a metre before the middle',
);

export const CLEAN_STEAL_RATIO = estimateRow(
  'won contests after which the winner has the puck',
  0.55,
  '',
  [0.3, 0.8],
  'the others end with a loose puck',
);

export const LOOSE_KEEPS_RATIO = estimateRow(
  'speed a puck keeps that is knocked loose',
  0.6,
  '',
  [0.2, 1],
  'knocked off the blade, not stopped',
);

export const LOOSE_TURN_RAD = estimateRow(
  'a puck that is knocked loose turns away from the stick by',
  0.6,
  'rad',
  [0, 1.2],
  'knocked across the way of the carrier',
);

export const LOOSE_LEAST_MPS = estimateRow(
  'a puck that is knocked loose goes at least',
  1.5,
  'm/s',
  [0.5, 3],
  'a tap with the blade',
);

export const BOBBLE_KEEPS_RATIO = estimateRow(
  'speed a pass keeps that comes off the blade',
  0.2,
  '',
  [0.05, 0.5],
  'the blade takes most of it; the puck drops off within a stride',
);
