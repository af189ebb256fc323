import type { BoardsPart } from '../rink/boards.ts';
import type { IcePoint } from '../units/points.ts';
import type { RimMotion } from './rim.ts';
import type { Slowing } from './slide.ts';

/** A straight slide. `direction` is a unit vector, `edgeMps` = Rω. */
export interface SlideLeg {
  readonly kind: 'slide';
  readonly startS: number;
  readonly durationS: number;
  readonly startM: IcePoint;
  readonly direction: IcePoint;
  readonly startMps: number;
  readonly slowing: Slowing;
  readonly edgeMps: number;
}

/** Along a corner: on a circle about `centreM` from `fromRad`, anticlockwise for turn 1, clockwise for −1. */
export interface RimLeg {
  readonly kind: 'rim';
  readonly startS: number;
  readonly durationS: number;
  readonly centreM: IcePoint;
  readonly radiusM: number;
  readonly fromRad: number;
  readonly turn: 1 | -1;
  readonly motion: RimMotion;
}

export type PathLeg = SlideLeg | RimLeg;

/** One touch of the boards, or of a net. Angles are from the boards (0 = along them). `centreM` is the puck's centre at contact. */
export interface PathBounce {
  readonly timeS: number;
  readonly centreM: IcePoint;
  readonly boardsPointM: IcePoint;
  /** Of the boards; or a net that stands in the way. */
  readonly part: BoardsPart | 'post' | 'net';
  readonly incidenceRad: number;
  readonly angleOutRad: number;
  readonly speedBeforeMps: number;
  readonly speedAfterMps: number;
  readonly spinAfterRadps: number;
  readonly becomesRim: boolean;
}

export interface PuckPath {
  readonly legs: readonly PathLeg[];
  readonly bounces: readonly PathBounce[];
  readonly endTimeS: number;
  readonly ending: 'stopped' | 'timeUp' | 'bouncesUp';
  readonly puckRadiusM: number;
}
