import type { CheckFile, NamedCase } from './check-file.ts';
import { agrees, Compare, type Comparison } from './compare.ts';
import { CaseShapeError, Fields } from './fields.ts';
import type { Kind } from './kind.ts';
import { KINDS } from './kinds.ts';

/** What came out of one file. */
export interface CheckReport {
  readonly file: string;
  readonly caseCount: number;
  readonly passedCount: number;
  readonly failedCount: number;
  /** The error that comes nearest to (or furthest over) what is allowed, in its unit. */
  readonly largest: Comparison | null;
  /** The largest error of each unit. */
  readonly largestByUnit: readonly Comparison[];
  readonly failures: readonly CheckFailure[];
}

export interface CheckFailure {
  readonly name: string;
  readonly reason: string;
}

/** Computes every case of the file. A kind of case nobody knows, and a case that cannot be read, count as failed. */
export const runChecks = (fileName: string, file: CheckFile, kinds: readonly Kind[] = KINDS): CheckReport => {
  const failures: CheckFailure[] = [];
  const measured: Comparison[] = [];
  for (const check of file.cases) {
    const outcome = outcomeOf(check, file.tolerance, kinds);
    if (typeof outcome === 'string') {
      failures.push({ name: check.name, reason: outcome });
      continue;
    }
    measured.push(...outcome.filter(({ allowed, differs }) => allowed > 0 && differs === undefined));
    const wrong = outcome.find(comparison => !agrees(comparison));
    if (wrong) failures.push({ name: check.name, reason: wordsOf(wrong) });
  }
  return {
    file: fileName,
    caseCount: file.cases.length,
    passedCount: file.cases.length - failures.length,
    failedCount: failures.length,
    largest: largestOf(measured, overAllowed),
    largestByUnit: [...new Set(measured.map(({ unit }) => unit))].map(
      unit =>
        largestOf(
          measured.filter(comparison => comparison.unit === unit),
          ({ error }) => error,
        )!,
    ),
    failures,
  };
};

const outcomeOf = (
  check: NamedCase,
  tolerance: Fields,
  kinds: readonly Kind[],
): readonly Comparison[] | string => {
  try {
    const input = new Fields(check.value.input, 'input');
    const expected = new Fields(check.value.expected, 'expected');
    const name = input.text('kind');
    const kind = kinds.find(known => known.name === name && (known.fits?.(input) ?? true));
    if (!kind) return `unknown kind "${name}"`;
    const compare = new Compare();
    kind.run({ input, expected, tolerance }, compare);
    return compare.comparisons.length > 0 ? compare.comparisons : 'nothing to compare in "expected"';
  } catch (error) {
    if (error instanceof CaseShapeError) return error.message;
    return `the computation failed: ${error instanceof Error ? error.message : String(error)}`;
  }
};

const overAllowed = ({ error, allowed }: Comparison): number =>
  allowed > 0 ? error / allowed : error > 0 ? Number.POSITIVE_INFINITY : 0;

const largestOf = (
  comparisons: readonly Comparison[],
  size: (comparison: Comparison) => number,
): Comparison | null =>
  comparisons.reduce<Comparison | null>(
    (largest, comparison) => (largest === null || size(comparison) > size(largest) ? comparison : largest),
    null,
  );

const wordsOf = ({ what, error, allowed, unit, differs }: Comparison): string =>
  differs === undefined
    ? `${what} is off by ${error.toPrecision(3)} ${unit} (allowed ${allowed})`
    : `${what}: ${differs}`;
