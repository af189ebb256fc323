import { type Boards, boardsDistance } from '../rink/boards.ts';
import { routeCurveOf } from '../skater/route-curve.ts';
import { profileRoute, type RoutePower } from '../skater/route-profile.ts';
import { isNone } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import { BOARDS_ROOM_M, RUN_UP_FROM, RUN_UP_MOST } from './drill-rows.ts';

/** From standing to a place, straight, at full effort. */
export interface RunUp {
  readonly fromM: IcePoint;
  readonly durationS: number;
  /** The speed with which the place is reached. */
  readonly speedMps: number;
}

/**
 * Where somebody must start from standing so as to come to a place with this velocity: straight behind it, as far as full effort takes to that speed. Metres,
 * metres a second, seconds, frame of the rink. Where the boards are nearer it begins at them, and where the level is slower it is as long as a run-up may be:
 * the speed is then less, and is the one told. Undefined when he hardly moves, or stands at the boards already: he starts at the place. Source: our own;
 * `profileRoute`.
 */
export const runUpTo = (
  atM: IcePoint,
  velocityMps: { readonly xMps: number; readonly yMps: number },
  {
    boards,
    power,
    withPuck,
  }: { readonly boards: Boards; readonly power: RoutePower; readonly withPuck: boolean },
): RunUp | undefined => {
  const wantedMps = Math.hypot(velocityMps.xMps, velocityMps.yMps);
  if (wantedMps < RUN_UP_FROM.value) return undefined;
  const behind = (byM: number): IcePoint => ({
    xM: atM.xM - (byM * velocityMps.xMps) / wantedMps,
    yM: atM.yM - (byM * velocityMps.yMps) / wantedMps,
  });
  const most = roomBehind(behind, boards);
  if (most < LEAST_M) return undefined;
  const curve = routeCurveOf([behind(most), atM]);
  const profile = profileRoute(curve, power, {
    ...{ startSpeedMps: 0, facing: 'forward', withPuck, effortRatio: 1, stops: false },
  });
  if (isNone(profile)) return undefined;
  // From standing the same push gives the same speed after the same way, wherever it begins.
  const reached = profile.speedMps.findIndex(speed => speed >= wantedMps);
  const index = reached < 0 ? profile.speedMps.length - 1 : reached;
  const lengthM = index * curve.stepM;
  return lengthM < LEAST_M
    ? undefined
    : { fromM: behind(lengthM), durationS: profile.timeS[index]!, speedMps: profile.speedMps[index]! };
};
/** A shorter one is not seen. */
const LEAST_M = 0.3;

/** How far one can go straight back before the boards are too near, up to the longest run-up; metres. A sheet is convex: what is inside is one stretch. */
const roomBehind = (behind: (byM: number) => IcePoint, boards: Boards): number => {
  const isInside = (byM: number) => boardsDistance(boards, behind(byM)) >= BOARDS_ROOM_M.value;
  if (isInside(RUN_UP_MOST.value)) return RUN_UP_MOST.value;
  let [low, high] = [0, RUN_UP_MOST.value];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (isInside(middle)) low = middle;
    else high = middle;
  }
  return low;
};
const HALVINGS = 14;
