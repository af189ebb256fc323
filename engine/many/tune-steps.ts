import { type RateInterval, type Tally, wilsonInterval } from '../statistics/rates.ts';
import { leastAskedRatio, withRepsThatAsk } from './asked-share.ts';

/** What is looked for: a value between `low` and `high` (any unit) at which the outcome comes in this share of reps. */
export interface TuneSetting {
  readonly low: number;
  readonly high: number;
  /** Of several answers the one nearest to this is taken. */
  readonly now: number;
  /** 0 to 1. */
  readonly wantedRatio: number;
  /** Values looked at first, and reps of each. */
  readonly scanCount?: number;
  readonly scanReps?: number;
  /** Reps of each value near the answer. */
  readonly repCount?: number;
  /** Reps with which an answer is tried before it is given; as many as `repCount` when left out. */
  readonly verifyReps?: number;
  /** Whether as many reps must come to the question as do now, or nearly as many as at the best value. */
  readonly askedAs?: 'now' | 'most';
}

/** A question to whoever can play reps: how often does it come at these values, in the first `repCount` reps? */
export interface TuneAsk {
  readonly values: readonly number[];
  readonly repCount: number;
}

export interface TunePoint {
  readonly value: number;
  readonly successCount: number;
  /** Reps that came to where it is asked; with none of them the rate is 0 and its interval everything. */
  readonly trialCount: number;
  readonly repCount: number;
  readonly rate: RateInterval;
}

/**
 * `reached`: the value, the ± that comes from its rate's 95 % interval over the slope there, and its rate. `jumps`: the rate leaps over the
 * wanted one between two values that lie as near as can be told apart. `cannotBeReached`: between which rates it stays.
 * `neverAsked`: nowhere do enough reps come to the question.
 * The curve is every value that was tried, in order; where a smaller share of reps than `leastAskedRatio` comes to the question, the value
 * is no answer and no end of the range that can be reached.
 */
export type TuneAnswer = {
  readonly curve: readonly TunePoint[];
  /** 0 to 1. */
  readonly leastAskedRatio: number;
} & (
  | { readonly kind: 'neverAsked' }
  | {
      readonly kind: 'reached';
      readonly value: number;
      readonly plusMinus: number;
      readonly rate: RateInterval;
      readonly repCount: number;
      readonly trialCount: number;
    }
  | { readonly kind: 'jumps'; readonly below: TunePoint; readonly above: TunePoint }
  | { readonly kind: 'cannotBeReached'; readonly lowest: TunePoint; readonly highest: TunePoint }
);

const SCAN_COUNT = 13;
const SCAN_REPS = 160;
const REP_COUNT = 1000;
const MOST_REFINEMENTS = 9;
/** Of the range: values nearer to each other than this are not told apart. */
const FINEST = 1 / 512;

/**
 * Looks for the value, as a dialogue: yields what it must know, is given the successes in the order asked (a tally of those reps
 * that came to where it is asked, or a count when all did), and returns
 * the answer. The rate may go up, down, or both ways over the range: values are scanned first, and the crossing
 * nearest to `now` is closed in on by halving and by the line through its ends in turns. Values to which too few reps come are left out:
 * a rate of the few that are left is no drill. What is found is tried with `verifyReps` and sought further where it fails. The reps must be
 * the same people and luck for every value (common random numbers): then the curve is far smoother than its intervals.
 */
export function* tuneSteps(
  setting: TuneSetting,
): Generator<TuneAsk, TuneAnswer, readonly (number | Tally)[]> {
  const { low, high, now, wantedRatio } = setting;
  const { scanCount = SCAN_COUNT, scanReps = SCAN_REPS, repCount = REP_COUNT } = setting;
  const { verifyReps = repCount } = setting;
  const known = new Map<number, TunePoint>();
  function* look(
    values: readonly number[],
    reps: number,
  ): Generator<TuneAsk, void, readonly (number | Tally)[]> {
    const unknown = values.filter(value => (known.get(value)?.repCount ?? 0) < reps);
    if (unknown.length === 0) return;
    const counts = yield { values: unknown, repCount: reps };
    unknown.forEach((value, i) => {
      known.set(value, pointOf(value, counts[i]!, reps));
    });
  }
  const looked = (): Looked => {
    const curve = [...known.values()].sort((a, b) => a.value - b.value);
    const leastRatio = leastAskedRatio(curve, setting.askedAs === 'most' ? undefined : known.get(now));
    return { curve, leastRatio, good: withRepsThatAsk(curve, leastRatio) };
  };
  function* closeIn(reps: number): Generator<TuneAsk, TuneAnswer, readonly (number | Tally)[]> {
    if (reps === repCount && now >= low && now <= high) {
      yield* look([now], reps);
      const here = looked().good.find(point => point.value === now);
      if (here && isWithinOf(here, wantedRatio)) return answerOf(looked(), setting, reps, undefined);
    }
    // A peak or a hollow between two scanned values may reach what the scan does not: look beside the nearest twice.
    for (let round = 0; round < 2 && !findBracket(looked(), setting); round++) {
      yield* look(besideNearest(looked(), wantedRatio), scanReps);
    }
    let bracket = findBracket(looked(), setting);
    if (!bracket) {
      const extremes = findExtremes(looked().good);
      if (extremes) yield* look([extremes.lowest.value, extremes.highest.value], reps);
      bracket = findBracket(looked(), setting);
    }
    let jumpsIn: readonly [TunePoint, TunePoint] | undefined;
    for (let step = 0; bracket && step < MOST_REFINEMENTS; step++) {
      yield* look([bracket[0].value, bracket[1].value], reps);
      const sure = findBracket(looked(), setting);
      if (!sure) break;
      const isSame = sure[0].value === bracket[0].value && sure[1].value === bracket[1].value;
      bracket = sure;
      if (!isSame) continue;
      if (bracket.some(point => isAsGood(point, wantedRatio))) break;
      if (bracket[1].value - bracket[0].value <= (high - low) * FINEST) {
        jumpsIn = bracket;
        break;
      }
      yield* look([between(bracket, wantedRatio, step)], reps);
      bracket = findBracket(looked(), setting);
    }
    return answerOf(looked(), setting, reps, jumpsIn ?? bracket);
  }

  yield* look(
    Array.from({ length: scanCount }, (_, i) => low + ((high - low) * i) / (scanCount - 1)),
    scanReps,
  );
  const first = yield* closeIn(repCount);
  if (first.kind !== 'reached' || verifyReps <= repCount) return first;
  yield* look([first.value], verifyReps);
  const verified = answerOf(looked(), setting, verifyReps, undefined);
  return verified.kind === 'reached' ? verified : yield* closeIn(verifyReps);
}

/** What was tried so far, and those of it to which enough reps come. */
interface Looked {
  readonly curve: readonly TunePoint[];
  readonly leastRatio: number;
  readonly good: readonly TunePoint[];
}

const pointOf = (value: number, counted: number | Tally, repCount: number): TunePoint => {
  const tally = typeof counted === 'number' ? { successCount: counted, trialCount: repCount } : counted;
  const rate = wilsonInterval(tally);
  return {
    value,
    ...tally,
    repCount,
    rate: 'kind' in rate ? NEVER_ASKED : rate,
  };
};

/** At a value where no rep comes to where it is asked, it does not come, and nothing more is known. */
const NEVER_ASKED: RateInterval = { rateRatio: 0, lowerRatio: 0, upperRatio: 1 };

const missOf = (point: TunePoint, wantedRatio: number): number => point.rate.rateRatio - wantedRatio;

/** Two good neighbours on either side of the wanted rate; of several pairs the nearest to where it stands now. */
const findBracket = (
  { curve, good }: Looked,
  { wantedRatio, now }: TuneSetting,
): readonly [TunePoint, TunePoint] | undefined => {
  let best: readonly [TunePoint, TunePoint] | undefined;
  let bestAway = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 1 < curve.length; i++) {
    const [a, b] = [curve[i]!, curve[i + 1]!];
    if (!good.includes(a) || !good.includes(b)) continue;
    if (missOf(a, wantedRatio) * missOf(b, wantedRatio) > 0) continue;
    const away = Math.max(a.value - now, now - b.value, 0);
    if (away >= bestAway) continue;
    best = [a, b];
    bestAway = away;
  }
  return best;
};

/** An eighth of the ± off, or one rep: closer than the reps can tell. */
const isAsGood = (point: TunePoint, wantedRatio: number): boolean =>
  Math.abs(missOf(point, wantedRatio)) <=
  Math.max(1 / point.repCount, (point.rate.upperRatio - point.rate.lowerRatio) / 16);

/** Where the line through both ends meets the wanted rate, well inside; every third time the middle. */
const between = ([a, b]: readonly [TunePoint, TunePoint], wantedRatio: number, step: number): number => {
  const missA = missOf(a, wantedRatio);
  const share = step % 3 === 2 ? 0.5 : missA / (missA - missOf(b, wantedRatio));
  return a.value + (b.value - a.value) * Math.min(0.9, Math.max(0.1, share));
};

const besideNearest = ({ curve, good }: Looked, wantedRatio: number): readonly number[] => {
  const nearest = nearestTo(good, wantedRatio);
  if (nearest === undefined) return [];
  const at = curve.indexOf(nearest);
  return [curve[at - 1], curve[at + 1]].flatMap(beside =>
    beside ? [(beside.value + curve[at]!.value) / 2] : [],
  );
};

const nearestTo = (points: readonly TunePoint[], wantedRatio: number): TunePoint | undefined =>
  [...points].sort((a, b) => Math.abs(missOf(a, wantedRatio)) - Math.abs(missOf(b, wantedRatio)))[0];

const findExtremes = (good: readonly TunePoint[]): { lowest: TunePoint; highest: TunePoint } | undefined =>
  good.length === 0
    ? undefined
    : {
        lowest: good.reduce((so, one) => (one.rate.rateRatio < so.rate.rateRatio ? one : so)),
        highest: good.reduce((so, one) => (one.rate.rateRatio > so.rate.rateRatio ? one : so)),
      };

const answerOf = (
  { curve, leastRatio, good }: Looked,
  setting: TuneSetting,
  repCount: number,
  bracket: readonly [TunePoint, TunePoint] | undefined,
): TuneAnswer => {
  const { wantedRatio } = setting;
  const told = { curve, leastAskedRatio: leastRatio };
  const counted = good.filter(point => point.repCount >= repCount);
  // As it stands it may come as often as is wanted already: then nothing is to be moved.
  const asItStands = counted.find(point => point.value === setting.now && isWithinOf(point, wantedRatio));
  const near =
    asItStands ??
    nearestTo(bracket ? counted.filter(point => bracket.includes(point)) : counted, wantedRatio);
  if (near && isWithinOf(near, wantedRatio)) {
    const half = (near.rate.upperRatio - near.rate.lowerRatio) / 2;
    const range = setting.high - setting.low;
    const slope = Math.abs(slopeAt(good, near.value, range / 8));
    const plusMinus = slope * range > half ? half / slope : range;
    return { kind: 'reached', ...near, plusMinus, ...told };
  }
  if (bracket) return { kind: 'jumps', below: bracket[0], above: bracket[1], ...told };
  const extremes = findExtremes(good);
  return extremes ? { kind: 'cannotBeReached', ...extremes, ...told } : { kind: 'neverAsked', ...told };
};

const isWithinOf = ({ rate }: TunePoint, wantedRatio: number): boolean =>
  rate.lowerRatio <= wantedRatio && wantedRatio <= rate.upperRatio;

/** Slope of the line through the points within `reach` of the value, each counted by its reps. */
const slopeAt = (curve: readonly TunePoint[], value: number, reach: number): number => {
  const points = curve.filter(point => Math.abs(point.value - value) <= reach + 1e-9);
  const weight = points.reduce((sum, one) => sum + one.repCount, 0);
  const mean = (of: (one: TunePoint) => number): number =>
    points.reduce((sum, one) => sum + one.repCount * of(one), 0) / weight;
  const meanValue = mean(one => one.value);
  const meanRate = mean(one => one.rate.rateRatio);
  const across = mean(one => (one.value - meanValue) * (one.rate.rateRatio - meanRate));
  const along = mean(one => (one.value - meanValue) ** 2);
  return along > 0 ? across / along : 0;
};
