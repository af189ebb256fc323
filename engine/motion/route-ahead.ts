import { PLACE_NUMBERS, type PlannedRoute, placesOnRoute } from './planned-route.ts';

/** Strides that are written at once. Half a second of a run that is shown: a rep that ends early has computed little for nothing. */
const STRIDES_AHEAD = 60;

/**
 * Where a route is at the ends of the next strides of the rep. Who skates a drawn route asks for nothing else, and many places in one tight
 * loop cost a third of the same places one by one.
 */
export interface RouteAhead {
  route: PlannedRoute | null;
  firstStride: number;
  /** `PLACE_NUMBERS` for each stride. */
  readonly places: Float64Array;
}

export const routeAheadOf = (): RouteAhead => ({
  route: null,
  firstStride: 0,
  places: new Float64Array(STRIDES_AHEAD * PLACE_NUMBERS),
});

const timesS = new Float64Array(STRIDES_AHEAD);

/** Where in `places` the route is at the end of this stride of the rep (whole, ≥ 0), of which `strideHz` come in a second. */
export const indexAhead = (
  ahead: RouteAhead,
  route: PlannedRoute,
  stride: number,
  strideHz: number,
): number => {
  const nth = stride - ahead.firstStride;
  if (ahead.route === route && nth >= 0 && nth < STRIDES_AHEAD) return nth * PLACE_NUMBERS;
  for (let i = 0; i < STRIDES_AHEAD; i++) timesS[i] = (stride + i) / strideHz;
  placesOnRoute(route, timesS, ahead.places);
  ahead.route = route;
  ahead.firstStride = stride;
  return 0;
};
