import type { Game } from '@icewright/book';
import type { FilmLoop } from '../film-loop.ts';

/** Frames at which playback stands, and for how many seconds. */
export type FilmHolds = ReadonlyMap<number, number>;

export const holdsOf = (freezes: Game['freezes'], film: string): FilmHolds =>
  new Map(
    Object.values(freezes).flatMap(({ film: of, frameIndex, holdS }) =>
      of === film && holdS !== undefined && holdS > 0 ? [[frameIndex, holdS] as const] : [],
    ),
  );

/**
 * The first frame to stand at on the way from one frame to another, the last counted and the first not; undefined when there is
 * none. Playing forward and yet come to an earlier frame, the film turned back to the start of its loop, which counts.
 */
export const holdOnTheWay = (
  holds: FilmHolds,
  before: number,
  frameIndex: number,
  rate: number,
  loop: FilmLoop | undefined,
): number | undefined => {
  if (holds.size === 0) return undefined;
  const turned = (frameIndex - before) * rate < 0;
  const start = turned ? startOf(loop, frameIndex, rate) : before;
  const way = rate > 0 ? 1 : -1;
  let first: number | undefined;
  for (const at of holds.keys()) {
    if ((at - start) * way <= 0 || (frameIndex - at) * way < 0) continue;
    if (first === undefined || (first - at) * way > 0) first = at;
  }
  return first;
};

/** One frame before the loop's first, so that the first is on the way. */
const startOf = (loop: FilmLoop | undefined, frameIndex: number, rate: number): number =>
  rate > 0 ? (loop?.fromFrame ?? frameIndex) - 1 : (loop?.toFrame ?? frameIndex) + 1;
