import { BOARDS_ROOM_M } from '../drill/drill-rows.ts';
import { type Body, boardsDistanceAt, pushInside } from '../drill/in-boards.ts';
import type { Boards } from '../rink/boards.ts';
import type { RouteWay } from './kept-routes.ts';

/** Places along a way, and the speed and time at each. Metres, metres a second, seconds. */
export type WayPlaces = Pick<RouteWay, 'xM' | 'yM' | 'speedMps' | 'timeS'>;

const PLACES_APART_M = 0.25;

/**
 * Straight on from where the body is, for `forS` ≥ 0 seconds, while its speed goes evenly to `endMps` ≥ 0. Metres, frame of the
 * rink. Duration 0 for a body that stands. Where the boards come first the body is kept at its room to them.
 */
export const evenlySlowingWay = (
  boards: Boards,
  from: Readonly<Body>,
  endMps: number,
  forS: number,
  backward: boolean,
): RouteWay => {
  const startMps = Math.hypot(from.xMps, from.yMps);
  const lengthM = ((startMps + endMps) / 2) * forS;
  if (!(startMps > 0 && lengthM > 0)) return standingWay(from, backward);
  const count = Math.ceil(lengthM / PLACES_APART_M) + 1;
  const stepM = lengthM / (count - 1);
  const rateMps2 = (endMps - startMps) / forS;
  const way = emptyWay(count);
  for (let i = 0; i < count; i++) {
    const sM = i * stepM;
    const isLast = i === count - 1;
    const speedMps = isLast ? endMps : Math.sqrt(Math.max(0, startMps ** 2 + 2 * rateMps2 * sM));
    way.xM[i] = from.xM + (sM * from.xMps) / startMps;
    way.yM[i] = from.yM + (sM * from.yMps) / startMps;
    way.speedMps[i] = speedMps;
    // The mean speed of an even change; right also when there is none.
    way.timeS[i] = isLast ? forS : (2 * sM) / (startMps + speedMps);
  }
  keepOnIce(boards, way);
  return { ...way, durationS: forS, stepM, backward, off: null };
};

/** Room for that many places. */
export const emptyWay = (count: number): WayPlaces => ({
  xM: new Float64Array(count),
  yM: new Float64Array(count),
  speedMps: new Float64Array(count),
  timeS: new Float64Array(count),
});

/** No way at all: there, at rest, for no time. */
export const standingWay = (from: Readonly<Body>, backward: boolean): RouteWay => ({
  durationS: 0,
  stepM: 0,
  backward,
  off: null,
  xM: Float64Array.of(from.xM),
  yM: Float64Array.of(from.yM),
  speedMps: Float64Array.of(0),
  timeS: Float64Array.of(0),
});

/** A hair more than a skater's room to the boards, so that the cubic between two places on it stays outside it. Metres. */
export const WAY_ROOM_M = BOARDS_ROOM_M.value + 0.01;

/** Moves places nearer to the boards than a skater can be to where one can. Changes them in place. */
export const keepOnIce = (boards: Boards, { xM, yM }: Pick<WayPlaces, 'xM' | 'yM'>): void => {
  for (let i = 0; i < xM.length; i++) {
    if (boardsDistanceAt(boards, xM[i]!, yM[i]!) >= WAY_ROOM_M) continue;
    const point = { xM: xM[i]!, yM: yM[i]! };
    pushInside(boards, point, WAY_ROOM_M);
    xM[i] = point.xM;
    yM[i] = point.yM;
  }
};
