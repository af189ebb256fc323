import type { Push } from './reactive-step.ts';

/**
 * How the keeper of a gap stands to whom is kept off. He faces him and goes backward before him, or has turned round and skates
 * forward. Changed in place.
 */
export interface Stance {
  /** Unit vector from the keeper to whom is kept off. */
  towardX: number;
  towardY: number;
  /** Skates forward with his back to whom is kept off. */
  isTurned: boolean;
  /** A change between forward and backward is under way until then, seconds of the rep; −Infinity when there was none. */
  changesUntilS: number;
  /** What the change under way takes off the speed, m/s². */
  slowsMps2: number;
}

/** What a stance is looked at with: the top speed forward, and the part of it that goes backward. */
export interface StanceAbility {
  readonly stance: Stance;
  readonly power: { readonly topSpeedMps: number };
  readonly model: { readonly backwardRatio: number };
}

/** Facing along +x until it is looked where the other is; with room for fractions from the start, as `pushOf`. */
export const freshStance = (): Stance => {
  const stance = {
    towardX: Number.NaN,
    towardY: Number.NaN,
    isTurned: false,
    changesUntilS: Number.NEGATIVE_INFINITY,
    slowsMps2: Number.NaN,
  };
  stance.towardX = 1;
  stance.towardY = 0;
  return stance;
};

/**
 * Top speed in a direction (unit vector) of a keeper who faces whom he keeps off, metres a second: the forward top speed, but the part of it straight backward is never more than the level's
 * part of that, `backwardRatio`.
 * Source: the level's row of backward skating, measured straight back; that who crosses over to the side is else as fast as forward is our own
 * choice, for want of a figure.
 */
export const facingTopSpeedMps = (
  { stance, power, model }: StanceAbility,
  xRatio: number,
  yRatio: number,
): number => {
  const back = -(xRatio * stance.towardX + yRatio * stance.towardY);
  return backwardTopMps(back, model.backwardRatio, power.topSpeedMps);
};

/** The same by the part of the way that is straight backward (−1 to 1); so small that whoever asks at every step asks without a call. */
export const backwardTopMps = (back: number, backwardRatio: number, topSpeedMps: number): number =>
  back > backwardRatio ? (backwardRatio / back) * topSpeedMps : topSpeedMps;

/** Shortens a push to what the stance can give in its direction, which is all of it to one who has turned round. A push is a part of the forward top speed. */
export const limitToStance = (push: Push, keeper: StanceAbility): void => {
  const size = Math.sqrt(push.x * push.x + push.y * push.y);
  if (size === 0) return;
  const { stance, power, model } = keeper;
  const back = -((push.x / size) * stance.towardX + (push.y / size) * stance.towardY);
  const topMps = stance.isTurned
    ? power.topSpeedMps
    : backwardTopMps(back, model.backwardRatio, power.topSpeedMps);
  const most = topMps / power.topSpeedMps;
  if (size <= most) return;
  push.x *= most / size;
  push.y *= most / size;
};
