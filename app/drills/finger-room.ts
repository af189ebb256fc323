import type { Drill } from '@icewright/book';
import type { IcePoint, SpotId } from '@icewright/engine';
import { actsOf, endOfRoutes, isRoute } from './route-writes.ts';

/** 44 px across on a screen 390 px wide, where a metre of ice is 13.5 px: what a finger in a wet glove needs. */
const FINGER_M = 1.63;
/** The handle that a route is pulled out by stands this far beside its end. */
export const PULL_M = 1.9;

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

/** Everything on the board that can be taken hold of; empty where the pointer is fine and nothing needs to grow. */
export function placesToTake(drill: Drill, chosen: SpotId | null): readonly IcePoint[] | null {
  if (!matchMedia('(pointer: coarse)').matches) return null;
  const things = [drill.spots, drill.pucks, drill.gear].flatMap(all =>
    Object.values(all as Record<string, { readonly atM: IcePoint }>).map(({ atM }) => atM),
  );
  const spot = chosen === null ? undefined : drill.spots[chosen];
  if (spot === undefined) return things;
  let before = spot.atM;
  const route = actsOf(spot).flatMap(([, act]) =>
    (isRoute(act) ? act.throughM : []).flatMap(atM => {
      const middleM = { xM: (before.xM + atM.xM) / 2, yM: (before.yM + atM.yM) / 2 };
      before = atM;
      return [middleM, atM];
    }),
  );
  const endM = endOfRoutes(spot);
  return [...things, ...route, { xM: endM.xM, yM: endM.yM - PULL_M }];
}
