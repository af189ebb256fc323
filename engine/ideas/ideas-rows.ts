import type { Row } from '../units/provenance.ts';

/** Defaults of the likeness to the game and of the ideas. */

const estimate = (
  name: string,
  value: number,
  unit: string,
  range: readonly [number, number],
  source: string,
): Row => ({ name, value, unit, range, source, status: 'estimate' });

/** What somebody counts who stood in the picture and is not in the drill, or the other way round. */
export const MISSING_M = estimate(
  'somebody missing counts as',
  8,
  'm',
  [5, 12],
  'about the way between two skaters of a five in one zone',
);

export const IDEAS_ROWS: readonly Row[] = [MISSING_M];
