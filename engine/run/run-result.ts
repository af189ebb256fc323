import type { LineId } from '../rink/lines.ts';
import type { ActId, SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import type { Status } from '../units/provenance.ts';

/** One computed rep. Sample i of every track is at `i / stepHz` seconds after the whistle. */
export interface Run {
  readonly stepHz: number;
  readonly sampleCount: number;
  readonly durationS: number;
  readonly tracks: readonly Track[];
  /** Every puck; those of a heap that nobody takes are one. Empty when the drill has none. */
  readonly pucks: readonly PuckTrack[];
  /** In order of time. */
  readonly events: readonly RunEvent[];
  readonly findings: readonly Finding[];
}

/** What one spot does. Metres, metres a second, radians. */
export interface Track {
  readonly spot: SpotId;
  readonly xM: Float64Array;
  readonly yM: Float64Array;
  readonly xMps: Float64Array;
  readonly yMps: Float64Array;
  readonly facingRad: Float64Array;
  /** Index into `acts`, −1 while waiting. */
  readonly actIndex: Int16Array;
  readonly acts: readonly ActId[];
  readonly distanceM: number;
}

export interface PuckTrack {
  readonly xM: Float64Array;
  readonly yM: Float64Array;
  /** Index into `tracks`, −1 while the puck is free. */
  readonly owner: Int16Array;
  /** How many pucks these are: more than one for what lies in a heap to the end. */
  readonly count: number;
}

export type RunEvent = { readonly timeS: number; readonly atM: IcePoint } & (
  | { readonly kind: 'actStarts' | 'actEnds'; readonly spot: SpotId; readonly act: ActId }
  | {
      readonly kind: 'pass';
      readonly spot: SpotId;
      readonly to: SpotId;
      readonly act: ActId;
      readonly speedMps: number;
      /** Index into `pucks`. */
      readonly puck: number;
    }
  /** Off the boards when nothing else is named. */
  | { readonly kind: 'bounce'; readonly off?: 'post' | 'net' }
  | { readonly kind: 'receive'; readonly spot: SpotId; readonly from: SpotId }
  | { readonly kind: 'intercept'; readonly spot: SpotId; readonly from: SpotId }
  | {
      readonly kind: 'shot';
      readonly spot: SpotId;
      readonly act: ActId;
      readonly speedMps: number;
      readonly puck: number;
    }
  /** The keeper of a gap begins to turn. */
  | { readonly kind: 'turnsRound'; readonly spot: SpotId; readonly to: 'forward' | 'backward' }
  | { readonly kind: 'pickUp'; readonly spot: SpotId }
  | { readonly kind: 'leave'; readonly spot: SpotId }
  /** Won from the stick of `from`. */
  | { readonly kind: 'steal'; readonly spot: SpotId; readonly from: SpotId }
  /** Off the stick of `spot`, and nobody’s: knocked off by an opponent, or a pass not brought under control. */
  | { readonly kind: 'loose'; readonly spot: SpotId; readonly by?: SpotId }
  | { readonly kind: 'goal'; readonly spot: SpotId; readonly puck: number }
  /** `spot` is the goalie. */
  | { readonly kind: 'save'; readonly spot: SpotId; readonly from: SpotId; readonly puck: number }
  | { readonly kind: 'wide'; readonly spot: SpotId; readonly puck: number }
  | { readonly kind: 'spotCrosses'; readonly spot: SpotId; readonly line: LineId }
  | { readonly kind: 'puckCrosses'; readonly line: LineId }
  | { readonly kind: 'caught'; readonly spot: SpotId; readonly by: SpotId }
);

export type FindingKind =
  | 'receiverCannotGetThere'
  | 'laneShut'
  | 'noBankPass'
  | 'cueNeverFires'
  | 'twoActsAtOnce'
  | 'noPuckToPlay'
  | 'pathsCrossTooFast'
  | 'tooFastIntoBoards'
  | 'offTheIce'
  | 'gapNotHeld'
  | 'bodiesTouch'
  | 'throughNet'
  | 'passDiesShort'
  | 'puckLeftBehind'
  | 'tooFewPucks'
  | 'shotAcrossGroup'
  | 'contactBelowAge'
  | 'lineStandsTooLong'
  | 'tooFewSkaters'
  | 'goalieHasNoTime'
  | 'lineInTheWay'
  | 'gameOffTheIce'
  | 'gameTooCrowded'
  | 'repThroughGame'
  | 'netOutsideGame'
  | 'netNearBoards';

/** Something the coach must know before the whistle: where, when, how much against what. */
export interface Finding {
  readonly kind: FindingKind;
  /** `look`: change the drill or accept it knowingly. `know`: worth knowing. */
  readonly weight: 'look' | 'know';
  readonly timeS: number;
  readonly atM: IcePoint;
  readonly spots: readonly SpotId[];
  readonly act?: ActId;
  readonly value: number;
  readonly threshold: number;
  readonly unit: string;
  /** Speed that belongs to the finding, where the value is not one: towards the boards, of the puck past somebody, of who is kept off. */
  readonly speedMps?: number;
  readonly status: Status;
  readonly source: string;
}
