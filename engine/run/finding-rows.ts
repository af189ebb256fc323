import type { LevelId } from '../skater/model.ts';
import { estimateRow, type Row } from '../units/provenance.ts';

/** Judgements of the findings about pucks that hurt, contact, and pucks that nobody fetches. */

/** A free puck faster than this is minded where people stand or skate. */
export const PUCK_HURTS_MPS = estimateRow(
  'a puck is minded from',
  15,
  'm/s',
  [12, 20],
  'above a typical pass of every level, below recreational slap shots of 22 m/s (laboratory, Villaseñor et al. 2006)',
);

/** Nearer than this to somebody of another group, a fast puck counts as going across the group. */
export const PUCK_ROOM_M = estimateRow(
  'room from a fast puck to another group',
  2,
  'm',
  [1, 3],
  'a body with its stick, and a shot that goes 10° wide over 6 m',
);

/** The two groups are not timed to each other: where the other is within this time counts. */
export const PUCK_ROOM_S = estimateRow(
  'another group may be early or late by',
  1,
  's',
  [0.5, 2],
  'groups that start on their own cues drift by about a second from rep to rep',
);

/** Skaters who wait in a line stand this far apart. */
export const WAIT_APART_M = estimateRow(
  'apart in a line that waits',
  1.2,
  'm',
  [0.8, 1.5],
  'two bodies in gear with their sticks; the same as paths that cross',
);

/** Nearer than this to the boards somebody who is caught has no way out. */
export const PINNED_M = estimateRow(
  'caught at the boards within',
  1.5,
  'm',
  [1, 2],
  'the danger zone of 0.5 to 1.5 m before the boards; the warning band painted on some rinks is 1.02 m',
);

/** Two who come together slower than this do not hit each other. */
export const CONTACT_MPS = estimateRow(
  'contact is felt from',
  2,
  'm/s',
  [1.5, 2.8],
  'youth body checks were measured at 2.05–2.76 m/s (Swenson et al. 2022)',
);

/** How far to the side of straight ahead counts as from the front. */
export const FRONT_RAD = estimateRow(
  'from the front is within',
  Math.PI / 3,
  'rad',
  [Math.PI / 4, Math.PI / 2],
  'the sides of a skater begin about 60° from straight ahead',
);

/** Age from which body checking is first taught and played. */
export const CHECKING_FROM_YEARS: Row = {
  name: 'body checking is first allowed from',
  value: 13,
  unit: 'years',
  range: [11, 15],
  source:
    'Canada: 13–14 years since 2013 (Black et al. 2017, Br J Sports Med 51(24):1767); other federations have their own age',
  status: 'sourced',
};

/** Girls and women. */
export const CHECKING_WOMEN: Row = {
  name: 'body checking in women’s hockey',
  value: 0,
  unit: 'of its levels',
  range: [0, 1],
  source: 'none (Tator, Blanchet, Ma 2022, Can J Neurol Sci); leagues differ, your federation’s rules decide',
  status: 'sourced',
};

/** The rule that keeps bodies apart at a level; null where body checking is part of the game. */
export const noCheckingRowOf = (level: LevelId): Row | null => {
  switch (level) {
    case 'u10':
    case 'u14':
      return CHECKING_FROM_YEARS;
    case 'collegeWomen':
      return CHECKING_WOMEN;
    default:
      return null;
  }
};

export const LEAST_GAP_HELD = estimateRow(
  'a gap is looked at from a wanted',
  1,
  'm',
  [0.5, 1.5],
  'our choice: a smaller one is body to body, and nothing is held',
);

export const INTO_BOARDS_FROM = estimateRow(
  'speed towards the boards that is looked at',
  1,
  'm/s',
  [0.5, 1.5],
  'our choice: well under the 1.8 m/s at which a fall head first is held dangerous',
);
