import { filmFromIce } from '../film/ice-from-film.ts';
import type { PinFit } from '../film/pins.ts';
import type { FilmPoint, IcePoint } from '../units/points.ts';

/** How somebody upright on the ice is drawn: his feet, and one metre across and one metre up there, pixels. */
export interface Upright {
  readonly footPx: FilmPoint;
  readonly acrossPx: readonly [x: number, y: number];
  readonly upPx: readonly [x: number, y: number];
}

/**
 * How a body at a place of the ice stands in the picture, from the tie alone: the ice's circle there is an ellipse whose long axis is a metre
 * across the view, and whose flatness tells how steeply the camera looks down. Null behind the camera or when it looks straight down.
 * Source: the weak-perspective camera (Hartley & Zisserman 2004, 6.3, from memory).
 */
export const uprightAt = (fit: PinFit, { xM, yM }: IcePoint): Upright | null => {
  const footPx = filmFromIce(fit, { xM, yM });
  const east = filmFromIce(fit, { xM: xM + REACH_M, yM });
  const west = filmFromIce(fit, { xM: xM - REACH_M, yM });
  const north = filmFromIce(fit, { xM, yM: yM + REACH_M });
  const south = filmFromIce(fit, { xM, yM: yM - REACH_M });
  if (!footPx || !east || !west || !north || !south) return null;
  const [ux, vx] = [(east.xPx - west.xPx) / (2 * REACH_M), (east.yPx - west.yPx) / (2 * REACH_M)];
  const [uy, vy] = [(north.xPx - south.xPx) / (2 * REACH_M), (north.yPx - south.yPx) / (2 * REACH_M)];
  const [uu, uv, vv] = [ux * ux + uy * uy, ux * vx + uy * vy, vx * vx + vy * vy];
  const middle = (uu + vv) / 2;
  const apart = Math.hypot((uu - vv) / 2, uv);
  const longPx = Math.sqrt(middle + apart);
  const flat = Math.sqrt(Math.max(0, middle - apart)) / longPx;
  if (!(longPx > 0) || flat > STEEPEST) return null;
  const angle = Math.atan2(2 * uv, uu - vv) / 2;
  const side = Math.cos(angle) >= 0 ? 1 : -1;
  const [cos, sin] = [side * Math.cos(angle), side * Math.sin(angle)];
  const rise = Math.sqrt(1 - flat * flat);
  return {
    footPx,
    acrossPx: [longPx * cos, longPx * sin],
    upPx: [longPx * rise * sin, -longPx * rise * cos],
  };
};

const REACH_M = 0.25;
/** Steeper than 72° down, a body has no height to speak of. */
const STEEPEST = 0.95;
