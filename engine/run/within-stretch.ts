import { ACTOR_NUMBERS, FACING_X, FACING_Y, X_MPS } from './actor-numbers.ts';
import type { Recorder } from './recorded.ts';

/**
 * Samples that lie within a stretch. Nothing happens there, so everybody is on the cubic with the velocities at both ends of it. Of most
 * reps of many nobody reads such a sample: while columns are written only when they are read, the rows of the first two samples within a stretch
 * hold its two ends, and `nths` says of each sample the how-manieth of its stretch it is (0: its row is the sample itself).
 */

/** The numbers of the first two samples within a stretch: everybody at its one end and at the other. */
export const keepEnds = (recorder: Recorder, numbers: Float64Array): void => {
  const { rows, count } = recorder;
  // Both halves of the block of the run follow each other as the two rows do.
  rows.set(numbers, (count * numbers.length) / 2);
};

/** How many samples within a stretch there must be for its ends to have room in their rows. */
export const ENDS_ROWS = 2;

/** Writes the rows of one skater for all samples within stretches; from then on they are as any other. */
export const fillWithin = (recorder: Recorder, a: number): void => {
  const { nths, shares, lengthsS, rows, actorCount, count } = recorder;
  const rowLength = actorCount * ACTOR_NUMBERS;
  let first = -1;
  for (let i = 0; i < count; i++) {
    if (nths[i] === 0) continue;
    const at = i * rowLength + a * ACTOR_NUMBERS;
    if (nths[i] === 1) {
      first = at;
      ends.set(rows.subarray(first, first + ACTOR_NUMBERS));
      ends.set(rows.subarray(first + rowLength, first + rowLength + ACTOR_NUMBERS), ACTOR_NUMBERS);
    }
    setBetween(ends, 0, ACTOR_NUMBERS, shares[i]!, lengthsS[i]!, rows, at);
  }
};

const ends = new Float64Array(2 * ACTOR_NUMBERS);
const one = new Float64Array(ACTOR_NUMBERS);

/** How far a skater is along the rink in one sample, metres, when the rows of that skater were not filled yet. */
export const xMWithin = (
  { nths, shares, lengthsS, rows, actorCount }: Recorder,
  a: number,
  i: number,
): number => {
  const rowLength = actorCount * ACTOR_NUMBERS;
  const nth = nths[i]!;
  if (nth === 0) return rows[i * rowLength + a * ACTOR_NUMBERS]!;
  const from = (i - nth + 1) * rowLength + a * ACTOR_NUMBERS;
  setBetween(rows, from, from + rowLength, shares[i]!, lengthsS[i]!, one, 0);
  return one[0]!;
};

/** Writes the numbers of one skater that part of the way from those at `from` to those at `to`, which lie so many seconds apart, to `at`. */
export const setBetween = (
  numbers: Float64Array,
  from: number,
  to: number,
  share: number,
  lengthS: number,
  into: Float64Array,
  at: number,
): void => {
  const rest = 1 - share;
  const h01 = share * share * (3 - 2 * share);
  const h10 = share * rest * rest * lengthS;
  const h11 = -share * share * rest * lengthS;
  for (let i = 0; i < X_MPS; i++) {
    const fromMps = numbers[from + i + X_MPS]!;
    const toMps = numbers[to + i + X_MPS]!;
    into[at + i] =
      numbers[from + i]! + h01 * (numbers[to + i]! - numbers[from + i]!) + h10 * fromMps + h11 * toMps;
    into[at + i + X_MPS] = fromMps + share * (toMps - fromMps);
  }
  const x = rest * numbers[from + FACING_X]! + share * numbers[to + FACING_X]!;
  const y = rest * numbers[from + FACING_Y]! + share * numbers[to + FACING_Y]!;
  const size = Math.sqrt(x * x + y * y);
  into[at + FACING_X] = size > 0 ? x / size : numbers[from + FACING_X]!;
  into[at + FACING_Y] = size > 0 ? y / size : numbers[from + FACING_Y]!;
};
