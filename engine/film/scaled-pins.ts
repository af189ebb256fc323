import type { Pin, PinScaling } from './pins.ts';

/** Pins moved to their middle and scaled to a mean distance of √2, in both planes (Hartley & Zisserman 2004, 4.4). */
export interface ScaledPins {
  readonly scaling: PinScaling;
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly u: Float64Array;
  readonly v: Float64Array;
}

/**
 * Scales pins so that every coefficient of the fit is of size 1. The middle of the pins is in view, so the last
 * entry of the scaled matrix cannot be 0 and is set to 1. Null when all ice points or all film points are one point.
 */
export const scaledPinsOf = (pins: readonly Pin[]): ScaledPins | null => {
  const count = pins.length;
  const x = Float64Array.from(pins, pin => pin.iceM.xM);
  const y = Float64Array.from(pins, pin => pin.iceM.yM);
  const u = Float64Array.from(pins, pin => pin.filmPx.xPx);
  const v = Float64Array.from(pins, pin => pin.filmPx.yPx);
  const ice = scaleInPlace(x, y);
  const film = scaleInPlace(u, v);
  if (ice === null || film === null) return null;
  const scaling = {
    iceXM: ice.x,
    iceYM: ice.y,
    icePerM: ice.scale,
    filmXPx: film.x,
    filmYPx: film.y,
    filmPerPx: film.scale,
  };
  return { scaling, count, x, y, u, v };
};

/** Moves points to their middle and scales them to a mean distance of √2, in place; null when they are one point. */
export const scaleInPlace = (
  x: Float64Array,
  y: Float64Array,
): { x: number; y: number; scale: number } | null => {
  const count = x.length;
  let middleX = 0;
  let middleY = 0;
  for (let i = 0; i < count; i++) {
    middleX += x[i]! / count;
    middleY += y[i]! / count;
  }
  let distance = 0;
  for (let i = 0; i < count; i++) distance += Math.hypot(x[i]! - middleX, y[i]! - middleY) / count;
  if (!(distance > 0)) return null;
  const scale = Math.SQRT2 / distance;
  for (let i = 0; i < count; i++) {
    x[i] = (x[i]! - middleX) * scale;
    y[i] = (y[i]! - middleY) * scale;
  }
  return { x: middleX, y: middleY, scale };
};
