export interface Stretch {
  readonly fromFrame: number;
  /** This one is still of it. */
  readonly toFrame: number;
  /** Of the whole film, in smaller pictures; else of the seconds round a moment, in the film's own size. */
  readonly isSmall?: boolean;
}

/** A stretch of film coded anew with a key picture every few frames, so that any frame of it comes quickly. */
export interface CopyWindow extends Stretch {
  /** As `idOf` says. */
  readonly id: string;
  readonly hash: string;
  readonly config: VideoDecoderConfig;
  /** Every so many frames, from the first on, there is a key picture. */
  readonly keyEvery: number;
  /** Bytes of each frame, in the order of frames; none is built on a later one. */
  readonly lengths: Uint32Array;
  readonly byteCount: number;
  /** When a frame of it was last looked at, milliseconds since 1970. */
  readonly usedAt: number;
}

export const idOf = (hash: string, { fromFrame, isSmall }: Stretch): string =>
  `${hash}:${isSmall ? 'small:' : ''}${fromFrame}`;

/** The stretches round these moments, in order; those that touch are one, and long ones are cut so that none is too much at once. */
export const stretchesAround = (
  moments: readonly number[],
  { before, after, most, last }: { before: number; after: number; most: number; last: number },
): Stretch[] => {
  const joined: { fromFrame: number; toFrame: number }[] = [];
  for (const at of [...moments].sort((a, b) => a - b)) {
    const fromFrame = Math.max(0, at - before);
    const toFrame = Math.min(last, at + after);
    const open = joined[joined.length - 1];
    if (open && fromFrame <= open.toFrame + 1) open.toFrame = Math.max(open.toFrame, toFrame);
    else joined.push({ fromFrame, toFrame });
  }
  return joined.flatMap(stretch => piecesOf(stretch, most));
};

/** What is wanted and not covered by what is there, of all the stretches. */
export const missingOf = (wanted: readonly Stretch[], there: readonly Stretch[]): Stretch[] =>
  wanted.filter(
    one =>
      !there.some(two => isAlike(one, two) && two.fromFrame <= one.fromFrame && two.toFrame >= one.toFrame),
  );

/** What nothing wanted touches any more. */
export const needlessOf = <Kept extends Stretch>(
  there: readonly Kept[],
  wanted: readonly Stretch[],
): Kept[] =>
  there.filter(
    one =>
      !wanted.some(two => isAlike(one, two) && two.fromFrame <= one.toFrame && two.toFrame >= one.fromFrame),
  );

const isAlike = (one: Stretch, two: Stretch): boolean => (one.isSmall ?? false) === (two.isSmall ?? false);

const piecesOf = ({ fromFrame, toFrame }: Stretch, most: number): Stretch[] => {
  const pieces: Stretch[] = [];
  for (let at = fromFrame; at <= toFrame; at += most)
    pieces.push({ fromFrame: at, toFrame: Math.min(toFrame, at + most - 1) });
  return pieces;
};
