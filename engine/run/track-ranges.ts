import type { Track } from './run-result.ts';

/** Numbers a block: least and greatest x, y, ẋ and ẏ. */
const NUMBERS = 8;

/** How many numbers the ranges of a track of that many samples are, over blocks of that length. */
export const rangeNumbers = (sampleCount: number, blockLength: number): number =>
  NUMBERS * Math.ceil(sampleCount / blockLength);

/** Least and greatest place and velocity of a track over blocks of samples, so that pairs far from each other are told at once. */
export interface TrackRanges {
  /** `NUMBERS` for each block, block after block. */
  readonly numbers: Float64Array;
  readonly blockCount: number;
}

/**
 * The ranges over blocks of `blockLength` ≥ 1 samples from the first on, of every `every`-th sample (a divisor of the block).
 * Metres, metres a second. A track without samples has no blocks. `single` is where they are written, of `rangeNumbers` numbers.
 */
export const rangesOf = (
  track: Track,
  blockLength: number,
  every: number,
  single = new Float64Array(rangeNumbers(track.xM.length, blockLength)),
): TrackRanges => {
  const count = track.xM.length;
  const blockCount = Math.ceil(count / blockLength);
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

/** The same, each block taken together with `byBlocks` ≥ 0 blocks to either side. It is written into one of the two given, the other is overwritten. */
export const widened = (
  { numbers: single, blockCount }: TrackRanges,
  byBlocks: number,
  into = new Float64Array(single.length),
  spare = new Float64Array(single.length),
): TrackRanges => {
  let wide = single;
  // In strides that double, each pass adding what the one before has not: seven blocks are two passes and not six looks.
  for (let done = 0; done < byBlocks; ) {
    const stride = Math.min(2 * done + 1, byBlocks - done);
    const next = wide === into ? spare : into;
    writeNeighbours(wide, blockCount, stride, next);
    wide = next;
    done += stride;
  }
  return { numbers: wide, blockCount };
};

/** Each block taken together with the ones that many blocks away to either side, at the ends with the last there is. */
const writeNeighbours = (
  single: Float64Array,
  blockCount: number,
  stride: number,
  wide: Float64Array,
): void => {
  const count = NUMBERS * blockCount;
  const away = NUMBERS * stride;
  for (let at = 0; at < count; at += 2) {
    const column = at % NUMBERS;
    const before = Math.max(at - away, column);
    const after = Math.min(at + away, count - NUMBERS + column);
    // Compared and not by `Math.min`, which asks of each whether it is a number: they all are, and there are thousands.
    let least = single[at]!;
    if (single[before]! < least) least = single[before]!;
    if (single[after]! < least) least = single[after]!;
    let greatest = single[at + 1]!;
    if (single[before + 1]! > greatest) greatest = single[before + 1]!;
    if (single[after + 1]! > greatest) greatest = single[after + 1]!;
    wide[at] = least;
    wide[at + 1] = greatest;
  }
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
