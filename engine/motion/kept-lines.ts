import type { Boards } from '../rink/boards.ts';
import type { RouteCurve } from '../skater/route-curve.ts';
import type { IcePoint } from '../units/points.ts';
import type { PlannedRoute } from './planned-route.ts';

/** Where a route leads, whoever skates it and however fast. */
export interface RouteLine {
  readonly curve: RouteCurve;
  readonly off: PlannedRoute['off'];
}

/** Everything a line depends on: the points, and where and which way it starts (undefined from a stand). */
export interface LineAsked {
  readonly boards: Boards;
  readonly throughM: readonly IcePoint[];
  readonly xM: number;
  readonly yM: number;
  readonly startHeadingRad: number | undefined;
}

const keptLines = new WeakMap<readonly IcePoint[], { readonly asked: LineAsked; readonly line: RouteLine }>();

/**
 * The line as it was drawn last for the same points (the same immutable array) when everything else is the same to the last bit,
 * else drawn now: so the answer never depends on what is kept. Many reps of a drill by other people each time then draw it once.
 * What is kept goes with the points.
 */
export const keptOrDrawn = (asked: LineAsked, draw: () => RouteLine): RouteLine => {
  const kept = keptLines.get(asked.throughM);
  if (kept && isSame(kept.asked, asked)) return kept.line;
  const line = draw();
  keptLines.set(asked.throughM, { asked, line });
  return line;
};

const isSame = (a: LineAsked, b: LineAsked): boolean =>
  a.boards === b.boards && a.xM === b.xM && a.yM === b.yM && a.startHeadingRad === b.startHeadingRad;
