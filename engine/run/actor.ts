import { BLADE_AHEAD_M, FACING_FROM_MPS, GAP_RESPONSE_S, TURN_RATE_RADPS } from '../drill/drill-rows.ts';
import type { Body } from '../drill/in-boards.ts';
import type { PlayableSpot } from '../drill/playable-parts.ts';
import { movingBodyAt } from '../motion/moving-body.ts';
import type { PlannedRoute } from '../motion/planned-route.ts';
import type { Push } from '../motion/reactive-step.ts';
import { type Sight, sightOf } from '../motion/steer-chase.ts';
import { STEP_S } from '../motion/stretch.ts';
import type { SkaterModel } from '../skater/model.ts';
import type { SprintPower } from '../skater/sprint.ts';
import type { IcePoint } from '../units/points.ts';
import type { Puck } from './puck-parts.ts';

/**
 * What moves the skater now. `ease`: nothing to do, the speed runs out. `shadow`: the chase has ended within reach and
 * goes on beside the one chased. `cutOff`: an opponent has left the script to take a pass. `face`: turned to `look` while the
 * speed runs out. `screen`: the stick in a lane.
 * `steal`, `pickUp`: goes for a puck.
 */
export type Motion =
  | 'ease'
  | 'route'
  | 'chase'
  | 'gap'
  | 'shadow'
  | 'cutOff'
  | 'face'
  | 'screen'
  | 'steal'
  | 'pickUp';

/** One spot during a run. Changed in place; `next` is where it will be at the end of the step being tried. */
export interface Actor extends Body {
  readonly index: number;
  readonly spot: PlayableSpot;
  readonly model: SkaterModel;
  /** The net this side defends, metres. */
  readonly netM: IcePoint;
  readonly next: Body;
  readonly push: Push;
  /** The moving point a gap or a shadow steers to. */
  readonly goal: Body;
  readonly sight: Sight;
  /** e^(−t/τ) of this skater for a whole step and for `GAP_RESPONSE_S`. */
  readonly stepKeeps: number;
  readonly responseKeeps: number;
  facingX: number;
  facingY: number;
  nextFacingX: number;
  nextFacingY: number;
  motion: Motion;
  /** The model, or a part of its top speed; τ is always the model's. */
  power: SprintPower;
  route: PlannedRoute | null;
  whom: Actor | null;
  /** The puck on the stick; only `giveTo` and `freePuck` change it. */
  puck: Puck<Actor> | null;
  /** The puck a steal or a pick-up goes for. */
  prey: Puck<Actor> | null;
  /** How often a puck has come to this stick, and how often it has passed, shot, and been passed to: what chance is asked by. */
  possessions: number;
  passes: number;
  shots: number;
  /** When this goalie was last shot at. */
  shotAtS: number;
  receptions: number;
  /** The gap held now, and that of the act: with help it is closed. */
  gapM: number;
  actGapM: number;
  /** The steal under way has come within a lunge of its skater. */
  hasCaughtUp: boolean;
  /** Screen: the far end of the lane, and how far along it the blade is to be, 0 to 1. */
  laneTo: Body | null;
  alongRatio: number;
  /** What a `face` turns to; it may move. */
  look: { readonly xM: number; readonly yM: number } | null;
  /** How quickly the body turns now, rad/s. */
  turnRadps: number;
  /** Act under way, −1 when none; and the next one in the list. */
  actIndex: number;
  nextActIndex: number;
  /** When the act before the next one started (−1: none yet) and ended. */
  actStartS: number;
  freeSinceS: number;
  /** When the next act is due; Infinity while its cue has not come. */
  dueS: number;
  /** When the act under way ends by itself; Infinity when it does not. */
  endS: number;
  /** A cut-off coasts until its skater has reacted, then pushes this way. */
  reactsAtS: number;
  cutX: number;
  cutY: number;
  /** The last route was skated backward, and nothing has turned the skater since. */
  isBackward: boolean;
  hadPuckInAct: boolean;
  /** The due pass or shot has no puck yet. */
  waitsForPuck: boolean;
  /** Number of rink lines with smaller x. */
  zone: number;
}

export const actorOf = (index: number, spot: PlayableSpot, model: SkaterModel, netM: IcePoint): Actor => ({
  index,
  spot,
  model,
  netM,
  xM: spot.atM.xM,
  yM: spot.atM.yM,
  xMps: 0,
  yMps: 0,
  next: movingBodyAt(spot.atM.xM, spot.atM.yM),
  push: { x: 0, y: 0 },
  goal: movingBodyAt(0, 0),
  sight: sightOf(model.tauS),
  stepKeeps: Math.exp(-STEP_S / model.tauS),
  responseKeeps: Math.exp(-GAP_RESPONSE_S.value / model.tauS),
  facingX: Math.cos(spot.facingRad),
  facingY: Math.sin(spot.facingRad),
  nextFacingX: Math.cos(spot.facingRad),
  nextFacingY: Math.sin(spot.facingRad),
  motion: 'ease',
  power: model,
  route: null,
  whom: null,
  puck: null,
  prey: null,
  possessions: 0,
  passes: 0,
  shots: 0,
  shotAtS: Number.NEGATIVE_INFINITY,
  receptions: 0,
  gapM: 0,
  actGapM: 0,
  hasCaughtUp: false,
  laneTo: null,
  alongRatio: 0,
  look: null,
  turnRadps: TURN_RATE_RADPS.value,
  actIndex: -1,
  nextActIndex: 0,
  actStartS: -1,
  freeSinceS: 0,
  dueS: Number.POSITIVE_INFINITY,
  endS: Number.POSITIVE_INFINITY,
  reactsAtS: 0,
  cutX: 0,
  cutY: 0,
  isBackward: false,
  hadPuckInAct: false,
  waitsForPuck: false,
  zone: 0,
});

const FACING_FROM_MPS2 = FACING_FROM_MPS.value ** 2;

/** Whether a velocity is large enough to give the body its facing. */
export const isFacingFrom = (xMps: number, yMps: number): boolean =>
  xMps * xMps + yMps * yMps >= FACING_FROM_MPS2;

export const bladeXOf = (actor: Actor): number => actor.xM + BLADE_AHEAD_M.value * actor.facingX;
export const bladeYOf = (actor: Actor): number => actor.yM + BLADE_AHEAD_M.value * actor.facingY;

export const placeOf = (body: { readonly xM: number; readonly yM: number }): IcePoint => ({
  xM: body.xM,
  yM: body.yM,
});
