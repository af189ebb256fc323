import type { BenchRow } from '../../cli/bench-row.ts';

/** Figures of a bench as its rows say them. */

export const sorted = (values: readonly number[]): number[] => [...values].sort((one, other) => one - other);

/** The value below which this share of them lies. */
export const atShare = (values: readonly number[], share: number): number => {
  if (values.length === 0) throw new Error('a bench measured nothing');
  const all = sorted(values);
  return all[Math.min(all.length - 1, Math.max(0, Math.ceil(share * all.length) - 1))]!;
};

export const median = (values: readonly number[]): number => atShare(values, 0.5);

export const spreadOf = (values: readonly number[]): string =>
  `${short(atShare(values, 0.1))} to ${short(atShare(values, 0.9))}`;

export const short = (value: number): string => `${Number(value.toPrecision(3))}`;

/** A budget that a share of the values must keep: 0.5 for the median. */
export const budget = (of: {
  readonly name: string;
  readonly values: readonly number[];
  readonly most: number | null;
  readonly share?: number;
  readonly unit?: string;
  readonly note?: string;
}): BenchRow => {
  const { name, values, most, share = 0.5, unit = 'ms', note } = of;
  const judged = share === 0.5 ? '' : ` p${Math.round(100 * share)}`;
  return {
    name,
    bar: most === null ? '–' : `≤ ${most} ${unit}${judged}`,
    median: median(values),
    spread: share === 0.5 ? spreadOf(values) : `p${Math.round(100 * share)} ${short(atShare(values, share))}`,
    unit,
    meets: most === null ? null : atShare(values, share) <= most,
    ...(note === undefined ? {} : { note }),
  };
};
