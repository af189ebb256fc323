import { type None, noneBecause } from '../units/none.ts';

/** Agreement of two taggers beyond chance. */
export interface Kappa {
  readonly kappa: number;
  readonly observedAgreement: number;
  readonly expectedAgreement: number;
  /** Large-sample standard error; null where its first order is zero or undefined (perfect agreement, or one tagger always says the same). */
  readonly standardError: number | null;
}

/**
 * Cohen's kappa of a square table of counts: rows = first tagger's words, columns = second's, in the same order. None:
 * no data, or both always said the same single word (chance agreement is 1). Throws on a table that is not square.
 * Sources: Cohen 1960, Educ Psychol Meas 20:37; Fleiss, Cohen & Everitt 1969, Psychol Bull 72:323 (standard error).
 */
export const cohenKappa = (table: readonly (readonly number[])[]): Kappa | None<'noData' | 'noVariation'> => {
  const size = table.length;
  if (table.some(row => row.length !== size))
    throw new RangeError(`kappa needs a square table, got ${size} rows`);
  const total = table.reduce((sum, row) => sum + row.reduce((a, b) => a + b, 0), 0);
  if (total <= 0) return noneBecause('noData');
  const rows = table.map(row => row.reduce((a, b) => a + b, 0) / total);
  const columns = table.map((_, k) => table.reduce((sum, row) => sum + row[k]!, 0) / total);
  const observed = table.reduce((sum, row, i) => sum + row[i]! / total, 0);
  const expected = rows.reduce((sum, share, i) => sum + share * columns[i]!, 0);
  if (rows.some((share, i) => share === 1 && columns[i] === 1)) return noneBecause('noVariation');
  const kappa = (observed - expected) / (1 - expected);
  return {
    kappa,
    observedAgreement: observed,
    expectedAgreement: expected,
    standardError: standardErrorOf(table, total, rows, columns, observed, expected, kappa),
  };
};

const standardErrorOf = (
  table: readonly (readonly number[])[],
  total: number,
  rows: readonly number[],
  columns: readonly number[],
  observed: number,
  expected: number,
  kappa: number,
): number | null => {
  const oneWord = (shares: readonly number[]): boolean => shares.some(share => share === 1);
  if (observed >= 1 || oneWord(rows) || oneWord(columns)) return null;
  let agreeing = 0;
  let differing = 0;
  table.forEach((row, i) => {
    row.forEach((count, k) => {
      const share = count / total;
      if (i === k) agreeing += share * (1 - (rows[i]! + columns[i]!) * (1 - kappa)) ** 2;
      else differing += share * (columns[i]! + rows[k]!) ** 2;
    });
  });
  const variance =
    (agreeing + (1 - kappa) ** 2 * differing - (kappa - expected * (1 - kappa)) ** 2) /
    (total * (1 - expected) ** 2);
  return variance > 0 ? Math.sqrt(variance) : null;
};
