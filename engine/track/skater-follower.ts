import type { GreyPicture } from '../carry/grey-picture.ts';
import { iceFromFilm } from '../film/ice-from-film.ts';
import type { PinFit } from '../film/pins.ts';
import { GRID_M } from './body-patch.ts';
import { followOneWay, type SoughtFrame } from './follow-one-way.ts';
import type { FoundWays, HandMark } from './found-ways.ts';
import { cropOf } from './frame-crop.ts';
import { joinedPlaces } from './join-ways.ts';
import type { SkatePower } from './skate-step.ts';
import { type SeenPlace, smoothWay, type WayPoint } from './smooth-way.ts';
import { steadyWay } from './steady-way.ts';
import { BEYOND_HANDS } from './track-rows.ts';
import { type Upright, uprightAt } from './upright.ts';
import { goTogether } from './ways-meet.ts';

/** Follows one skater through pictures given in order. */
export interface SkaterFollower {
  next(frameIndex: number, timeS: number, picture: GreyPicture): void;
  /** To be called after the last picture. */
  end(): readonly FoundWays[];
}

/**
 * Follows one skater between the frames in which a hand put his feet, and a little beyond the first and the last: forward from each and backward from the
 * next. Only the part of each picture in which he can be is kept, until the next hand frame. Where both ways did not keep together he is looked for once more,
 * led by what both say. `marks` in order of time, at least one; `fitAt` ties a frame (null: it has no tie). Pictures come in growing `frameIndex`. Source: our own; as `followOneWay`.
 */
export const skaterFollowerOf = (
  marks: readonly HandMark[],
  fitAt: (frameIndex: number) => PinFit | null,
  power: SkatePower,
): SkaterFollower => {
  const hands = marks.flatMap((mark): SeenPlace[] => {
    const fit = fitAt(mark.frameIndex);
    const placed = fit && iceFromFilm(fit, mark.footPx);
    return placed?.kind === 'placed' ? [{ timeS: mark.timeS, atM: placed.atM, covM2: placed.covM2 }] : [];
  });
  const ways: FoundWays[] = [];
  let kept: SoughtFrame[] = [];
  let open = 0;
  const guessed = new Map<number, WayPoint>();
  const guessAt = (timeS: number): WayPoint => {
    const guess = guessed.get(timeS) ?? smoothWay(hands, [timeS], power)[0]!;
    guessed.set(timeS, guess);
    return guess;
  };
  const close = (): void => {
    const ends = { from: marks[open - 1] ?? null, to: marks[open] ?? null };
    const found = foundBetween(ends, kept, guessAt);
    const isSure = !ends.from || !ends.to || goTogether(found.forward, found.backward);
    ways.push(isSure ? found : lookedAgain(found));
  };
  /** Where the ways did not keep together, what both say is a better guess than what the hands alone say. */
  const lookedAgain = (found: FoundWays): FoundWays => {
    const timesS = [...new Set(kept.map(({ timeS }) => timeS))].sort((a, b) => a - b);
    const points = steadyWay(joinedPlaces([found], marks, fitAt), timesS, power);
    const better = new Map(points.map(point => [point.timeS, point]));
    return foundBetween(found, kept, timeS => better.get(timeS) ?? guessAt(timeS));
  };
  const next = (frameIndex: number, timeS: number, picture: GreyPicture): void => {
    if (hands.length === 0) return;
    const [before, after] = [marks[open - 1], marks[open]];
    const nearS = Math.min(before ? timeS - before.timeS : Infinity, after ? after.timeS - timeS : Infinity);
    if (!(before && after) && nearS > BEYOND_HANDS.value) return;
    const fit = fitAt(frameIndex);
    const { widthPx, heightPx } = picture;
    const frame = { frameIndex, timeS, fit, crop: null, widthPx, heightPx };
    kept.push(fit ? { ...frame, crop: keptOf(picture, fit, guessAt(timeS)) } : frame);
    while (marks[open] && frameIndex >= marks[open]!.frameIndex) {
      close();
      kept = kept.slice(-1);
      open++;
    }
  };
  const end = (): readonly FoundWays[] => {
    if (kept.length > 1) close();
    return ways;
  };
  return { next, end };
};

const foundBetween = (
  { from, to }: { readonly from: HandMark | null; readonly to: HandMark | null },
  kept: readonly SoughtFrame[],
  guessAt: (timeS: number) => WayPoint,
): FoundWays => ({
  from,
  to,
  forward: from ? followOneWay(kept, from.footPx, guessAt, !to) : [],
  backward: to ? followOneWay([...kept].reverse(), to.footPx, guessAt, !from) : [],
});

const keptOf = (picture: GreyPicture, fit: PinFit, guess: WayPoint) => {
  const { atM, covariance } = guess;
  const reach = (variance: number) => Math.min(MOST_REACH_M, LEAST_REACH_M + 2.5 * Math.sqrt(variance));
  const [rx, ry] = [reach(covariance[0]!), reach(covariance[5]!)];
  const stands = [-1, 1].flatMap(sx =>
    [-1, 1].map(sy => uprightAt(fit, { xM: atM.xM + sx * rx, yM: atM.yM + sy * ry })),
  );
  const middle = uprightAt(fit, atM);
  const seen = [...stands, middle].filter((one): one is Upright => one !== null);
  if (!middle || seen.length === 0) return null;
  const points = seen.flatMap(({ footPx, acrossPx, upPx }) =>
    [-1, 1].flatMap(side =>
      [-0.8, 2.8].map(up => ({
        xPx: footPx.xPx + side * 1.2 * acrossPx[0] + up * upPx[0],
        yPx: footPx.yPx + side * 1.2 * acrossPx[1] + up * upPx[1],
      })),
    ),
  );
  const xs = points.map(({ xPx }) => xPx);
  const ys = points.map(({ yPx }) => yPx);
  const rect = {
    leftPx: Math.min(...xs),
    rightPx: Math.max(...xs),
    topPx: Math.min(...ys),
    bottomPx: Math.max(...ys),
  };
  const factor = Math.max(1, Math.floor((GRID_M * Math.hypot(...middle.acrossPx)) / 1.5));
  return cropOf(picture, rect, factor);
};

const LEAST_REACH_M = 0.8;
const MOST_REACH_M = 4.5;
