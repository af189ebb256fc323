import { type FilmPart, type Game, inOrder, newId, rankAtEnd } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { edit } from '../../shell/book.ts';
import { clockSecondsAt } from './live-breaks.ts';

const LIVE = 'live:';

/** A part of a game that was marked from the stand: its clock began at an instant, and its pictures come later. */
export const isLive = (part: Pick<FilmPart, 'hash'>): boolean => part.hash.startsWith(LIVE);

/** Milliseconds since 1970 at which its clock began. */
export const liveStartMs = (part: Pick<FilmPart, 'hash'>): number => Date.parse(part.hash.slice(LIVE.length));

/** Seconds since then without the breaks. Any watch that is shared would do: all of a staff read the same start. */
export const liveNowS = (part: Pick<FilmPart, 'hash' | 'breaks'>): number =>
  clockSecondsAt(part, liveStartMs(part), Date.now());

/** A live part has no frames: its moments are counted in hundredths of a second, so that they sort. */
export const liveFrame = (timeS: number): number => Math.round(timeS * 100);

/** What a game is opened at: its first film, and only while there is none its live clock. */
export const partAtFirst = (films: Game['films']): Id<'film'> | undefined => {
  const parts = inOrder(films);
  return (parts.find(([, one]) => !isLive(one)) ?? parts[0])?.[0];
};

export function startLive(gameId: string, films: Game['films']): Id<'film'> {
  const id = newId<'film'>();
  edit(gameId).set(['films', id], {
    rank: rankAtEnd(films),
    hash: `${LIVE}${new Date().toISOString()}`,
    fileName: '',
    byteCount: 0,
    durationS: 0,
    frameCount: 0,
    label: 'marked live',
  } satisfies FilmPart);
  return id;
}
