import type { LineId } from '../rink/lines.ts';
import type { End, Side } from '../units/ends.ts';
import type { ActId, SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';

/**
 * A drill as it is written down: start places, what each does, and what starts each act.
 * This is the *draft* form: it may be unfinished or wrong; `playableOf` turns it into what can be run, or says why not.
 * Lists are records by id with a `rank`, so that two people can edit them at the same time.
 */
export interface DrillPlan {
  readonly spots: Readonly<Record<SpotId, Spot>>;
  /** Pucks that lie ready, also in heaps, or start on a stick. */
  readonly pucks: Readonly<Record<string, PuckPlace>>;
  readonly gear: Readonly<Record<string, Gear>>;
  /** Games on a part of the ice, played beside or instead of scripted acts. */
  readonly games?: Readonly<Record<string, SmallGame>>;
  /** How one rep follows the other; without it a rep starts when the one before has ended, and all go back to their own line. */
  readonly flow?: Flow;
}

export interface Spot {
  readonly rank: number;
  readonly side: Side;
  readonly kind: 'skater' | 'goalie' | 'coach';
  /** The role in this play as it stands in the disc: F1, D2, X1, LW. Not the jersey. */
  readonly role: string;
  readonly atM: IcePoint;
  readonly facingRad: number;
  /** The end it plays towards, where that is not the usual one: us towards plusX, them towards minusX. Its own net is at the other. */
  readonly attacks?: End;
  /** Skaters waiting behind the first one. */
  readonly waitingCount: number;
  readonly acts: Readonly<Record<ActId, Act>>;
}

export interface PuckPlace {
  readonly atM: IcePoint;
  /** Set when the puck starts on this spot's stick; `atM` is then only where it is drawn. */
  readonly ownerSpot?: SpotId;
  readonly count: number;
}

export interface Gear {
  readonly kind: 'pylon' | 'net' | 'smallNet' | 'divider';
  readonly atM: IcePoint;
  readonly facingRad: number;
}

/** A small area game: a region, who is in it, and who brings the next puck. What happens inside is the players' own. */
export interface SmallGame {
  readonly rank: number;
  /** Two opposite corners of the region, metres; its sides run along and across the sheet. */
  readonly fromM: IcePoint;
  readonly toM: IcePoint;
  /** Skaters of each side at once. */
  readonly usCount: number;
  readonly themCount: number;
  /** Ids of the gear that serve as its nets. */
  readonly nets: readonly string[];
  readonly resets: 'coach' | 'whoScored' | 'whoWasScoredOn';
  /** One go, seconds. */
  readonly shiftS: number;
}

export interface Flow {
  readonly next:
    | { readonly on: 'every'; readonly seconds: number }
    /** The puck, or the last skater of the rep, is over this line. */
    | { readonly on: 'clear'; readonly line: LineId }
    | { readonly on: 'end' };
  /** The rep drawn is played at one end, at both at once (the other a half turn of it), or at the two by turns. */
  readonly ends: 'one' | 'both' | 'byTurns';
  /** From the end of a rep until the next may start when `next` is `end`, seconds: pucks and places. */
  readonly pauseS: number;
  /** Whose line each joins after the rep; who is not named goes back to the own one. */
  readonly goesTo: Readonly<Record<SpotId, SpotId>>;
}

/**
 * Acts of one spot follow each other by rank; an act with a cue waits for it after the one before has ended. Acts that name
 * nobody and no place do it where the skater is then.
 */
export type Act = { readonly rank: number; readonly cue?: Cue } & ActDeed;

export type ActDeed =
  /** Follow the smooth curve from where the skater is through these points. `carry` needs the puck. */
  | {
      readonly kind: 'skate' | 'carry';
      readonly throughM: readonly IcePoint[];
      readonly facing: 'forward' | 'backward';
      readonly effortRatio: number;
      readonly stops: boolean;
    }
  /**
   * Pass to another spot's stick where it will be. `bank` off the boards, `saucer` through the air over sticks, `rim` hard along
   * the boards, `drop` left behind for who comes after (its speed is that of a push backward, 0 leaves it).
   */
  | {
      readonly kind: 'pass';
      readonly toSpot: SpotId;
      readonly way: PassWay;
      readonly speedMps: number;
    }
  | { readonly kind: 'shoot'; readonly atEnd: End; readonly speedMps: number }
  /** Go to the nearest free puck and take it. */
  | { readonly kind: 'pickUp'; readonly effortRatio: number }
  /** Leave the puck where it is. */
  | { readonly kind: 'leave' }
  | { readonly kind: 'hold'; readonly seconds: number }
  /**
   * Reactive: steer at full effort so as to meet that skater. Ends when within a lunge, when the cue of the next act comes,
   * or with the rep.
   */
  | { readonly kind: 'chase'; readonly whom: SpotId; readonly effortRatio: number }
  /** Reactive: a chase that goes on until the puck is won or gone: stick lift or stick on puck within reach. */
  | { readonly kind: 'steal'; readonly whom: SpotId; readonly effortRatio: number }
  /** Reactive: stay between that skater and the own net at this distance. Ends when the cue of the next act comes, or with the rep. */
  | { readonly kind: 'gap'; readonly whom: SpotId; readonly distanceM: number }
  /**
   * Reactive: stand with the stick in the lane from that skater to another, or to the own net when none is named, this share of
   * the way along it. Ends as a gap does.
   */
  | { readonly kind: 'screen'; readonly from: SpotId; readonly to?: SpotId; readonly alongRatio: number }
  /** Two bars: from the present speed to standing, as hard as the level can. */
  | { readonly kind: 'stop' }
  /** A tight turn, as tight as the speed allows, through this signed angle: anticlockwise positive, up to a full turn. */
  | { readonly kind: 'turn'; readonly angleRad: number; readonly effortRatio: number }
  /** Change between forward and backward while going on the same way; costs the level's transition time. */
  | { readonly kind: 'pivot' }
  /** Turn the body towards a spot, or the puck when none is named, without going anywhere. */
  | { readonly kind: 'face'; readonly whom?: SpotId };

export type ActKind = Act['kind'];

export const PASS_WAYS = ['direct', 'bank', 'saucer', 'rim', 'drop'] as const;
export type PassWay = (typeof PASS_WAYS)[number];

/** What starts an act. Spots are named by id; the puck's own crossing has no spot. */
export type Cue =
  | { readonly on: 'whistle' }
  | { readonly on: 'after'; readonly seconds: number }
  | { readonly on: 'receive'; readonly spot: SpotId }
  | { readonly on: 'shot'; readonly spot: SpotId }
  /** That skater has lost the puck: stolen, cut off, missed, or left. */
  | { readonly on: 'losesPuck'; readonly spot: SpotId }
  /** Somebody who chases that skater is within a lunge. */
  | { readonly on: 'caught'; readonly spot: SpotId }
  | { readonly on: 'spotCrosses'; readonly spot: SpotId; readonly line: LineId }
  /** That skater comes within `withinM` of the point. */
  | { readonly on: 'reaches'; readonly spot: SpotId; readonly atM: IcePoint; readonly withinM: number }
  | { readonly on: 'puckCrosses'; readonly line: LineId };
