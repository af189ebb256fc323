import type { BoardsPart } from '../rink/boards.ts';
import type { IcePoint, IceVelocity } from '../units/points.ts';

/**
 * Who is to get the puck: middle of the body now, its velocity, and where the blade is held (a fixed offset in the ice
 * frame, metres). With `drive` the receiver skates at full effort in one direction: v̇ = (V·û − v)/τ; without, it keeps
 * its velocity. No reaction time: the pass is agreed.
 */
export interface Receiver {
  readonly atM: IcePoint;
  readonly velocityMps: IceVelocity;
  readonly bladeOffsetM: IcePoint;
  readonly drive?: { readonly topSpeedMps: number; readonly tauS: number; readonly driveRad: number };
}

/** A pass straight to the blade. `leadM`: how far ahead of the blade's place at release the two meet. */
export interface DirectPass {
  readonly kind: 'direct';
  readonly launchRad: number;
  readonly launchSpeedMps: number;
  readonly arrivalS: number;
  readonly arrivalSpeedMps: number;
  readonly meetM: IcePoint;
  readonly leadM: number;
}

/** One touch of the boards on the way. `angleInRad`, `angleOutRad` from the boards, 0 = along them. */
export interface BankBounce {
  readonly timeS: number;
  readonly centreM: IcePoint;
  readonly boardsPointM: IcePoint;
  readonly part: BoardsPart;
  readonly angleInRad: number;
  readonly angleOutRad: number;
}

/**
 * A pass off the boards that meets the blade. `missPerRadM`: how far the miss moves per radian of aim.
 * `followsBoards`: it meets a corner so flat, or twice so soon, that in truth it would follow the boards (the rim of
 * `puckPath`); draw it as doubtful.
 */
export interface BankPass {
  readonly kind: 'bank';
  readonly launchRad: number;
  readonly launchSpeedMps: number;
  readonly bounces: readonly BankBounce[];
  readonly arrivalS: number;
  readonly arrivalSpeedMps: number;
  readonly meetM: IcePoint;
  readonly missPerRadM: number;
  readonly followsBoards: boolean;
}

/** Launch directions, anticlockwise from the first to the second, (−π, π]. */
export type LaunchWindow = readonly [fromRad: number, toRad: number];
