import type { Body } from '../drill/in-boards.ts';
import type { IcePoint } from '../units/points.ts';
import type { Stretch } from './stretch.ts';

/**
 * A scripted route with its times: places evenly along the curve, `stepM` apart, the speed at each, and when it is reached,
 * seconds after `startS`. Between two places the speed changes evenly in time and the way follows the cubic through both
 * with the directions to their neighbours, so any time inside a step can be asked. Metres, seconds.
 */
export interface PlannedRoute {
  readonly startS: number;
  readonly endS: number;
  readonly stepM: number;
  readonly backward: boolean;
  /** The place of the drawn route farthest off the ice, and by how much; the route itself is on the ice. Null when all of it is. */
  readonly off: { readonly atM: IcePoint; readonly byM: number } | null;
  readonly xM: Float64Array;
  readonly yM: Float64Array;
  readonly speedMps: Float64Array;
  readonly timeS: Float64Array;
  /** Where the last question was answered: the next one is mostly a little later. */
  cursor: number;
}

/** Numbers of one place on a route: x and y (m), velocity in x and y (m/s), and the direction of the way as a unit vector. */
export const PLACE_NUMBERS = 6;

const oneTimeS = new Float64Array(1);
const onePlace = new Float64Array(PLACE_NUMBERS);

/** Sets the body to where the route is at the end of the stretch; before its start and after its end it stays at that place. */
export const placeOnRoute = (route: PlannedRoute, stretch: Readonly<Stretch>, body: Body): void => {
  oneTimeS[0] = stretch.toS;
  placesOnRoute(route, oneTimeS, onePlace);
  body.xM = onePlace[0]!;
  body.yM = onePlace[1]!;
  body.xMps = onePlace[2]!;
  body.yMps = onePlace[3]!;
};

/**
 * Writes where the route is at these times (of the rep, seconds, ascending): `PLACE_NUMBERS` numbers each, one place after the other.
 * Before its start and after its end the route stays at that place. A route of no length has no direction: 0, 0.
 */
export const placesOnRoute = (route: PlannedRoute, timesS: Float64Array, places: Float64Array): void => {
  const { timeS, xM, yM, speedMps: speeds, stepM, startS } = route;
  const last = timeS.length - 1;
  if (last === 0) {
    for (let i = 0; i < timesS.length; i++) {
      const at = i * PLACE_NUMBERS;
      places.fill(0, at, at + PLACE_NUMBERS);
      places[at] = xM[0]!;
      places[at + 1] = yM[0]!;
    }
    return;
  }
  let k = route.cursor;
  for (let i = 0; i < timesS.length; i++) {
    const atS = timesS[i]! - startS;
    while (k > 0 && timeS[k]! > atS) k--;
    while (k < last - 1 && timeS[k + 1]! <= atS) k++;
    const gapS = timeS[k + 1]! - timeS[k]!;
    const intoS = Math.min(gapS, Math.max(0, atS - timeS[k]!));
    const fromMps = speeds[k]!;
    const rateMps2 = gapS > 0 ? (speeds[k + 1]! - fromMps) / gapS : 0;
    const speedMps = Math.max(0, fromMps + rateMps2 * intoS);
    const t = Math.min(1, (intoS * (fromMps + 0.5 * rateMps2 * intoS)) / stepM);
    // No angle is used from here on: a sine for each of thousands of samples would be half the cost of a run.
    const x0 = xM[k]!;
    const y0 = yM[k]!;
    const x1 = xM[k + 1]!;
    const y1 = yM[k + 1]!;
    const dx = x1 - x0;
    const dy = y1 - y0;
    const hasBefore = k > 0;
    const hasAfter = k + 2 <= last;
    const slopeX0 = hasBefore ? (x1 - xM[k - 1]!) / 2 : dx;
    const slopeY0 = hasBefore ? (y1 - yM[k - 1]!) / 2 : dy;
    const slopeX1 = hasAfter ? (xM[k + 2]! - x0) / 2 : dx;
    const slopeY1 = hasAfter ? (yM[k + 2]! - y0) / 2 : dy;
    const rest = 1 - t;
    const h01 = t * t * (3 - 2 * t);
    const h10 = t * rest * rest;
    const h11 = -t * t * rest;
    const g01 = 6 * t * rest;
    const g10 = rest * (1 - 3 * t);
    const g11 = t * (3 * t - 2);
    const towardsX = dx * g01 + slopeX0 * g10 + slopeX1 * g11;
    const towardsY = dy * g01 + slopeY0 * g10 + slopeY1 * g11;
    const size = Math.sqrt(towardsX * towardsX + towardsY * towardsY);
    const perSize = size > 0 ? 1 / size : 0;
    const scale = size > 0 ? speedMps / size : 0;
    const at = i * PLACE_NUMBERS;
    places[at] = x0 + dx * h01 + slopeX0 * h10 + slopeX1 * h11;
    places[at + 1] = y0 + dy * h01 + slopeY0 * h10 + slopeY1 * h11;
    places[at + 2] = scale * towardsX;
    places[at + 3] = scale * towardsY;
    places[at + 4] = perSize * towardsX;
    places[at + 5] = perSize * towardsY;
  }
  route.cursor = k;
};
