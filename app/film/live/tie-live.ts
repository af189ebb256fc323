import type { Follow, Game, Moment } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { edit, endStep } from '../../shell/book.ts';
import { type FrameIndex, frameAtTime } from '../frame-index.ts';

export interface Tied {
  readonly moments: readonly (readonly [string, Moment])[];
  readonly follows: readonly (readonly [string, Follow])[];
  /** Before the film begins or after it ends: they stay with the live clock. */
  readonly outsideCount: number;
}

/**
 * Moments of a live clock on the clock of a film that began `offsetS` seconds earlier on it: film time = live time +
 * offset. A film that was cut does not run with the clock; then only the stretch about the tie is right.
 */
export function tiedTo(
  game: Game,
  live: Id<'film'>,
  film: Id<'film'>,
  index: FrameIndex,
  offsetS: number,
): Tied {
  const at = (timeS: number) => ({
    filmTimeS: timeS + offsetS,
    frameIndex: frameAtTime(index, timeS + offsetS),
  });
  const isInside = (timeS: number) => timeS + offsetS >= 0 && timeS + offsetS <= index.endS;
  const ofLive = Object.entries(game.moments).filter(([, one]) => one.film === live);
  const moments = ofLive
    .filter(([, one]) => isInside(one.filmTimeS))
    .map(([id, one]): readonly [string, Moment] => [
      id,
      {
        ...one,
        film,
        ...at(one.filmTimeS),
        ...(one.fromS === undefined ? {} : { fromS: Math.max(0, one.fromS + offsetS) }),
        ...(one.toS === undefined ? {} : { toS: Math.min(index.endS, one.toS + offsetS) }),
      },
    ]);
  const ids = new Set(moments.map(([id]) => id));
  const follows = Object.entries(game.follows)
    .filter(([, one]) => ids.has(one.moment))
    .map(([id, one]): readonly [string, Follow] => [id, { ...one, ...at(one.filmTimeS) }]);
  return { moments, follows, outsideCount: ofLive.length - moments.length };
}

/** Writes them, as one step of undo; the live part goes when nothing is left with it. */
export function tieLive(gameId: string, live: Id<'film'>, tied: Tied): void {
  const change = edit(gameId);
  endStep(gameId);
  change.transact(() => {
    for (const [id, one] of tied.moments) {
      for (const field of ['film', 'filmTimeS', 'frameIndex', 'fromS', 'toS'] as const)
        if (one[field] !== undefined) change.set(['moments', id, field], one[field]);
    }
    for (const [id, one] of tied.follows) change.set(['follows', id], one);
    if (tied.outsideCount === 0) change.remove(['films', live]);
  });
  endStep(gameId);
}
