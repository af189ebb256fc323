import type { IcePoint } from '../units/points.ts';
import type { Body } from './in-boards.ts';

/**
 * A scripted route with its times: samples at `startS + i·stepS`, the last one at `endS`. Between samples the place follows
 * the cubic through both places and velocities, so that any time inside a step can be asked. Metres, seconds.
 */
export interface PlannedRoute {
  readonly startS: number;
  readonly endS: number;
  readonly stepS: number;
  readonly backward: boolean;
  /** The place of the drawn route farthest off the ice, and by how much; the samples are on the ice. Null when all of it is. */
  readonly off: { readonly atM: IcePoint; readonly byM: number } | null;
  readonly xM: Float64Array;
  readonly yM: Float64Array;
  readonly xMps: Float64Array;
  readonly yMps: Float64Array;
}

/** Sets the body to where the route is at `timeS`; before its start and after its end it stays at that sample. */
export const placeOnRoute = (route: PlannedRoute, timeS: number, body: Body): void => {
  const last = route.xM.length - 1;
  const intoS = timeS - route.startS;
  if (intoS <= 0 || last === 0 || timeS >= route.endS) {
    placeAtSample(route, intoS <= 0 ? 0 : last, body);
    return;
  }
  const i = Math.min(last - 1, Math.floor(intoS / route.stepS));
  const gapS = i === last - 1 ? route.endS - route.startS - i * route.stepS : route.stepS;
  const t = (intoS - i * route.stepS) / gapS;
  const t2 = t * t;
  const t3 = t2 * t;
  const h01 = 3 * t2 - 2 * t3;
  const h10 = (t3 - 2 * t2 + t) * gapS;
  const h11 = (t3 - t2) * gapS;
  const x0 = route.xM[i]!;
  const y0 = route.yM[i]!;
  body.xM = x0 + h01 * (route.xM[i + 1]! - x0) + h10 * route.xMps[i]! + h11 * route.xMps[i + 1]!;
  body.yM = y0 + h01 * (route.yM[i + 1]! - y0) + h10 * route.yMps[i]! + h11 * route.yMps[i + 1]!;
  body.xMps = route.xMps[i]! + t * (route.xMps[i + 1]! - route.xMps[i]!);
  body.yMps = route.yMps[i]! + t * (route.yMps[i + 1]! - route.yMps[i]!);
};

const placeAtSample = (route: PlannedRoute, i: number, body: Body): void => {
  body.xM = route.xM[i]!;
  body.yM = route.yM[i]!;
  body.xMps = route.xMps[i]!;
  body.yMps = route.yMps[i]!;
};
