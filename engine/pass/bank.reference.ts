import { puckAt, puckPath } from '../puck/path.ts';
import type { PuckModel } from '../puck/puck-model.ts';
import type { Boards } from '../rink/boards.ts';
import type { IcePoint } from '../units/points.ts';
import { receiverBladeAt } from './blade.ts';
import type { Receiver } from './pass-parts.ts';

/** A launch direction found by shooting, and how near the puck came. */
export interface ShotHit {
  readonly launchRad: number;
  readonly missM: number;
}

/**
 * The slow plain way: shoot a puck in every direction, watch how near it comes to the blade between its n-th and its next
 * bounce, and where a direction is nearer than its neighbours look closer. Knows nothing of arc length, slots or signs.
 */
export const bankPassesByShooting = (
  boards: Boards,
  model: PuckModel,
  passerM: IcePoint,
  launchSpeedMps: number,
  receiver: Receiver,
  bounceCount: number,
  maxTimeS: number,
  shotCount: number,
): readonly ShotHit[] => {
  const missOf = (launchRad: number): number =>
    nearestM(boards, model, passerM, launchRad, launchSpeedMps, receiver, bounceCount, maxTimeS);
  const stepRad = (2 * Math.PI) / shotCount;
  const misses = Array.from({ length: shotCount }, (_, shot) => missOf(-Math.PI + shot * stepRad));
  const hits: ShotHit[] = [];
  for (const [shot, miss] of misses.entries()) {
    const before = misses[(shot + shotCount - 1) % shotCount]!;
    const after = misses[(shot + 1) % shotCount]!;
    if (!(miss <= before && miss <= after && miss < NEAR_ENOUGH_M)) continue;
    const middleRad = -Math.PI + shot * stepRad;
    const launchRad = lowest(missOf, middleRad - stepRad, middleRad + stepRad, 1e-11);
    hits.push({ launchRad, missM: missOf(launchRad) });
  }
  return hits;
};

/** A local least farther off than this does not become a hit by looking closer. */
const NEAR_ENOUGH_M = 3;
const TIME_STEP_S = 0.05;

const nearestM = (
  boards: Boards,
  model: PuckModel,
  passerM: IcePoint,
  launchRad: number,
  launchSpeedMps: number,
  receiver: Receiver,
  bounceCount: number,
  maxTimeS: number,
): number => {
  const path = puckPath(boards, model, passerM, launchRad, launchSpeedMps, {
    rims: false,
    maxTimeS,
    maxBounces: bounceCount,
  });
  const from = path.bounces[bounceCount - 1];
  if (!from) return Number.POSITIVE_INFINITY;
  const missAt = (timeS: number): number => {
    const { atM } = puckAt(path, timeS);
    const blade = receiverBladeAt(receiver, timeS);
    return Math.hypot(atM.xM - blade.xM, atM.yM - blade.yM);
  };
  const steps = Math.max(2, Math.ceil((path.endTimeS - from.timeS) / TIME_STEP_S));
  const timeAt = (step: number): number => from.timeS + ((path.endTimeS - from.timeS) * step) / steps;
  let bestStep = 0;
  let best = Number.POSITIVE_INFINITY;
  for (let step = 0; step <= steps; step++) {
    const miss = missAt(timeAt(step));
    if (miss < best) [best, bestStep] = [miss, step];
  }
  const timeS = lowest(
    missAt,
    timeAt(Math.max(0, bestStep - 1)),
    timeAt(Math.min(steps, bestStep + 1)),
    1e-10,
  );
  return Math.min(best, missAt(timeS));
};

/** Least value of a function with one dip, by thirds. */
const lowest = (valueAt: (at: number) => number, from: number, to: number, width: number): number => {
  let low = from;
  let high = to;
  while (high - low > width) {
    const left = low + (high - low) / 3;
    const right = high - (high - low) / 3;
    if (left <= low || right >= high) break;
    if (valueAt(left) < valueAt(right)) high = right;
    else low = left;
  }
  return (low + high) / 2;
};
