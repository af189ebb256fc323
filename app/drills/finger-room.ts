import type { Drill, DrillSpot } from '@icewright/book';
import type { IceArea, IcePoint, SpotId } from '@icewright/engine';
import { actsOf, endOfRoutes, isRoute } from './route-writes.ts';

/** 44 px across on a screen 390 px wide, where a metre of ice is 13.5 px: what a finger in a wet glove needs. */
const FINGER_M = 1.64;
/** Beside a place stands what belongs to it, metres: for a mouse next to the disc, for a finger a fingertip away from it. */
const BESIDE_M = { mouse: 1.9, finger: 2 * FINGER_M } as const;
/** Nearer to another thing than this the two would be taken for one another: the disc of a skater and the handle beside it. */
const CLEAR_M = 2.05;

const hasFinger = (): boolean => matchMedia('(pointer: coarse)').matches;

/** How far beside a place its handles stand, metres. */
export const besideM = (): number => BESIDE_M[hasFinger() ? 'finger' : 'mouse'];

/**
 * How far from a thing a press still takes it, metres: as far as a finger needs, but not over half the way to the next
 * thing, so that neighbours keep their own ground; and never less than `leastM`, which is what a mouse needs.
 */
export function reachOf(atM: IcePoint, leastM: number, othersM: readonly IcePoint[]): number {
  let nearestM = Number.POSITIVE_INFINITY;
  for (const other of othersM) {
    const awayM = Math.hypot(other.xM - atM.xM, other.yM - atM.yM);
    if (awayM > 0) nearestM = Math.min(nearestM, awayM);
  }
  return Math.max(leastM, Math.min(FINGER_M, nearestM / 2));
}

/**
 * Where the handle stands that a route is pulled out by: below the end of the routes of `spotId`, or on the first other side where it
 * covers nobody else and lies on the sheet.
 */
export function pullPlaceOf(drill: Drill, spotId: SpotId, area: IceArea, awayM = besideM()): IcePoint {
  const spot = drill.spots[spotId];
  if (spot === undefined) throw new Error(`no spot ${spotId} to pull a route out of`);
  const endM = endOfRoutes(spot);
  const others = [...thingsOf(drill), ...routeOf(spot)].filter(
    ({ xM, yM }) => xM !== endM.xM || yM !== endM.yM,
  );
  const sides = SIDES.map(([x, y]) => {
    const atM = { xM: endM.xM + x * awayM, yM: endM.yM + y * awayM };
    const isOnSheet =
      atM.xM > area.minXM && atM.xM < area.maxXM && atM.yM > area.minYM && atM.yM < area.maxYM;
    const clearM = Math.min(
      CLEAR_M,
      ...others.map(other => Math.hypot(other.xM - atM.xM, other.yM - atM.yM)),
    );
    return { atM, roomM: isOnSheet ? clearM : -1 };
  });
  return sides.reduce((best, side) => (side.roomM > best.roomM ? side : best)).atM;
}

const SLANT = Math.SQRT1_2;
/** Below first, where it always was; the left one is where the lozenge of a cue stands. */
const SIDES: readonly (readonly [number, number])[] = [
  [0, -1],
  [0, 1],
  [1, 0],
  [SLANT, -SLANT],
  [SLANT, SLANT],
  [-SLANT, -SLANT],
  [-SLANT, SLANT],
  [-1, 0],
];

/** Everything on the board that can be taken hold of; empty where the pointer is fine and nothing needs to grow. */
export function placesToTake(drill: Drill, chosen: SpotId | null, area: IceArea): readonly IcePoint[] | null {
  if (!hasFinger()) return null;
  const spot = chosen === null ? undefined : drill.spots[chosen];
  if (spot === undefined || chosen === null) return thingsOf(drill);
  let before = spot.atM;
  const route = routeOf(spot).flatMap(atM => {
    const middleM = { xM: (before.xM + atM.xM) / 2, yM: (before.yM + atM.yM) / 2 };
    before = atM;
    return [middleM, atM];
  });
  return [...thingsOf(drill), ...route, pullPlaceOf(drill, chosen, area)];
}

const thingsOf = (drill: Drill): readonly IcePoint[] =>
  [drill.spots, drill.pucks, drill.gear].flatMap(all =>
    Object.values(all as Record<string, { readonly atM: IcePoint }>).map(({ atM }) => atM),
  );

const routeOf = (spot: DrillSpot): readonly IcePoint[] =>
  actsOf(spot).flatMap(([, act]) => (isRoute(act) ? act.throughM : []));
