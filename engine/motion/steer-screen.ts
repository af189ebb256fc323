import { BLADE_AHEAD_M } from '../drill/drill-rows.ts';
import { type Body, keepInside } from '../drill/in-boards.ts';
import type { Boards } from '../rink/boards.ts';
import { type Follower, steerToGoal } from './push-to-goal.ts';

export interface Screener extends Follower {
  /** The far end of the lane: a skater, or the net as a body that stands. */
  readonly laneTo: Body | null;
  /** Where the blade is to be, part of the way along the lane, 0 to 1. */
  readonly alongRatio: number;
}

/**
 * Sets the push of a skater who keeps the stick in the lane from `whom` to `laneTo`: the blade that part of the way along it, the
 * body a blade's length farther on, facing `whom`, but never beyond the lane's end. Reaches that moving point and stays with it as
 * a gap does, at full effort and without overshoot. Metres, seconds, frame of the rink. A lane of no length has no direction: the
 * goal is its end.
 * Source: geometry; the steering is that of the gap.
 */
export const steerScreen = (screener: Screener, self: Body, whom: Body, boards: Boards): void => {
  const { goal, laneTo, alongRatio } = screener;
  if (!laneTo) throw new Error('a screen without the end of its lane');
  const x = laneTo.xM - whom.xM;
  const y = laneTo.yM - whom.yM;
  const lengthM = Math.sqrt(x * x + y * y);
  const bodyM = alongRatio * lengthM + BLADE_AHEAD_M.value;
  if (bodyM >= lengthM) {
    goal.xM = laneTo.xM;
    goal.yM = laneTo.yM;
    goal.xMps = laneTo.xMps;
    goal.yMps = laneTo.yMps;
  } else {
    const nx = x / lengthM;
    const ny = y / lengthM;
    goal.xM = whom.xM + bodyM * nx;
    goal.yM = whom.yM + bodyM * ny;
    // q + a·d + b·n moves with w + a·ḋ + b·ṅ, where d goes along the lane, n = d/|d| and ṅ = (ḋ − (ḋ·n)n)/|d|.
    const xMps = laneTo.xMps - whom.xMps;
    const yMps = laneTo.yMps - whom.yMps;
    const stretchMps = xMps * nx + yMps * ny;
    const swing = BLADE_AHEAD_M.value / lengthM;
    goal.xMps = whom.xMps + alongRatio * xMps + swing * (xMps - stretchMps * nx);
    goal.yMps = whom.yMps + alongRatio * yMps + swing * (yMps - stretchMps * ny);
  }
  keepInside(boards, goal);
  steerToGoal(screener, self);
};
