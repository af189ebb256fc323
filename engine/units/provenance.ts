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
