import type { Act, IcePoint, LevelId } from '@icewright/engine';
import { type DrawnRoute, type RouteBefore, routeOf } from './route.ts';

type RouteAct = Extract<Act, { kind: 'skate' | 'carry' }>;

/** Everything a drawn route depends on besides its points. */
type Asked = readonly [
  xM: number,
  yM: number,
  headingRad: number | undefined,
  speedMps: number,
  level: LevelId | undefined,
  kind: string,
  facing: string,
  effortRatio: number,
  stops: boolean,
];

const drawn = new WeakMap<readonly IcePoint[], { readonly asked: Asked; readonly route: DrawnRoute }>();

/**
 * The route as it was drawn before for the same points (the same immutable array) when everything else is the same, else
 * drawn now: under a dragging hand only the routes of who is dragged are curved anew. What is kept goes with the points.
 */
export const drawnRouteOf = (
  fromM: IcePoint,
  act: RouteAct,
  before: RouteBefore,
  level: LevelId | undefined,
): DrawnRoute => {
  const asked: Asked = [
    fromM.xM,
    fromM.yM,
    before.headingRad,
    before.speedMps,
    level,
    act.kind,
    act.facing,
    act.effortRatio,
    act.stops,
  ];
  const known = drawn.get(act.throughM);
  if (known?.asked.every((each, place) => each === asked[place])) return known.route;
  const route = routeOf(fromM, act, before, level);
  drawn.set(act.throughM, { asked, route });
  return route;
};
