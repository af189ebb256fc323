import { standingPointOf } from '../drill/in-boards.ts';
import type { PlayableSpot } from '../drill/playable-parts.ts';
import type { SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import type { MendCandidate, MendCase } from './mend.ts';
import {
  actThen,
  isRoomy,
  isRouteAct,
  movedBy,
  type RouteAct,
  rounded,
  spotOf,
  startOfRoute,
  waysFrom,
} from './mend-places.ts';
import { LEAST_LEG, STOP_ADDED, TENTH_OF_EFFORT } from './mend-rows.ts';

const END_STEPS_M = [0.5, 1, 1.5, 2, 3, 4, 5, 6, 8];
const BEND_STEPS_M = [0.5, 1, 2, 3, 4];
const LESS_EFFORT = [0.1, 0.2, 0.3, 0.4, 0.5];

/** The route under way at the finding, with its spot; undefined when there is none. */
const routeThen = (
  of: MendCase,
  id: SpotId | undefined,
): { readonly spot: PlayableSpot; readonly act: RouteAct } | undefined => {
  const spot = spotOf(of, id);
  const act = spot && actThen(of, spot);
  return spot && isRouteAct(act) ? { spot, act } : undefined;
};

const pathOf = (spot: PlayableSpot, act: { readonly id: string }, key: string): readonly string[] => [
  'spots',
  spot.id,
  'acts',
  act.id,
  key,
];

/** The route ends sooner, as it is or with a stop; or only stops at its end. Empty when no route is under way then. */
export const routesEnded = (of: MendCase, id: SpotId | undefined): readonly MendCandidate[] => {
  const found = routeThen(of, id);
  if (!found) return [];
  const { spot, act } = found;
  const stop = { path: pathOf(spot, act, 'stops'), value: true };
  const candidates: MendCandidate[] = [];
  if (!act.stops) {
    candidates.push({
      says: { verb: 'stopAtEnd', spot: spot.id, number: 0, unit: '' },
      writes: [stop],
      size: STOP_ADDED.value,
    });
  }
  for (const byM of END_STEPS_M) {
    const throughM = shortened(startOfRoute(spot, act), act.throughM, byM);
    if (!throughM) continue;
    const end = { path: pathOf(spot, act, 'throughM'), value: throughM };
    const says = { spot: spot.id, number: byM, unit: 'm' };
    candidates.push({ says: { ...says, verb: 'endSooner' }, writes: [end], size: byM });
    if (act.stops) continue;
    candidates.push({
      says: { ...says, verb: 'endSoonerAndStop' },
      writes: [end, stop],
      size: byM + STOP_ADDED.value,
    });
  }
  return candidates;
};

/** The points with that much less way at the end; undefined when hardly any way is left. */
const shortened = (
  fromM: IcePoint,
  throughM: readonly IcePoint[],
  byM: number,
): readonly IcePoint[] | undefined => {
  const points = [fromM, ...throughM];
  let leftM = byM;
  while (points.length > 1) {
    const end = points.at(-1)!;
    const before = points.at(-2)!;
    const legM = Math.hypot(end.xM - before.xM, end.yM - before.yM);
    if (legM > leftM + LEAST_LEG_M || (legM > leftM && points.length > 2)) {
      const share = leftM / legM;
      const last = {
        xM: rounded(end.xM + share * (before.xM - end.xM)),
        yM: rounded(end.yM + share * (before.yM - end.yM)),
      };
      return [...points.slice(1, -1), last];
    }
    leftM = Math.max(0, leftM - legM);
    points.pop();
  }
  return undefined;
};

/** A route shorter than this is none. */
const LEAST_LEG_M = LEAST_LEG.value;

/** The point of the route that is nearest to the finding, moved one of four ways. Empty when no route is under way then. */
export const routesBent = (of: MendCase, id: SpotId | undefined): readonly MendCandidate[] => {
  const found = routeThen(of, id);
  if (!found) return [];
  const { spot, act } = found;
  const { atM } = of.finding;
  const farM = (pointM: IcePoint): number => Math.hypot(pointM.xM - atM.xM, pointM.yM - atM.yM);
  const index = act.throughM.reduce(
    (best, pointM, i) => (farM(pointM) < farM(act.throughM[best]!) ? i : best),
    0,
  );
  const pointM = act.throughM[index]!;
  return waysFrom(pointM).flatMap(way =>
    BEND_STEPS_M.map(byM => ({ byM, toM: movedBy(pointM, way, byM) }))
      .filter(({ toM }) => isRoomy(of.rink, toM))
      .map(({ byM, toM }) => ({
        says: { verb: 'bend', spot: spot.id, number: byM, unit: 'm', where: way.where } as const,
        writes: [
          {
            path: pathOf(spot, act, 'throughM'),
            value: act.throughM.map((one, i) => (i === index ? toM : one)),
          },
        ],
        // A bend changes the way; an end or a start changes only where it begins or stops.
        size: byM * 1.5,
      })),
  );
};

/** Less effort on the act under way then. Empty when it is one without effort. */
export const effortsLess = (of: MendCase, id: SpotId | undefined): readonly MendCandidate[] => {
  const spot = spotOf(of, id);
  const act = spot && actThen(of, spot);
  if (!spot || !act || !('effortRatio' in act)) return [];
  return LESS_EFFORT.map(by => rounded(act.effortRatio - by))
    .filter(effort => effort >= 0.3)
    .map(effort => ({
      says: { verb: 'skateAt', spot: spot.id, number: Math.round(effort * 100), unit: '%' },
      writes: [{ path: pathOf(spot, act, 'effortRatio'), value: effort }],
      size: (act.effortRatio - effort) * 10 * TENTH_OF_EFFORT.value,
    }));
};

/** Everything of a route or a start that lies off the ice is brought in, with more room by steps. */
export const broughtIn = (of: MendCase, id: SpotId | undefined): readonly MendCandidate[] => {
  const spot = spotOf(of, id);
  if (!spot) return [];
  const { boards } = of.rink;
  const act = spot.acts.find(one => one.id === of.finding.act);
  return [0, 0.5, 1, 1.5, 2, 3].map(roomM => {
    const inside = (pointM: IcePoint): IcePoint => {
      const to = standingPointOf(
        { ...boards, lengthM: boards.lengthM - 2 * roomM, widthM: boards.widthM - 2 * roomM },
        pointM,
      );
      return { xM: rounded(to.xM), yM: rounded(to.yM) };
    };
    return {
      says: { verb: 'bringIn', spot: spot.id, number: roomM + 0.5, unit: 'm' },
      writes: isRouteAct(act)
        ? [{ path: pathOf(spot, act, 'throughM'), value: act.throughM.map(inside) }]
        : [{ path: ['spots', spot.id, 'atM'], value: inside(spot.drawnOffM ?? spot.atM) }],
      size: 1 + roomM,
    };
  });
};
