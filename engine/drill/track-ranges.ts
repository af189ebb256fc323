import type { Track } from './run-result.ts';

/** Numbers a block: least and greatest x, y, ẋ and ẏ. */
const NUMBERS = 8;

/** Least and greatest place and velocity of a track over blocks of samples, so that pairs far from each other are told at once. */
export interface TrackRanges {
  /** `NUMBERS` for each block, block after block. */
  readonly numbers: Float64Array;
  readonly blockCount: number;
}

/**
 * The ranges over blocks of `blockLength` ≥ 1 samples from the first on, of every `every`-th sample (a divisor of the block).
 * Metres, metres a second. A track without samples has no blocks.
 */
export const rangesOf = (track: Track, blockLength: number, every: number): TrackRanges => {
  const count = track.xM.length;
  const blockCount = Math.ceil(count / blockLength);
  const single = new Float64Array(NUMBERS * blockCount);
  for (let block = 0; block < blockCount; block++) {
    const from = block * blockLength;
    const to = Math.min(count, from + blockLength);
    const at = NUMBERS * block;
    writeRange(single, at, track.xM, from, to, every);
    writeRange(single, at + 2, track.yM, from, to, every);
    writeRange(single, at + 4, track.xMps, from, to, every);
    writeRange(single, at + 6, track.yMps, from, to, every);
  }
  return { numbers: single, blockCount };
};

/** The same, each block taken together with `byBlocks` ≥ 0 blocks to either side. */
export const widened = ({ numbers: single, blockCount }: TrackRanges, byBlocks: number): TrackRanges => {
  const wide = single.slice();
  for (let block = 0; block < blockCount; block++) {
    const last = Math.min(blockCount - 1, block + byBlocks);
    for (let other = Math.max(0, block - byBlocks); other <= last; other++) {
      for (let k = 0; k < NUMBERS; k += 2) {
        const low = single[NUMBERS * other + k]!;
        const high = single[NUMBERS * other + k + 1]!;
        if (low < wide[NUMBERS * block + k]!) wide[NUMBERS * block + k] = low;
        if (high > wide[NUMBERS * block + k + 1]!) wide[NUMBERS * block + k + 1] = high;
      }
    }
  }
  return { numbers: wide, blockCount };
};

/** Least distance squared, metres², that two tracks can have in a block of the one and the other. */
export const leastApart2 = (a: TrackRanges, b: TrackRanges, block: number): number => {
  const x = gapBetween(a.numbers, b.numbers, NUMBERS * block);
  const y = gapBetween(a.numbers, b.numbers, NUMBERS * block + 2);
  return x * x + y * y;
};

/** Greatest difference of velocities squared, (m/s)², that two tracks can have in a block of the one and the other. */
export const mostClosing2 = (a: TrackRanges, b: TrackRanges, block: number): number => {
  const x = spanOf(a.numbers, b.numbers, NUMBERS * block + 4);
  const y = spanOf(a.numbers, b.numbers, NUMBERS * block + 6);
  return x * x + y * y;
};

const gapBetween = (a: Float64Array, b: Float64Array, at: number): number =>
  Math.max(0, a[at]! - b[at + 1]!, b[at]! - a[at + 1]!);

const spanOf = (a: Float64Array, b: Float64Array, at: number): number =>
  Math.max(a[at + 1]! - b[at]!, b[at + 1]! - a[at]!);

const writeRange = (
  into: Float64Array,
  at: number,
  values: Float64Array,
  from: number,
  to: number,
  every: number,
): void => {
  let least = values[from]!;
  let greatest = least;
  for (let i = from + every; i < to; i += every) {
    const value = values[i]!;
    if (value < least) least = value;
    else if (value > greatest) greatest = value;
  }
  into[at] = least;
  into[at + 1] = greatest;
};
