/** A stretch of film coded anew with a key picture every few frames, so that any frame of it comes quickly. */
export interface CopyWindow {
  /** `<film hash>:<first frame>`. */
  readonly id: string;
  readonly hash: string;
  readonly fromFrame: number;
  readonly toFrame: number;
  readonly config: VideoDecoderConfig;
  /** In the order of frames; none is built on a later one. */
  readonly chunks: readonly { readonly isKey: boolean; readonly offset: number; readonly length: number }[];
  readonly byteCount: number;
  /** When a frame of it was last looked at, milliseconds since 1970. */
  readonly usedAt: number;
}

export interface Stretch {
  readonly fromFrame: number;
  readonly toFrame: number;
}

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
  wanted.filter(one => !there.some(two => two.fromFrame <= one.fromFrame && two.toFrame >= one.toFrame));

/** What nothing wanted touches any more. */
export const needlessOf = <Kept extends Stretch>(
  there: readonly Kept[],
  wanted: readonly Stretch[],
): Kept[] =>
  there.filter(one => !wanted.some(two => two.fromFrame <= one.toFrame && two.toFrame >= one.fromFrame));

const piecesOf = ({ fromFrame, toFrame }: Stretch, most: number): Stretch[] => {
  const pieces: Stretch[] = [];
  for (let at = fromFrame; at <= toFrame; at += most)
    pieces.push({ fromFrame: at, toFrame: Math.min(toFrame, at + most - 1) });
  return pieces;
};
