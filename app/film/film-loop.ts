/** A stretch that plays over and over; without `toFrame` its end is not set yet. */
export interface FilmLoop {
  readonly fromFrame: number;
  readonly toFrame?: number;
}

/** One act sets it all: the first press the start, the second the end, the third lets go. */
export const nextLoop = (loop: FilmLoop | undefined, frameIndex: number): FilmLoop | undefined => {
  if (!loop) return { fromFrame: frameIndex };
  if (loop.toFrame !== undefined) return undefined;
  if (loop.fromFrame === frameIndex) return undefined;
  const [fromFrame, toFrame] = [loop.fromFrame, frameIndex].sort((a, b) => a - b) as [number, number];
  return { fromFrame, toFrame };
};

/** Where to go on when the loop's edge is reached, playing this way; undefined while there is nothing to turn back for. */
export const turnOf = (
  loop: FilmLoop | undefined,
  frameIndex: number,
  direction: number,
): number | undefined => {
  if (loop?.toFrame === undefined) return undefined;
  if (direction > 0 && frameIndex >= loop.toFrame) return loop.fromFrame;
  if (direction < 0 && frameIndex <= loop.fromFrame) return loop.toFrame;
  return undefined;
};
