/** Where a default comes from. `derived` is our arithmetic on sourced figures; `estimate` has no source. */
export type Status = 'sourced' | 'derived' | 'estimate';

/** One physical default: every number of a formula is such a row, and the app shows it on "why". */
export interface Row {
  readonly name: string;
  readonly value: number;
  /** SI unit as printed, '' for a ratio. */
  readonly unit: string;
  /** Edges between which the value is plausible, in the same unit. */
  readonly range: readonly [low: number, high: number];
  readonly source: string;
  readonly status: Status;
}

/** A default without a source: what it is, SI value and unit ('' for a ratio), between which values it may lie, and why this one. */
export const estimateRow = (
  name: string,
  value: number,
  unit: string,
  range: Row['range'],
  source: string,
): Row => ({ name, value, unit, range, source, status: 'estimate' });
