/**
 * The presentation order of a film's pictures. The number of a frame is the rank of its time stamp, never time × rate:
 * phones record at a varying rate, and containers shift and round.
 */
export interface FrameTimes {
  /** Presentation times in seconds, sorted. */
  readonly timesS: Float64Array;
  /** When the last frame ends. */
  readonly endS: number;
  readonly frameCount: number;
}

export interface FrameIndex extends FrameTimes {
  /** The film counts its times in this many parts of a second: every time stamp is a whole number of them. */
  readonly ticksPerS: number;
}

export const frameIndexOf = (
  timesS: Iterable<number>,
  lastDurationS: number,
  ticksPerS = 1e6,
): FrameIndex => {
  const sorted = Float64Array.from(timesS).sort();
  const last = sorted[sorted.length - 1] ?? 0;
  return { timesS: sorted, endS: last + lastDurationS, frameCount: sorted.length, ticksPerS };
};

/**
 * The presentation time of a frame as the fraction of a second that the file says, in lowest terms: 1001/60000 is kept as it is
 * and never becomes a rounded decimal.
 */
export const exactTimeOf = (
  index: FrameIndex,
  frameIndex: number,
): { readonly num: number; readonly den: number } => {
  const ticks = Math.round(timeOfFrame(index, frameIndex) * index.ticksPerS);
  const common = greatestCommon(Math.abs(ticks), index.ticksPerS) || 1;
  return { num: ticks / common, den: index.ticksPerS / common };
};

const greatestCommon = (a: number, b: number): number => (b === 0 ? a : greatestCommon(b, a % b));

/** The frame on screen at a time: the last one that has begun. Times before the first frame show the first. */
export const frameAtTime = (index: FrameTimes, timeS: number): number => {
  let low = 0;
  let high = index.frameCount - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (index.timesS[middle]! <= timeS + TIME_SLACK_S) low = middle;
    else high = middle - 1;
  }
  return Math.max(0, low);
};

/** The frame whose time stamp lies nearest: for times that were rounded on the way (micro- or milliseconds). */
export const nearestFrame = (index: FrameTimes, timeS: number): number => {
  const at = frameAtTime(index, timeS);
  const next = at + 1;
  if (next >= index.frameCount) return at;
  return timeS - index.timesS[at]! <= index.timesS[next]! - timeS ? at : next;
};

/** The frame that begins at this time, give or take what rounding does to it; −1 for times at which none begins. */
export const frameBeginningAt = (index: FrameTimes, timeS: number): number => {
  const at = nearestFrame(index, timeS);
  return Math.abs((index.timesS[at] ?? Number.POSITIVE_INFINITY) - timeS) <= ROUNDED_S ? at : -1;
};

export const timeOfFrame = (index: FrameTimes, frameIndex: number): number =>
  index.timesS[clampFrame(index, frameIndex)] ?? 0;

/** A time inside the frame: players asked for a frame's very start may show the one before. */
export const middleOfFrame = (index: FrameTimes, frameIndex: number): number => {
  const at = clampFrame(index, frameIndex);
  const start = index.timesS[at] ?? 0;
  const end = at + 1 < index.frameCount ? index.timesS[at + 1]! : Math.max(index.endS, start);
  return (start + end) / 2;
};

export const clampFrame = (index: FrameTimes, frameIndex: number): number =>
  Math.max(0, Math.min(index.frameCount - 1, Math.round(frameIndex)));

/** Time stamps travel as whole microseconds through the decoder. */
const TIME_SLACK_S = 1e-6;
/** Containers round to milliseconds at the coarsest. */
const ROUNDED_S = 1.5e-3;
