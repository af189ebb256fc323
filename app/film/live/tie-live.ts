import type { FilmPart, Follow, Game, Moment } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { edit, endStep } from '../../shell/book.ts';
import { type FrameIndex, frameAtTime } from '../frame-index.ts';
import { watchSecondsOf, withinBreaks } from './live-breaks.ts';
import { liveStartMs } from './live-part.ts';

export interface Tied {
  readonly moments: readonly (readonly [string, Moment])[];
  readonly follows: readonly (readonly [string, Follow])[];
  /** Before the film begins or after it ends: they stay with the live clock. */
  readonly outsideCount: number;
}

/**
 * From the live clock to a film, by one moment that both show. The film runs with the clock, or, when the camera ran on in the breaks, with the watch.
 * A film that was cut otherwise runs with neither; then only the stretch about the tie is right.
 */
export const filmClockOf = (
  part: Pick<FilmPart, 'hash' | 'breaks'>,
  tie: { readonly clockS: number; readonly filmS: number },
  ranOn: boolean,
): ((clockS: number) => number) => {
  const startMs = liveStartMs(part);
  const runS = (clockS: number) => (ranOn ? watchSecondsOf(part, startMs, clockS) : clockS);
  return clockS => tie.filmS + (runS(clockS) - runS(tie.clockS));
};

/** Moments of a live clock on the clock of a film. */
export function tiedTo(
  game: Game,
  live: Id<'film'>,
  film: Id<'film'>,
  index: FrameIndex,
  filmSOf: (clockS: number) => number,
): Tied {
  const at = (timeS: number) => ({
    filmTimeS: filmSOf(timeS),
    frameIndex: frameAtTime(index, filmSOf(timeS)),
  });
  const isInside = (timeS: number) => filmSOf(timeS) >= 0 && filmSOf(timeS) <= index.endS;
  const part = game.films[live];
  // Somebody who did not know of a break yet may have marked on past it.
  const cut = (one: Moment): Moment => (part ? withinBreaks(part, liveStartMs(part), one) : one);
  const ofLive = Object.entries(game.moments)
    .filter(([, one]) => one.film === live)
    .map(([id, one]) => [id, cut(one)] as const);
  const moments = ofLive
    .filter(([, one]) => isInside(one.filmTimeS))
    .map(([id, one]): readonly [string, Moment] => [
      id,
      {
        ...one,
        film,
        ...at(one.filmTimeS),
        ...(one.fromS === undefined
          ? {}
          : { fromS: Math.max(0, filmSOf(one.filmTimeS) + one.fromS - one.filmTimeS) }),
        ...(one.toS === undefined
          ? {}
          : { toS: Math.min(index.endS, filmSOf(one.filmTimeS) + one.toS - one.filmTimeS) }),
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
