import type { BenchRow } from './bench-row.ts';

/** Work of one size, for a bench that shows how cost grows. */
export interface SizedWork {
  readonly size: number;
  readonly work: () => void;
}

const ROUNDS = 21;
const WARM_UPS = 3;

/** The exponent of the straight line through log size and log time, sizes timed in turn: linear work has 1. */
export function growthRow(name: string, sizes: readonly SizedWork[], mostExponent = 1.1): BenchRow {
  const timesMs = sizes.map(() => [] as number[]);
  for (let round = 0; round < ROUNDS + WARM_UPS; round++) {
    for (const [i, { work }] of sizes.entries()) {
      const from = performance.now();
      work();
      if (round >= WARM_UPS) timesMs[i]!.push(performance.now() - from);
    }
  }
  // From the quickest of each size, since others on the machine only ever add; single rounds give the spread.
  const quickestMs = timesMs.map(times => Math.min(...times));
  const exponent = exponentOf(sizes, quickestMs);
  const rounds = timesMs[0]!.map((_, round) =>
    exponentOf(
      sizes,
      timesMs.map(times => times[round]!),
    ),
  );
  rounds.sort((one, other) => one - other);
  return {
    name,
    bar: `exponent ≤ ${mostExponent}`,
    median: exponent,
    spread: `${rounds[2]!.toFixed(2)} to ${rounds.at(-3)!.toFixed(2)}`,
    unit: '',
    meets: exponent <= mostExponent,
    note: sizes.map(({ size }, i) => `${size}: ${quickestMs[i]!.toFixed(2)} ms`).join(', '),
  };
}

/** Slope of the least-squares line. */
function exponentOf(sizes: readonly SizedWork[], timesMs: readonly number[]): number {
  const x = sizes.map(({ size }) => Math.log(size));
  const y = timesMs.map(Math.log);
  const [meanX, meanY] = [mean(x), mean(y)];
  const along = x.reduce((sum, one, i) => sum + (one - meanX) * (y[i]! - meanY), 0);
  return along / x.reduce((sum, one) => sum + (one - meanX) ** 2, 0);
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
