import { STEP_HZ } from '../drill/step-hz.ts';
import { PLACE_NUMBERS, type PlannedRoute, placesOnRoute } from './planned-route.ts';

/** Samples that are written at once. Half a second: a rep that ends early has computed little for nothing. */
const SAMPLES_AHEAD = 60;

/**
 * Where a route is at the next samples of the rep. Who skates a drawn route asks for nothing else, and many places in one tight
 * loop cost a third of the same places one by one.
 */
export interface RouteAhead {
  route: PlannedRoute | null;
  firstSample: number;
  /** `PLACE_NUMBERS` for each sample. */
  readonly places: Float64Array;
}

export const routeAheadOf = (): RouteAhead => ({
  route: null,
  firstSample: 0,
  places: new Float64Array(SAMPLES_AHEAD * PLACE_NUMBERS),
});

const timesS = new Float64Array(SAMPLES_AHEAD);

/** Where in `places` the route is at this sample of the rep (whole, ≥ 0). */
export const indexAhead = (ahead: RouteAhead, route: PlannedRoute, sample: number): number => {
  const nth = sample - ahead.firstSample;
  if (ahead.route === route && nth >= 0 && nth < SAMPLES_AHEAD) return nth * PLACE_NUMBERS;
  for (let i = 0; i < SAMPLES_AHEAD; i++) timesS[i] = (sample + i) / STEP_HZ;
  placesOnRoute(route, timesS, ahead.places);
  ahead.route = route;
  ahead.firstSample = sample;
  return 0;
};
