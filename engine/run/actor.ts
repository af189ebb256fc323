import { BLADE_AHEAD_M, FACING_FROM_MPS, GAP_RESPONSE_S, TURN_RATE_RADPS } from '../drill/drill-rows.ts';
import type { Body } from '../drill/in-boards.ts';
import type { PlayableSpot } from '../drill/playable-parts.ts';
import { freshStance, type Stance } from '../motion/keeper-stance.ts';
import { movingBodyAt } from '../motion/moving-body.ts';
import type { PlannedRoute } from '../motion/planned-route.ts';
import { type Push, pushOf } from '../motion/reactive-step.ts';
import { type RouteAhead, routeAheadOf } from '../motion/route-ahead.ts';
import { type Sight, sightOf } from '../motion/steer-chase.ts';
import type { SkaterModel } from '../skater/model.ts';
import type { SprintPower } from '../skater/sprint.ts';
import type { IcePoint } from '../units/points.ts';
import { ACTOR_NUMBERS, BodyInBlock, FACING_X, FACING_Y } from './actor-numbers.ts';
import type { Guard } from './guard.ts';
import type { Puck } from './puck-parts.ts';

/**
 * What moves the skater now. `ease`: nothing to do, the speed runs out. `shadow`: the chase has ended within reach and
 * goes on beside the one chased. `cutOff`: an opponent has left the script to take a pass. `face`: turned to `look` while the
 * speed runs out. `screen`: the stick in a lane.
 * `steal`, `pickUp`: goes for a puck. `guard`: a goalie before the net.
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
  | 'guard'
  | 'pickUp';

/**
 * One spot during a run. Changed in place; `next` is where it will be at the end of the step being tried. Numbers that only some acts
 * use are not a number before: had they begun as whole numbers, the first fraction would have made all that is compiled worthless.
 */
export class Actor extends BodyInBlock {
  /** Where the numbers of `next` begin in the block. */
  readonly nextAt: number;
  readonly next: Body;
  readonly push: Push = pushOf();
  /** The moving point a gap or a shadow steers to, and how many times its present speed it is expected to come to. */
  readonly goal: Body = movingBodyAt(0, 0);
  expectedRatio = Number.NaN;
  readonly sight: Sight;
  /** How the keeper of a gap stands to whom is kept off. */
  readonly stance: Stance = freshStance();
  /** e^(−t/τ) of this skater for a whole step and for `GAP_RESPONSE_S`. */
  readonly stepKeeps: number;
  readonly responseKeeps: number;
  motion: Motion = 'ease';
  /** The model, or a part of its top speed; τ is always the model's. */
  power: SprintPower;
  /** Null whenever the motion is not `route`: at every step that is asked sooner than what the motion is. */
  route: PlannedRoute | null = null;
  readonly ahead: RouteAhead;
  whom: Actor | null = null;
  /** The puck on the stick; only `giveTo` and `freePuck` change it. */
  puck: Puck<Actor> | null = null;
  /** The puck a steal or a pick-up goes for. */
  prey: Puck<Actor> | null = null;
  /** How often a puck has come to this stick, and how often it has passed, shot, and been passed to: what chance is asked by. */
  possessions = 0;
  passes = 0;
  shots = 0;
  /** When this goalie was last shot at. */
  shotAtS = Number.NEGATIVE_INFINITY;
  receptions = 0;
  /** The net this goalie guards when it has no act. */
  guard: Guard | null = null;
  /** The gap held now, and that of the act: with help it is closed. */
  gapM = Number.NaN;
  actGapM = Number.NaN;
  /** A mate of who keeps the gap is to take the puck from the same carrier, now or later. */
  isBackedUp = false;
  /** The steal under way has come within a lunge of its skater. */
  hasCaughtUp = false;
  /** Screen: the far end of the lane, and how far along it the blade is to be, 0 to 1. */
  laneTo: Body | null = null;
  alongRatio = Number.NaN;
  /** What a `face` turns to; it may move. */
  look: { readonly xM: number; readonly yM: number } | null = null;
  /** The velocity that is to be added to keep off other bodies, m/s. */
  /** Somebody may be in the way before the next look. */
  mayMeet = true;
  roomX = Number.NaN;
  roomY = Number.NaN;
  /** How quickly the body turns now, rad/s. */
  turnRadps = TURN_RATE_RADPS.value;
  /** Act under way, −1 when none; and the next one in the list. */
  actIndex = -1;
  nextActIndex = 0;
  /** When the act before the next one started (−1: none yet) and ended. */
  actStartS = -1;
  freeSinceS = 0;
  /** When the next act is due; Infinity while its cue has not come. */
  dueS = Number.POSITIVE_INFINITY;
  /** When the act under way ends by itself; Infinity when it does not. */
  endS = Number.POSITIVE_INFINITY;
  /** A cut-off coasts until its skater has reacted, then pushes this way. */
  reactsAtS = Number.NaN;
  cutX = Number.NaN;
  cutY = Number.NaN;
  /** The last route was skated backward, and nothing has turned the skater since. */
  isBackward = false;
  hadPuckInAct = false;
  /** The due pass or shot has no puck yet. */
  waitsForPuck = false;
  /** Number of rink lines with smaller x. */
  zone = 0;

  /** `netM`: the net this side defends, metres. `stepS`: a whole step of the run. `lookS`: from one look to the next, seconds. */
  constructor(
    numbers: Float64Array,
    readonly index: number,
    readonly spot: PlayableSpot,
    readonly model: SkaterModel,
    readonly netM: IcePoint,
    readonly stepS: number,
    readonly lookS: number,
  ) {
    super(numbers, index * ACTOR_NUMBERS);
    this.nextAt = numbers.length / 2 + this.at;
    this.next = new BodyInBlock(numbers, this.nextAt);
    this.ahead = routeAheadOf(index);
    this.sight = sightOf(model.tauS);
    this.stepKeeps = Math.exp(-stepS / model.tauS);
    this.responseKeeps = Math.exp(-GAP_RESPONSE_S.value / model.tauS);
    this.power = model;
    for (const body of [this, this.next]) {
      body.xM = spot.atM.xM;
      body.yM = spot.atM.yM;
      body.xMps = 0;
      body.yMps = 0;
    }
    this.facingX = this.nextFacingX = Math.cos(spot.facingRad);
    this.facingY = this.nextFacingY = Math.sin(spot.facingRad);
  }

  get facingX(): number {
    return this.numbers[this.at + FACING_X]!;
  }
  set facingX(value: number) {
    this.numbers[this.at + FACING_X] = value;
  }
  get facingY(): number {
    return this.numbers[this.at + FACING_Y]!;
  }
  set facingY(value: number) {
    this.numbers[this.at + FACING_Y] = value;
  }
  get nextFacingX(): number {
    return this.numbers[this.nextAt + FACING_X]!;
  }
  set nextFacingX(value: number) {
    this.numbers[this.nextAt + FACING_X] = value;
  }
  get nextFacingY(): number {
    return this.numbers[this.nextAt + FACING_Y]!;
  }
  set nextFacingY(value: number) {
    this.numbers[this.nextAt + FACING_Y] = value;
  }
}

/** The square of the least speed that gives the body its facing, (m/s)². */
export const FACING_FROM_MPS2 = FACING_FROM_MPS.value ** 2;

/** Whether a velocity is large enough to give the body its facing. */
export const isFacingFrom = (xMps: number, yMps: number): boolean =>
  xMps * xMps + yMps * yMps >= FACING_FROM_MPS2;

export const bladeXOf = (actor: Actor): number => actor.xM + BLADE_AHEAD_M.value * actor.facingX;
export const bladeYOf = (actor: Actor): number => actor.yM + BLADE_AHEAD_M.value * actor.facingY;

export const placeOf = (body: { readonly xM: number; readonly yM: number }): IcePoint => ({
  xM: body.xM,
  yM: body.yM,
});
