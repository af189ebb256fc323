import { type None, noneBecause } from '../units/none.ts';
import type { Estimate } from '../units/points.ts';
import { slideTimeAtDistance } from './slide.ts';

/** A puck filmed as it slides straight past three marks. */
export interface FilmedSlide {
  /** From the first mark to the second, and from the second to the third, m. */
  readonly spansM: readonly [number, number];
  readonly timesS: readonly [number, number, number];
  /** Spread of a read time and of a span, one standard deviation. */
  readonly timeSdS: number;
  readonly spanSdM: number;
}

export type NoFriction = None<
  'spansNotPositive' | 'timesNotInOrder' | 'doesNotSlow' | 'slowsTooMuch' | 'tooUncertain'
>;

/** A puck on ice beyond this is no puck sliding freely: twice the highest value met in print (0.22). */
const MOST_FRICTION = 0.45;

/**
 * Friction μ of the ice from one filmed slide: the μ (with its first speed) for which the slide law passes the three marks at the
 * three times; drag k and gravity given. ± to first order from the spreads of times and spans. Refused with the
 * reason when the figures are no slide, or when the ± is as large as μ itself. Times > 0 and rising. Source: the slide
 * law read backwards, checks/data/puck.json.
 */
export const frictionFromSlide = (
  film: FilmedSlide,
  dragPerM: number,
  gravityMps2: number,
): Estimate | NoFriction => {
  const [first, second] = film.spansM;
  const [t0, t1, t2] = film.timesS;
  if (!(first > 0 && second > 0)) return noneBecause('spansNotPositive');
  if (!(t0 < t1 && t1 < t2)) return noneBecause('timesNotInOrder');
  const solve = (spanA: number, spanB: number, timeA: number, timeB: number): number =>
    frictionOf(spanA, spanB, timeA, timeB, dragPerM, gravityMps2);
  const value = solve(first, second, t1 - t0, t2 - t1);
  if (value <= 0) return noneBecause('doesNotSlow');
  if (value >= MOST_FRICTION) return noneBecause('slowsTooMuch');
  const stepS = 1e-5;
  const stepM = 1e-5;
  const slope = (dA: number, dB: number, dTA: number, dTB: number, step: number): number =>
    (solve(first + dA, second + dB, t1 - t0 + dTA, t2 - t1 + dTB) -
      solve(first - dA, second - dB, t1 - t0 - dTA, t2 - t1 - dTB)) /
    (2 * step);
  // The middle time lengthens one span as it shortens the other.
  const byTimes = [
    slope(0, 0, -stepS, 0, stepS),
    slope(0, 0, stepS, -stepS, stepS),
    slope(0, 0, 0, stepS, stepS),
  ].map(each => each * film.timeSdS);
  const bySpans = [slope(stepM, 0, 0, 0, stepM), slope(0, stepM, 0, 0, stepM)].map(
    each => each * film.spanSdM,
  );
  const sd = Math.hypot(...byTimes, ...bySpans);
  return sd >= value ? noneBecause('tooUncertain') : { value, sd };
};

/** Root of the second span's time in μ; μ below 0 stands for "does not slow". */
const frictionOf = (
  spanA: number,
  spanB: number,
  timeA: number,
  timeB: number,
  dragPerM: number,
  gravityMps2: number,
): number => {
  const lateBy = (friction: number): number => {
    const slowing = { constantMps2: friction * gravityMps2, dragPerM };
    // The first speed that takes timeA over spanA: between the mean speed and where the mean would be the end.
    let low = spanA / timeA;
    let high = low + slowing.constantMps2 * timeA + 2 * dragPerM * low * low * timeA + low;
    for (let step = 0; step < 100 && high - low > 1e-15 * high; step++) {
      const middle = (low + high) / 2;
      const time = slideTimeAtDistance(slowing, middle, spanA);
      if (Number.isNaN(time) || time > timeA) low = middle;
      else high = middle;
    }
    const time = slideTimeAtDistance(slowing, high, spanA + spanB);
    return Number.isNaN(time) ? Number.POSITIVE_INFINITY : time - timeA - timeB;
  };
  if (lateBy(0) >= 0) return 0;
  let low = 0;
  let high = MOST_FRICTION;
  if (lateBy(high) < 0) return MOST_FRICTION;
  while (high - low > 1e-15) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (lateBy(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** A puck without spin filmed as it comes off straight boards. Angles from the boards, rad, in (0, π/2]. */
export interface FilmedBounce {
  readonly speedInMps: number;
  readonly angleInRad: number;
  readonly speedOutMps: number;
  readonly angleOutRad: number;
  readonly speedSdMps: number;
  readonly angleSdRad: number;
}

export interface BouncesAs {
  readonly restitution: Estimate;
  /** None when the edge gripped: any friction from there on looks the same. */
  readonly boardFriction: Estimate | None<'edgeGripped'>;
}

export type NoBounce = None<
  'speedsNotPositive' | 'anglesOutOfRange' | 'comesOffFaster' | 'speedsUpAlong' | 'slowsTooMuchAlong'
>;

/** How many standard deviations a figure may lie on the wrong side of what the law allows. */
const ALLOWED_SDS = 2;

/**
 * Restitution e and friction μ_b of the boards from one filmed bounce: e = out/in across the boards, μ_b = what was lost along them over
 * (1 + e) × into. ± to first order from the spreads of speeds and angles. Refused with the reason where no e in 0–1
 * and μ_b ≥ 0 fit within two standard deviations. Source: the impact law of `bounceOff` read backwards.
 */
export const boardsFromBounce = (film: FilmedBounce): BouncesAs | NoBounce => {
  const { speedInMps, speedOutMps, angleInRad, angleOutRad } = film;
  if (!(speedInMps > 0 && speedOutMps > 0)) return noneBecause('speedsNotPositive');
  const inRange = [angleInRad, angleOutRad].every(angle => angle > 0 && angle <= Math.PI / 2);
  if (!inRange) return noneBecause('anglesOutOfRange');
  const figures = [speedInMps, angleInRad, speedOutMps, angleOutRad] as const;
  const spreads = [film.speedSdMps, film.angleSdRad, film.speedSdMps, film.angleSdRad];
  const restitution = withSd(restitutionOf, figures, spreads);
  const lost = withSd(lostAlong, figures, spreads);
  const friction = withSd(boardFrictionOf, figures, spreads);
  if (restitution.value - ALLOWED_SDS * restitution.sd > 1) return noneBecause('comesOffFaster');
  if (lost.value + ALLOWED_SDS * lost.sd < 0) return noneBecause('speedsUpAlong');
  const mostLost = (speedInMps * Math.cos(angleInRad)) / 3;
  if (lost.value - ALLOWED_SDS * lost.sd > mostLost) return noneBecause('slowsTooMuchAlong');
  return {
    restitution: { value: Math.min(1, restitution.value), sd: restitution.sd },
    boardFriction:
      lost.value >= mostLost * (1 - GRIP_SLACK)
        ? noneBecause('edgeGripped')
        : { value: Math.max(0, friction.value), sd: friction.sd },
  };
};

/** Nearer than this share to the most a disc without spin can lose along the boards, the edge gripped. */
const GRIP_SLACK = 1e-6;

type Figures = readonly [speedIn: number, angleIn: number, speedOut: number, angleOut: number];

const restitutionOf = ([speedIn, angleIn, speedOut, angleOut]: Figures): number =>
  (speedOut * Math.sin(angleOut)) / (speedIn * Math.sin(angleIn));

const lostAlong = ([speedIn, angleIn, speedOut, angleOut]: Figures): number =>
  speedIn * Math.cos(angleIn) - speedOut * Math.cos(angleOut);

const boardFrictionOf = (figures: Figures): number =>
  lostAlong(figures) / ((1 + restitutionOf(figures)) * figures[0] * Math.sin(figures[1]));

const withSd = (of: (figures: Figures) => number, figures: Figures, spreads: readonly number[]): Estimate => {
  const step = 1e-6;
  const parts = figures.map((_, index) => {
    const at = (by: number, n: number): number => figures[n]! + (n === index ? by : 0);
    const moved = (by: number): Figures => [at(by, 0), at(by, 1), at(by, 2), at(by, 3)];
    return ((of(moved(step)) - of(moved(-step))) / (2 * step)) * spreads[index]!;
  });
  return { value: of(figures), sd: Math.hypot(...parts) };
};
