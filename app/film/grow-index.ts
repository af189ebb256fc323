import type { FrameIndex } from './frame-index.ts';

/**
 * An index that grows while a film is looked through: packets come in the order they are decoded, frames are numbered in the
 * order they are shown. A frame has its number once so many later packets have come that none can be shown before it.
 */
export class GrowingIndex {
  /** Numbered for good, in order; never changed, only added to. */
  private timesS = new Float64Array(4096);
  private count = 0;
  /** Not numbered yet, in no order. */
  private open: number[] = [];
  private lastDurationS = 0;
  private latestS = Number.NEGATIVE_INFINITY;
  private shown: FrameIndex | undefined;

  constructor(private readonly ticksPerS: number) {}

  add(timeS: number, durationS: number): void {
    this.open.push(timeS);
    if (timeS > this.latestS) {
      this.latestS = timeS;
      this.lastDurationS = durationS;
    }
    if (this.open.length >= REORDERED_MOST + BATCH) this.number(REORDERED_MOST);
  }

  /** All packets have come: the rest gets its numbers. */
  finish(): void {
    this.number(0);
  }

  /** What is numbered so far; a value that does not change when more comes. */
  get now(): FrameIndex {
    this.shown ??= {
      timesS: this.timesS.subarray(0, this.count),
      endS: this.count === 0 ? 0 : this.timesS[this.count - 1]! + this.lastDurationS,
      frameCount: this.count,
      ticksPerS: this.ticksPerS,
    };
    return this.shown;
  }

  private number(keepOpen: number): void {
    this.open.sort((a, b) => a - b);
    const going = this.open.splice(0, this.open.length - keepOpen);
    if (this.count + going.length > this.timesS.length) {
      const longer = new Float64Array(2 * (this.count + going.length));
      longer.set(this.timesS);
      this.timesS = longer;
    }
    this.timesS.set(going, this.count);
    this.count += going.length;
    // A film whose packets are more out of order than any codec may make them is put in order as a whole.
    if (going.length > 0 && going[0]! < (this.timesS[this.count - going.length - 1] ?? going[0]!))
      this.timesS = this.timesS.slice(0, this.count).sort();
    this.shown = undefined;
  }
}

/** H.264 and HEVC hold back at most 16 pictures (ISO/IEC 14496-10 A.3.1, 23008-2 A.4.2), a field each when interlaced. */
const REORDERED_MOST = 32;
const BATCH = 256;
