import type { Pen } from './pen.ts';

/** Draws nothing and measures as `pen` does: asks a drawing for its height. */
export const measuringPen = (pen: Pen): Pen => ({
  k: 1,
  thinFloor: 0,
  turnRad: 0,
  measure: pen.measure,
  path: () => {},
  circle: () => {},
  text: () => {},
  group: () => {},
  kept: () => {},
  place: () => {},
  clip: () => {},
});
