import { FOOT_SD } from '../film/film-rows.ts';
import { iceFromFilm, type Sensitivity } from '../film/ice-from-film.ts';
import type { PinFit } from '../film/pins.ts';
import type { FilmPoint, IceCovariance, IcePoint } from '../units/points.ts';
import type { FoundPlace } from './follow-one-way.ts';
import type { FoundWays, HandMark } from './found-ways.ts';
import { inverse, plus, squareIn, times } from './ice-covariance.ts';
import type { SeenPlace } from './smooth-way.ts';
import { ERRS_TOGETHER, FOLLOW_DRIFT, FOLLOW_SD, UNCHECKED, WAYS_APART } from './track-rows.ts';
import { uprightAt } from './upright.ts';
import { meetingsOf } from './ways-meet.ts';

/** What one frame says of a skater, without the doubt of its tie. */
export interface JoinedPlace extends SeenPlace {
  readonly frameIndex: number;
  /** So many places beside it share its error, and count as one with it; 1 for a hand. */
  readonly together: number;
  /** Put there by hand; else found from before, from after, from both, or from the nearer of two that disagree. */
  readonly by: 'hand' | 'before' | 'after' | 'both' | 'nearer';
}

/**
 * The places of a skater that were found forward and backward made one list in order of time, with the hand's own. Where both ways speak they are weighed by
 * their ±, which grows with the time since their hand frame; where they are too far apart for that, the nearer hand's stands and its ± takes in the other.
 * A way that the other never met again may have gone on with somebody else: its ± is wider from there on.
 * Source: least-variance combination (Gauss–Markov); our own growth, see the rows.
 */
export const joinedPlaces = (
  ways: readonly FoundWays[],
  marks: readonly HandMark[],
  fitAt: (frameIndex: number) => PinFit | null,
): JoinedPlace[] => {
  const places: JoinedPlace[] = marks.flatMap(({ frameIndex, timeS, footPx }) => {
    const seen = seenAt(fitAt(frameIndex), footPx, { px: FOOT_SD.value });
    return seen ? [{ ...seen, frameIndex, timeS, together: 1, by: 'hand' as const }] : [];
  });
  const byHand = new Set(marks.map(mark => mark.frameIndex));
  for (const { forward, backward } of ways) {
    const stepS = stepOf(forward.length > 1 ? forward : backward);
    const together = Math.max(1, ERRS_TOGETHER.value / Math.max(stepS, 1e-3));
    for (const [frameIndex, { before, after }] of doubtsOf(forward, backward)) {
      const fit = fitAt(frameIndex);
      if (byHand.has(frameIndex) || !fit) continue;
      const one = joined(before, after, fit);
      if (one) places.push({ ...one, together });
    }
  }
  return places.sort((a, b) => a.timeS - b.timeS);
};

/** A found place, and the standard deviation it is thought to have, metres each way. */
interface DoubtedPlace extends FoundPlace {
  readonly sdM: number;
}

/** The places of each frame. Where both ways last meet, each has been checked as far as its own hand. */
const doubtsOf = (
  forward: readonly FoundPlace[],
  backward: readonly FoundPlace[],
): Map<number, { before?: DoubtedPlace; after?: DoubtedPlace }> => {
  const meetings = meetingsOf(forward, backward);
  const [firstS, lastS] = [Math.min(...meetings), Math.max(...meetings)];
  const places = new Map<number, { before?: DoubtedPlace; after?: DoubtedPlace }>();
  for (const place of forward) {
    places.set(place.frameIndex, { before: { ...place, sdM: sdOf(place, place.timeS <= lastS) } });
  }
  for (const place of backward) {
    const after = { ...place, sdM: sdOf(place, place.timeS >= firstS) };
    places.set(place.frameIndex, { ...places.get(place.frameIndex), after });
  }
  return places;
};

const joined = (
  before: DoubtedPlace | undefined,
  after: DoubtedPlace | undefined,
  fit: PinFit,
): Omit<JoinedPlace, 'together'> | undefined => {
  const [one, other] = [before, after].map(place => {
    const seen = place && seenAt(fit, place.footPx, { m: place.sdM });
    return place && seen ? { place, ...seen } : undefined;
  });
  const whole = one ?? other;
  if (!whole) return undefined;
  const { frameIndex, timeS } = whole.place;
  if (!one || !other) {
    const { atM, covM2 } = whole;
    return { frameIndex, timeS, atM, covM2, by: one ? 'before' : 'after' };
  }
  const apart = { xM: other.atM.xM - one.atM.xM, yM: other.atM.yM - one.atM.yM };
  const sum = plus(one.covM2, other.covM2);
  if (squareIn(apart, sum) > WAYS_APART.value ** 2) {
    const nearer = one.place.sdM <= other.place.sdM ? one : other;
    const spread = { xxM2: apart.xM ** 2, xyM2: apart.xM * apart.yM, yyM2: apart.yM ** 2 };
    return { frameIndex, timeS, atM: nearer.atM, covM2: plus(nearer.covM2, spread), by: 'nearer' };
  }
  return { frameIndex, timeS, ...weighed(one, other), by: 'both' };
};

const sdOf = ({ sinceS, unseenS }: FoundPlace, isChecked: boolean): number =>
  (isChecked ? 1 : UNCHECKED.value) * (FOLLOW_SD.value + FOLLOW_DRIFT.value * (sinceS + 2 * unseenS));

/** A place with the ± that so much in the picture, or so much of a body, is on the ice. */
const seenAt = (
  fit: PinFit | null,
  footPx: FilmPoint,
  sd: { readonly px?: number; readonly m?: number },
): { atM: IcePoint; covM2: IceCovariance } | undefined => {
  const placed = fit && iceFromFilm(fit, footPx, { footSdPx: 0 });
  if (!fit || placed?.kind !== 'placed') return undefined;
  const upright = uprightAt(fit, placed.atM);
  const sdPx = sd.px ?? (sd.m ?? 0) * Math.hypot(...(upright?.acrossPx ?? [0, 0]));
  return sdPx > 0 ? { atM: placed.atM, covM2: clicked(placed.by, sdPx) } : undefined;
};

const clicked = ({ byClick: [xByX, xByY, yByX, yByY] }: Sensitivity, sdPx: number): IceCovariance =>
  times(
    {
      xxM2: xByX * xByX + xByY * xByY,
      xyM2: xByX * yByX + xByY * yByY,
      yyM2: yByX * yByX + yByY * yByY,
    },
    sdPx * sdPx,
  );

const weighed = (
  one: { atM: IcePoint; covM2: IceCovariance },
  other: { atM: IcePoint; covM2: IceCovariance },
): { atM: IcePoint; covM2: IceCovariance } => {
  const [a, b] = [inverse(one.covM2), inverse(other.covM2)];
  const covM2 = inverse(plus(a, b));
  const pull = {
    xM: a.xxM2 * one.atM.xM + a.xyM2 * one.atM.yM + b.xxM2 * other.atM.xM + b.xyM2 * other.atM.yM,
    yM: a.xyM2 * one.atM.xM + a.yyM2 * one.atM.yM + b.xyM2 * other.atM.xM + b.yyM2 * other.atM.yM,
  };
  return {
    atM: {
      xM: covM2.xxM2 * pull.xM + covM2.xyM2 * pull.yM,
      yM: covM2.xyM2 * pull.xM + covM2.yyM2 * pull.yM,
    },
    covM2,
  };
};

const stepOf = (places: readonly FoundPlace[]): number => {
  const [first, second] = places;
  return first && second ? Math.abs(second.timeS - first.timeS) : 1;
};
