import type { FilmPoint } from '../units/points.ts';
import type { FoundPlace } from './follow-one-way.ts';

/** The feet of a skater, put down by hand in one frame, or taken there as they were found: then `footSdPx` tells how well, in pixels (standard deviation). */
export interface HandMark {
  readonly frameIndex: number;
  readonly timeS: number;
  readonly footPx: FilmPoint;
  readonly footSdPx?: number;
}

/** Between two hand marks, or beyond the last: what was found from either side. */
export interface FoundWays {
  readonly from: HandMark | null;
  readonly to: HandMark | null;
  readonly forward: readonly FoundPlace[];
  readonly backward: readonly FoundPlace[];
}
