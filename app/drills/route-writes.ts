import type { Drill, DrillAct, DrillSpot } from '@icewright/book';
import { newId } from '@icewright/book';
import type { ActId, IcePoint, SpotId } from '@icewright/engine';
import type { Write } from './write.ts';

/** Hand work on the board as writes: places, pulled and bent routes. Points are ice metres. */

export type RouteAct = Extract<DrillAct, { kind: 'skate' | 'carry' }>;

export const isRoute = (act: DrillAct): act is RouteAct => act.kind === 'skate' || act.kind === 'carry';

/** Acts of a spot in their order. */
export function actsOf(spot: DrillSpot): readonly (readonly [ActId, DrillAct])[] {
  return (Object.entries(spot.acts) as [ActId, DrillAct][]).sort(([, a], [, b]) => a.rank - b.rank);
}

export function spotsOf(drill: Drill): readonly (readonly [SpotId, DrillSpot])[] {
  return (Object.entries(drill.spots) as [SpotId, DrillSpot][]).sort(([, a], [, b]) => a.rank - b.rank);
}

/** A spot is set down elsewhere; a puck that starts on its stick comes along. */
export function spotMoved(drill: Drill, spotId: SpotId, toM: IcePoint): Write[] {
  const spot = drill.spots[spotId];
  if (spot === undefined) return [];
  const along = Object.entries(drill.pucks).filter(([, puck]) => puck.ownerSpot === spotId);
  return [
    { path: ['spots', spotId, 'atM'], value: toM },
    ...along.map(([puckId, puck]) => ({
      path: ['pucks', puckId, 'atM'],
      value: { xM: puck.atM.xM + toM.xM - spot.atM.xM, yM: puck.atM.yM + toM.yM - spot.atM.yM },
    })),
  ];
}

export function throughMoved(
  drill: Drill,
  spotId: SpotId,
  actId: ActId,
  index: number,
  toM: IcePoint,
): Write[] {
  return throughWrites(drill, spotId, actId, points =>
    points.map((point, at) => (at === index ? toM : point)),
  );
}

/** The line is taken between two points and bent. `index` is the point before which the new one comes. */
export function throughAdded(
  drill: Drill,
  spotId: SpotId,
  actId: ActId,
  index: number,
  atM: IcePoint,
): Write[] {
  return throughWrites(drill, spotId, actId, points => [
    ...points.slice(0, index),
    atM,
    ...points.slice(index),
  ]);
}

/** The last point of a route takes its act with it. */
export function throughRemoved(drill: Drill, spotId: SpotId, actId: ActId, index: number): Write[] {
  const act = drill.spots[spotId]?.acts[actId];
  if (act === undefined || !isRoute(act)) return [];
  if (act.throughM.length === 1) return [{ path: ['spots', spotId, 'acts', actId], value: undefined }];
  return throughWrites(drill, spotId, actId, points => points.filter((_, at) => at !== index));
}

/** Where a skater is when all its routes are done: that is where a new one is pulled from. */
export function endOfRoutes(spot: DrillSpot): IcePoint {
  const last = actsOf(spot)
    .map(([, act]) => act)
    .filter(isRoute)
    .at(-1)
    ?.throughM.at(-1);
  return last ?? spot.atM;
}

/** Which way a skater goes where all its routes are done: along the last piece, or as the spot faces. */
export function headingAtEnd(spot: DrillSpot): number {
  const points = [spot.atM, ...actsOf(spot).flatMap(([, act]) => (isRoute(act) ? act.throughM : []))];
  const to = points.at(-1);
  const from = points.at(-2);
  return from && to ? Math.atan2(to.yM - from.yM, to.xM - from.xM) : spot.facingRad;
}

/**
 * A route pulled out of a spot to `toM`: the last act grows when it is a route, else a new one begins.
 * Whoever has the puck by then carries it.
 */
export function routePulled(
  drill: Drill,
  spotId: SpotId,
  toM: IcePoint,
  actId: ActId,
  hasPuck: boolean,
): Write[] {
  const spot = drill.spots[spotId];
  if (spot === undefined) return [];
  const last = actsOf(spot).at(-1);
  if (last !== undefined && isRoute(last[1]) && last[1].throughM.length < 64)
    return throughAdded(drill, spotId, last[0], last[1].throughM.length, toM);
  const act: DrillAct = {
    rank: (last?.[1].rank ?? -1) + 1,
    // Nobody jumps the whistle: the first act of a spot waits for it, however it was begun.
    ...(last === undefined ? { cue: { on: 'whistle' } as const } : {}),
    kind: hasPuck ? 'carry' : 'skate',
    throughM: [toM],
    facing: 'forward',
    effortRatio: 1,
    stops: false,
  };
  return [{ path: ['spots', spotId, 'acts', actId], value: act }];
}

export const newActId = (): ActId => newId<'act'>();

function throughWrites(
  drill: Drill,
  spotId: SpotId,
  actId: ActId,
  change: (points: readonly IcePoint[]) => readonly IcePoint[],
): Write[] {
  const act = drill.spots[spotId]?.acts[actId];
  if (act === undefined || !isRoute(act)) return [];
  return [{ path: ['spots', spotId, 'acts', actId, 'throughM'], value: change(act.throughM) }];
}
