import type { Drill } from '@icewright/book';
import type { ActId, IcePoint, SpotId } from '@icewright/engine';
import { actsOf, isRoute, type RouteAct } from '../route-writes.ts';
import type { Write } from '../write.ts';

/**
 * The route in two acts, so that something may happen between: the first ends at `index`, the second begins there. Null at the
 * last point, where there is nothing to part. The second starts at once, as the skater did before.
 */
export const routeSplit = (
  drill: Drill,
  spotId: SpotId,
  actId: ActId,
  index: number,
  newAct: ActId,
): Write[] | null => {
  const spot = drill.spots[spotId];
  const act = spot?.acts[actId];
  if (spot === undefined || act === undefined || !isRoute(act)) return null;
  const before = act.throughM.slice(0, index + 1);
  const after = act.throughM.slice(index + 1);
  if (before.length === 0 || after.length === 0) return null;
  const { cue: _cue, ...rest } = act;
  const next = actsOf(spot).find(([, each]) => each.rank > act.rank)?.[1];
  const rank = next === undefined ? act.rank + 1 : (act.rank + next.rank) / 2;
  return [
    { path: ['spots', spotId, 'acts', actId, 'throughM'], value: before },
    { path: ['spots', spotId, 'acts', actId, 'stops'], value: false },
    { path: ['spots', spotId, 'acts', newAct], value: { ...rest, rank, throughM: after } },
  ];
};

/** The same between two points: the line is bent at `atM` before `index` and parted there. */
export const routeSplitBetween = (
  drill: Drill,
  spotId: SpotId,
  actId: ActId,
  index: number,
  atM: IcePoint,
  newAct: ActId,
): Write[] | null => {
  const spot = drill.spots[spotId];
  const act = spot?.acts[actId];
  if (spot === undefined || act === undefined || !isRoute(act)) return null;
  const throughM = [...act.throughM.slice(0, index), atM, ...act.throughM.slice(index)];
  const bent = { ...spot, acts: { ...spot.acts, [actId]: { ...act, throughM } } };
  return routeSplit({ ...drill, spots: { ...drill.spots, [spotId]: bent } }, spotId, actId, index, newAct);
};

const MOST_POINTS = 64;

/** The route and the next one as one act; or why they stay two. */
export const routesJoined = (
  drill: Drill,
  spotId: SpotId,
  actId: ActId,
): { readonly writes: Write[] } | { readonly notNow: string } => {
  const spot = drill.spots[spotId];
  const acts = spot === undefined ? [] : actsOf(spot);
  const place = acts.findIndex(([id]) => id === actId);
  const act = acts[place]?.[1];
  const next = acts[place + 1];
  if (act === undefined || !isRoute(act)) return { notNow: 'only routes can be joined' };
  if (next === undefined || !isRoute(next[1])) return { notNow: 'no route comes next' };
  const notNow = whyApart(act, next[1]);
  if (notNow !== null) return { notNow };
  return {
    writes: [
      { path: ['spots', spotId, 'acts', actId, 'throughM'], value: [...act.throughM, ...next[1].throughM] },
      { path: ['spots', spotId, 'acts', actId, 'stops'], value: next[1].stops },
      { path: ['spots', spotId, 'acts', next[0]], value: undefined },
    ],
  };
};

const whyApart = (act: RouteAct, next: RouteAct): string | null => {
  if (next.cue !== undefined) return 'the next one waits for its cue';
  if (act.stops) return 'the skater stops between them';
  if (act.kind !== next.kind) return 'one is with the puck, one without';
  if (act.facing !== next.facing) return 'one is forward, one backward';
  if (act.effortRatio !== next.effortRatio) return 'their efforts differ';
  if (act.throughM.length + next.throughM.length > MOST_POINTS)
    return `a route has room for ${MOST_POINTS} points`;
  return null;
};
