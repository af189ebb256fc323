import { FOOT_SD } from '../film/film-rows.ts';
import { crossCovarianceOf, filmFromIce, iceFromFilm } from '../film/ice-from-film.ts';
import type { PinFit } from '../film/pins.ts';
import type { FoundWays, HandMark } from './found-ways.ts';
import { joinedPlaces } from './join-ways.ts';
import type { SkatePower } from './skate-step.ts';
import type { WayPoint } from './smooth-way.ts';
import { steadyWay } from './steady-way.ts';
import { TOO_UNSURE } from './track-rows.ts';

/** One skater at one time: feet on the ice and velocity, each with a standard deviation along its worst axis. */
export interface Look {
  readonly frameIndex: number;
  readonly timeS: number;
  readonly xM: number;
  readonly yM: number;
  readonly sdM: number;
  readonly vxMps: number;
  readonly vyMps: number;
  /** Of the speed, along the way he goes. */
  readonly sdMps: number;
}

/** A frame of the film: its number and the time at which it is shown. */
export interface FilmLook {
  readonly frameIndex: number;
  readonly timeS: number;
}

/**
 * A skater's way through the frames asked for (growing), metres and m/s: hands and what was found between them, smoothed as skaters move, with the ± of the
 * hands, of the following and of each frame's tie. Feet that no hand put down may be off, and then so is all that is followed from them. Frames in which the ± is too large to be told are left out; empty when nothing was placed.
 * Source: as `joinedPlaces` and `steadyWay`; the tie's part to first order as `iceFromFilm`.
 */
export const followedWay = (
  ways: readonly FoundWays[],
  marks: readonly HandMark[],
  fitAt: (frameIndex: number) => PinFit | null,
  frames: readonly FilmLook[],
  power: SkatePower,
): Look[] => {
  const places = joinedPlaces(ways, marks, fitAt);
  const [first, last] = [places[0], places[places.length - 1]];
  if (!first || !last) return [];
  const asked = frames.filter(({ timeS }) => timeS >= first.timeS && timeS <= last.timeS);
  const points = steadyWay(
    places,
    asked.map(({ timeS }) => timeS),
    power,
  );
  return asked.flatMap((frame, i) => {
    const look = lookOf(frame, points[i]!, fitAt(frame.frameIndex), startSdPx(marks, frame.timeS));
    return look.sdM <= TOO_UNSURE.value ? [look] : [];
  });
};

/** By how much more than a click the feet may be off that a time is followed from. */
const startSdPx = (marks: readonly HandMark[], timeS: number): number => {
  const nearest = marks.reduce((best, mark) =>
    Math.abs(mark.timeS - timeS) < Math.abs(best.timeS - timeS) ? mark : best,
  );
  return Math.sqrt(Math.max(0, (nearest.footSdPx ?? 0) ** 2 - FOOT_SD.value ** 2));
};

const lookOf = (
  { frameIndex, timeS }: FilmLook,
  point: WayPoint,
  fit: PinFit | null,
  footSdPx: number,
): Look => {
  const { atM, velocityMps, covariance: c } = point;
  const { xMps: vxMps, yMps: vyMps } = velocityMps;
  const tie = fit && tieDoubt(fit, point, footSdPx);
  const [xx, xy, yy] = [c[0]! + (tie?.xx ?? 0), c[1]! + (tie?.xy ?? 0), c[5]! + (tie?.yy ?? 0)];
  const worst = (xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy);
  const speed = Math.hypot(vxMps, vyMps);
  // Standing still has no direction: the worse axis then.
  const along =
    speed > 1e-6
      ? (vxMps * vxMps * c[10]! + 2 * vxMps * vyMps * c[11]! + vyMps * vyMps * c[15]!) / (speed * speed)
      : Math.max(c[10]!, c[15]!);
  return {
    frameIndex,
    timeS,
    xM: atM.xM,
    yM: atM.yM,
    sdM: Math.sqrt(worst),
    vxMps,
    vyMps,
    sdMps: Math.sqrt(along + (tie?.speed ?? 0)),
  };
};

/** What the tie, and the feet it was followed from, leave open: of the place, m², and of the speed, as far as it stretches the way of half a second, (m/s)². */
const tieDoubt = (fit: PinFit, { atM, velocityMps }: WayPoint, footSdPx: number) => {
  const ends = [-STRETCH_S, 0, STRETCH_S].map(s => {
    const px = filmFromIce(fit, { xM: atM.xM + s * velocityMps.xMps, yM: atM.yM + s * velocityMps.yMps });
    const placed = px && iceFromFilm(fit, px, { footSdPx: s === 0 ? footSdPx : 0 });
    return placed?.kind === 'placed' ? placed : undefined;
  });
  const [before, here, after] = ends;
  if (!here) return undefined;
  const { xxM2: xx, xyM2: xy, yyM2: yy } = here.covM2;
  const speed = Math.hypot(velocityMps.xMps, velocityMps.yMps);
  if (!before || !after || speed < 1e-6) return { xx, xy, yy, speed: 0 };
  const [ux, uy] = [velocityMps.xMps / speed, velocityMps.yMps / speed];
  const between = crossCovarianceOf(fit, before.by, after.by, false);
  const variance =
    ux * ux * (before.covM2.xxM2 + after.covM2.xxM2 - 2 * between[0]) +
    ux * uy * (2 * (before.covM2.xyM2 + after.covM2.xyM2) - 2 * (between[1] + between[2])) +
    uy * uy * (before.covM2.yyM2 + after.covM2.yyM2 - 2 * between[3]);
  return { xx, xy, yy, speed: Math.max(0, variance) / (2 * STRETCH_S) ** 2 };
};
const STRETCH_S = 0.25;
