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
  /** Pucks that lie ready or start on a stick. One rep uses the puck of the first act that needs one. */
  readonly pucks: Readonly<Record<string, PuckPlace>>;
  readonly gear: Readonly<Record<string, Gear>>;
}

export interface Spot {
  readonly rank: number;
  readonly side: Side;
  readonly kind: 'skater' | 'goalie' | 'coach';
  /** The role in this play as it stands in the disc: F1, D2, X1, LW. Not the jersey. */
  readonly role: string;
  readonly atM: IcePoint;
  readonly facingRad: number;
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
  readonly kind: 'pylon' | 'net' | 'divider';
  readonly atM: IcePoint;
  readonly facingRad: number;
}

/** Acts of one spot follow each other by rank; an act with a cue waits for it after the one before has ended. */
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
  /** Pass to another spot's stick where it will be. */
  | {
      readonly kind: 'pass';
      readonly toSpot: SpotId;
      readonly way: 'direct' | 'bank';
      readonly speedMps: number;
    }
  | { readonly kind: 'shoot'; readonly atEnd: End; readonly speedMps: number }
  | { readonly kind: 'hold'; readonly seconds: number }
  /**
   * Reactive: steer at full effort so as to meet that skater. Ends when within a lunge, when the cue of the next act comes,
   * or with the rep.
   */
  | { readonly kind: 'chase'; readonly whom: SpotId; readonly effortRatio: number }
  /** Reactive: stay between that skater and our net at this distance. Ends when the cue of the next act comes, or with the rep. */
  | { readonly kind: 'gap'; readonly whom: SpotId; readonly distanceM: number };

export type ActKind = Act['kind'];

/** What starts an act. Spots are named by id; the puck's own crossing has no spot. */
export type Cue =
  | { readonly on: 'whistle' }
  | { readonly on: 'after'; readonly seconds: number }
  | { readonly on: 'receive'; readonly spot: SpotId }
  | { readonly on: 'shot'; readonly spot: SpotId }
  | { readonly on: 'spotCrosses'; readonly spot: SpotId; readonly line: LineId }
  | { readonly on: 'puckCrosses'; readonly line: LineId };
