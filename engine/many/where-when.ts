import type { Estimate, IcePoint } from '../units/points.ts';

/**
 * Where and when something came, over many reps. Whole millimetres and milliseconds, so that sums have no rounding and any
 * order of adding gives the same bytes; exact up to a million reps.
 */
export interface WhereWhen {
  readonly count: number;
  readonly sumXMm: number;
  readonly sumYMm: number;
  readonly sumMs: number;
  readonly sumXXMm2: number;
  readonly sumYYMm2: number;
  readonly sumMsMs2: number;
  /** A part of them, those of the reps that come first in the order of the seed. Sorted. */
  readonly samples: readonly WhereSample[];
}

/** Order and number of the rep, place in millimetres, milliseconds after the whistle. */
export type WhereSample = readonly [order: number, rep: number, xMm: number, yMm: number, ms: number];

export const NOWHERE: WhereWhen = {
  count: 0,
  sumXMm: 0,
  sumYMm: 0,
  sumMs: 0,
  sumXXMm2: 0,
  sumYYMm2: 0,
  sumMsMs2: 0,
  samples: [],
};

/** Kept of each thing that is counted, and of what is wanted. */
export const FEWER_SAMPLES = 250;
export const MOST_SAMPLES = 1000;

/** Whole millimetres or milliseconds of any finite metres or seconds. */
export const thousandths = (value: number): number => Math.round(value * 1000) + 0;

/** All samples of one chunk together; in any order. Keeps at most `most` of them. */
export const whereWhenOf = (all: readonly WhereSample[], most: number): WhereWhen => {
  if (all.length === 0) return NOWHERE;
  const sum = (of: (sample: WhereSample) => number): number => all.reduce((so, one) => so + of(one), 0);
  return {
    count: all.length,
    sumXMm: sum(one => one[2]),
    sumYMm: sum(one => one[3]),
    sumMs: sum(one => one[4]),
    sumXXMm2: sum(one => one[2] * one[2]),
    sumYYMm2: sum(one => one[3] * one[3]),
    sumMsMs2: sum(one => one[4] * one[4]),
    samples: firstOf(all, most),
  };
};

/** Of two parts of the same many-run; the order of the two does not matter. */
export const mergeWhereWhen = (a: WhereWhen, b: WhereWhen, most = FEWER_SAMPLES): WhereWhen => {
  if (a.count === 0) return b;
  if (b.count === 0) return a;
  return {
    count: a.count + b.count,
    sumXMm: a.sumXMm + b.sumXMm,
    sumYMm: a.sumYMm + b.sumYMm,
    sumMs: a.sumMs + b.sumMs,
    sumXXMm2: a.sumXXMm2 + b.sumXXMm2,
    sumYYMm2: a.sumYYMm2 + b.sumYYMm2,
    sumMsMs2: a.sumMsMs2 + b.sumMsMs2,
    samples: firstOf([...a.samples, ...b.samples], most),
  };
};

/** Mean and standard deviation of x, y (metres) and time (seconds after the whistle); undefined when it never came. */
export const spreadOf = (
  of: WhereWhen,
): { readonly xM: Estimate; readonly yM: Estimate; readonly timeS: Estimate } | undefined => {
  if (of.count === 0) return undefined;
  const estimate = (sum: number, squares: number): Estimate => {
    const mean = sum / of.count;
    const variance = of.count > 1 ? Math.max(0, (squares - sum * mean) / (of.count - 1)) : 0;
    return { value: mean / 1000, sd: Math.sqrt(variance) / 1000 };
  };
  return {
    xM: estimate(of.sumXMm, of.sumXXMm2),
    yM: estimate(of.sumYMm, of.sumYYMm2),
    timeS: estimate(of.sumMs, of.sumMsMs2),
  };
};

/** The sampled places, metres. */
export const placesOf = (of: WhereWhen): readonly IcePoint[] =>
  of.samples.map(([, , xMm, yMm]) => ({ xM: xMm / 1000, yM: yMm / 1000 }));

const firstOf = (samples: readonly WhereSample[], most: number): readonly WhereSample[] =>
  [...samples].sort(bySample).slice(0, most);

const bySample = (a: WhereSample, b: WhereSample): number => {
  for (let k = 0; k < 5; k++) if (a[k] !== b[k]) return a[k]! - b[k]!;
  return 0;
};
