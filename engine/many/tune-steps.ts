import { type RateInterval, type Tally, wilsonInterval } from '../statistics/rates.ts';

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
 * The curve is every value that was tried, in order.
 */
export type TuneAnswer = { readonly curve: readonly TunePoint[] } & (
  | {
      readonly kind: 'reached';
      readonly value: number;
      readonly plusMinus: number;
      readonly rate: RateInterval;
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
 * nearest to `now` is closed in on by halving and by the line through its ends in turns. The reps must be the same people
 * and luck for every value (common random numbers): then the curve is far smoother than its intervals.
 */
export function* tuneSteps(
  setting: TuneSetting,
): Generator<TuneAsk, TuneAnswer, readonly (number | Tally)[]> {
  const { low, high, now, wantedRatio } = setting;
  const { scanCount = SCAN_COUNT, scanReps = SCAN_REPS, repCount = REP_COUNT } = setting;
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
  const curve = (): readonly TunePoint[] => [...known.values()].sort((a, b) => a.value - b.value);

  yield* look(
    Array.from({ length: scanCount }, (_, i) => low + ((high - low) * i) / (scanCount - 1)),
    scanReps,
  );
  if (now >= low && now <= high) {
    yield* look([now], repCount);
    const here = known.get(now);
    if (here && isWithinOf(here, wantedRatio)) return answerOf(curve(), setting, repCount, undefined);
  }
  // A peak or a hollow between two scanned values may reach what the scan does not: look beside the nearest twice.
  for (let round = 0; round < 2 && !findBracket(curve(), setting); round++) {
    yield* look(besideNearest(curve(), wantedRatio), scanReps);
  }
  let bracket = findBracket(curve(), setting);
  if (!bracket) {
    const { lowest, highest } = extremesOf(curve());
    yield* look([lowest.value, highest.value], repCount);
    bracket = findBracket(curve(), setting);
  }
  let jumpsIn: readonly [TunePoint, TunePoint] | undefined;
  for (let step = 0; bracket && step < MOST_REFINEMENTS; step++) {
    yield* look([bracket[0].value, bracket[1].value], repCount);
    const sure = findBracket(curve(), setting);
    if (!sure) break;
    const isSame = sure[0].value === bracket[0].value && sure[1].value === bracket[1].value;
    bracket = sure;
    if (!isSame) continue;
    if (bracket.some(point => isAsGood(point, wantedRatio))) break;
    if (bracket[1].value - bracket[0].value <= (high - low) * FINEST) {
      jumpsIn = bracket;
      break;
    }
    yield* look([between(bracket, wantedRatio, step)], repCount);
    bracket = findBracket(curve(), setting);
  }
  return answerOf(curve(), setting, repCount, jumpsIn ?? bracket);
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

/** Two neighbours on either side of the wanted rate; of several pairs the nearest to where it stands now. */
const findBracket = (
  curve: readonly TunePoint[],
  { wantedRatio, now }: TuneSetting,
): readonly [TunePoint, TunePoint] | undefined => {
  let best: readonly [TunePoint, TunePoint] | undefined;
  let bestAway = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 1 < curve.length; i++) {
    const [a, b] = [curve[i]!, curve[i + 1]!];
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

const besideNearest = (curve: readonly TunePoint[], wantedRatio: number): readonly number[] => {
  let at = 0;
  curve.forEach((point, i) => {
    if (Math.abs(missOf(point, wantedRatio)) < Math.abs(missOf(curve[at]!, wantedRatio))) at = i;
  });
  return [curve[at - 1], curve[at + 1]].flatMap(beside =>
    beside ? [(beside.value + curve[at]!.value) / 2] : [],
  );
};

const extremesOf = (curve: readonly TunePoint[]): { lowest: TunePoint; highest: TunePoint } => ({
  lowest: curve.reduce((so, one) => (one.rate.rateRatio < so.rate.rateRatio ? one : so)),
  highest: curve.reduce((so, one) => (one.rate.rateRatio > so.rate.rateRatio ? one : so)),
});

const answerOf = (
  curve: readonly TunePoint[],
  setting: TuneSetting,
  repCount: number,
  bracket: readonly [TunePoint, TunePoint] | undefined,
): TuneAnswer => {
  const { wantedRatio } = setting;
  // As it stands it may come as often as is wanted already: then nothing is to be moved.
  const asItStands = curve.find(
    point => point.value === setting.now && point.repCount >= repCount && isWithinOf(point, wantedRatio),
  );
  const near =
    asItStands ??
    (bracket ?? curve)
      .filter(point => point.repCount >= repCount)
      .sort((a, b) => Math.abs(missOf(a, wantedRatio)) - Math.abs(missOf(b, wantedRatio)))[0];
  if (near && isWithinOf(near, wantedRatio)) {
    const half = (near.rate.upperRatio - near.rate.lowerRatio) / 2;
    const range = setting.high - setting.low;
    const slope = Math.abs(slopeAt(curve, near.value, range / 8));
    const plusMinus = slope * range > half ? half / slope : range;
    return { kind: 'reached', value: near.value, plusMinus, rate: near.rate, curve };
  }
  if (bracket) return { kind: 'jumps', below: bracket[0], above: bracket[1], curve };
  return { kind: 'cannotBeReached', ...extremesOf(curve), curve };
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
