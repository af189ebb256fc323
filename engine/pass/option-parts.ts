import type { PuckModel } from '../puck/puck-model.ts';
import type { Boards } from '../rink/boards.ts';
import type { SkaterModel } from '../skater/model.ts';
import type { End } from '../units/ends.ts';
import type { IcePoint, IceVelocity } from '../units/points.ts';
import type { BankCone } from './bank-cone.ts';
import type { LaneBand, LaneMargin } from './lane.ts';
import type { BankPass, DirectPass } from './pass-parts.ts';

/** A skater of a frozen scene. Without `velocityMps` (one picture does not tell it) the skater counts as standing, less surely. */
export interface OptionSkater {
  readonly id: string;
  readonly kind: 'skater' | 'goalie';
  readonly atM: IcePoint;
  readonly velocityMps?: IceVelocity;
  readonly model: SkaterModel;
}

/** A frozen scene in which one of us has the puck. Everybody inside the boards, metres. */
export interface OptionScene {
  readonly boards: Boards;
  readonly puck: PuckModel;
  readonly puckM: IcePoint;
  readonly carrierId: string;
  readonly us: readonly OptionSkater[];
  readonly them: readonly OptionSkater[];
  /** The end we attack. */
  readonly attacks: End;
  /** |x| of the attacking blue line's edge towards centre ice; without it offside is not judged. */
  readonly blueLineXM?: number;
}

/** One reason for a chance: a factor (0–1) or a figure with its unit. `id`: the opponent it is about. */
export interface WhyTerm {
  readonly term:
    | 'lane'
    | 'aim'
    | 'control'
    | 'margin'
    | 'clearance'
    | 'coneAtMeet'
    | 'arrivalSpeed'
    | 'freeFor'
    | 'spaceAhead';
  readonly value: number;
  readonly unit: '' | 's' | 'm' | 'm/s';
  readonly id?: string;
}

interface Rated {
  /** Chance that it comes off: untuned constants, for ranking; show with its margin. */
  readonly chance: number;
  readonly marginS: number;
  readonly why: readonly WhyTerm[];
}

export interface PassOption extends Rated {
  readonly kind: 'direct' | 'bank';
  readonly toId: string;
  readonly pass: DirectPass | BankPass;
  readonly margins: readonly LaneMargin[];
  /** `band` by the race for it, `heldStill` by the width of the lane when nobody moves. */
  readonly lane: { readonly band: LaneBand; readonly heldStill: LaneBand; readonly clearanceM: number };
  /** Of a bank pass. */
  readonly cone?: BankCone;
}

export interface CarryOption extends Rated {
  readonly kind: 'carry';
  readonly headingRad: number;
  /** Until the first opponent can reach the puck, s (the look-ahead when nobody can), and the way skated by then, m. */
  readonly freeForS: number;
  readonly spaceM: number;
  readonly byId?: string;
  readonly endsM: IcePoint;
}

export interface NoOption {
  readonly toId: string;
  readonly kind: 'direct' | 'bank';
  readonly reason: 'offside' | 'noDirectPass' | 'noBankPass';
}

export interface SceneOptions {
  /** Best first. At most one direct and one bank pass for each team mate, and one carry. */
  readonly options: readonly (PassOption | CarryOption)[];
  readonly none: readonly NoOption[];
  /** Ids of those whose velocity was not known. */
  readonly unknownVelocity: readonly string[];
}
