/** One figure of `npm run bench`: a ratio in one run, or a budget. A bench checks its answer before it times. */
export interface BenchRow {
  readonly name: string;
  /** The bar as a reader would say it, "≤ 4 ms". */
  readonly bar: string;
  readonly median: number;
  /** How the runs spread, "3.1 to 3.9". */
  readonly spread: string;
  readonly unit: string;
  /** Null where there is no bar yet. */
  readonly meets: boolean | null;
  readonly note?: string;
}

/** A part that gave no figure, and why. */
export interface BenchStop {
  readonly stopped: string;
}

/** Rows all at once, or each as soon as it is known. */
export type Bench = () => Promise<readonly BenchRow[]> | AsyncIterable<BenchRow | BenchStop>;
