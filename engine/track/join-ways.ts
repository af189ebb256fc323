import { FOOT_SD } from '../film/film-rows.ts';
import { iceFromFilm, type Sensitivity } from '../film/ice-from-film.ts';
import type { PinFit } from '../film/pins.ts';
import type { FilmPoint, IceCovariance, IcePoint } from '../units/points.ts';
import type { FoundPlace } from './follow-one-way.ts';
import type { FoundWays, HandMark } from './skater-follower.ts';
import type { SeenPlace } from './smooth-way.ts';
import { ERRS_TOGETHER, FOLLOW_DRIFT, FOLLOW_SD, WAYS_APART } from './track-rows.ts';
import { uprightAt } from './upright.ts';

/** What one frame says of a skater, without the doubt of its tie. */
export interface JoinedPlace extends SeenPlace {
  readonly frameIndex: number;
  /** Put there by hand; else found from before, from after, from both, or from the nearer of two that disagree. */
  readonly by: 'hand' | 'before' | 'after' | 'both' | 'nearer';
}

/**
 * The places of a skater that were found forward and backward made one list in order of time, with the hand's own. Where both ways speak they are weighed by
 * their ±, which grows with the time since their hand frame; where they are too far apart for that, the nearer hand's stands and its ± takes in the other.
 * The ± is raised so that frames of one stride count as one. Source: least-variance combination (Gauss–Markov); our own growth, see the rows.
 */
export const joinedPlaces = (
  ways: readonly FoundWays[],
  marks: readonly HandMark[],
  fitAt: (frameIndex: number) => PinFit | null,
): JoinedPlace[] => {
  const places: JoinedPlace[] = marks.flatMap(({ frameIndex, timeS, footPx }) => {
    const seen = seenAt(fitAt(frameIndex), footPx, { px: FOOT_SD.value });
    return seen ? [{ ...seen, frameIndex, timeS, by: 'hand' as const }] : [];
  });
  const byHand = new Set(marks.map(mark => mark.frameIndex));
  for (const { forward, backward } of ways) {
    const stepS = stepOf(forward.length > 1 ? forward : backward);
    const raise = Math.max(1, ERRS_TOGETHER.value / Math.max(stepS, 1e-3));
    const after = new Map(backward.map(place => [place.frameIndex, place]));
    const before = new Map(forward.map(place => [place.frameIndex, place]));
    for (const frameIndex of new Set([...before.keys(), ...after.keys()])) {
      const fit = fitAt(frameIndex);
      if (byHand.has(frameIndex) || !fit) continue;
      const one = joined(before.get(frameIndex), after.get(frameIndex), fit);
      if (one) places.push({ ...one, covM2: times(one.covM2, raise) });
    }
  }
  return places.sort((a, b) => a.timeS - b.timeS);
};

const joined = (
  before: FoundPlace | undefined,
  after: FoundPlace | undefined,
  fit: PinFit,
): JoinedPlace | undefined => {
  const [one, other] = [before, after].map(place => {
    const seen = place && seenAt(fit, place.footPx, { m: sdOf(place) });
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
    const nearer = sdOf(one.place) <= sdOf(other.place) ? one : other;
    const spread = { xxM2: apart.xM ** 2, xyM2: apart.xM * apart.yM, yyM2: apart.yM ** 2 };
    return { frameIndex, timeS, atM: nearer.atM, covM2: plus(nearer.covM2, spread), by: 'nearer' };
  }
  return { frameIndex, timeS, ...weighed(one, other), by: 'both' };
};

const sdOf = ({ sinceS, unseenS }: FoundPlace): number =>
  FOLLOW_SD.value + FOLLOW_DRIFT.value * (sinceS + 2 * unseenS);

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

const inverse = ({ xxM2, xyM2, yyM2 }: IceCovariance): IceCovariance => {
  const determinant = xxM2 * yyM2 - xyM2 * xyM2;
  return { xxM2: yyM2 / determinant, xyM2: -xyM2 / determinant, yyM2: xxM2 / determinant };
};

const plus = (a: IceCovariance, b: IceCovariance): IceCovariance => ({
  xxM2: a.xxM2 + b.xxM2,
  xyM2: a.xyM2 + b.xyM2,
  yyM2: a.yyM2 + b.yyM2,
});

const times = ({ xxM2, xyM2, yyM2 }: IceCovariance, by: number): IceCovariance => ({
  xxM2: xxM2 * by,
  xyM2: xyM2 * by,
  yyM2: yyM2 * by,
});

const squareIn = ({ xM, yM }: IcePoint, covM2: IceCovariance): number => {
  const { xxM2, xyM2, yyM2 } = inverse(covM2);
  return xxM2 * xM * xM + 2 * xyM2 * xM * yM + yyM2 * yM * yM;
};

const stepOf = (places: readonly FoundPlace[]): number => {
  const [first, second] = places;
  return first && second ? Math.abs(second.timeS - first.timeS) : 1;
};
