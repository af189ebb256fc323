import { type FilmPart, type Game, newId } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { edit, endStep } from '../../shell/book.ts';
import { openBreaks, withinBreaks } from './live-breaks.ts';
import { liveStartMs } from './live-part.ts';

/** Stops the clock for a break or, with the game, for good, as one step of undo: what was marked just before it ends there too. */
export function stopClock(
  gameId: string,
  filmId: Id<'film'>,
  part: FilmPart,
  moments: Game['moments'],
  forGood = false,
): void {
  const [open] = openBreaks(part);
  // A game that ends while its clock stands was over when the clock was stopped.
  if (open !== undefined) {
    if (forGood) setOver(gameId, filmId, open);
    return;
  }
  const id = newId<'break'>();
  const one = { stoppedAt: new Date().toISOString(), ...(forGood ? { isOver: true } : {}) };
  const stopped = { ...part, breaks: { ...part.breaks, [id]: one } };
  const change = edit(gameId);
  endStep(gameId);
  change.transact(() => {
    if (part.breaks) change.set(['films', filmId, 'breaks', id], one);
    else change.set(['films', filmId, 'breaks'], { [id]: one });
    for (const [momentId, moment] of Object.entries(moments)) {
      if (moment.film !== filmId) continue;
      const { toS } = withinBreaks(stopped, liveStartMs(part), moment);
      if (toS !== undefined && toS !== moment.toS) change.set(['moments', momentId, 'toS'], toS);
    }
  });
  endStep(gameId);
}

const setOver = (gameId: string, filmId: string, breakId: string): void => {
  endStep(gameId);
  edit(gameId).set(['films', filmId, 'breaks', breakId, 'isOver'], true);
  endStep(gameId);
};

export function letClockRun(gameId: string, filmId: string, part: Pick<FilmPart, 'breaks'>): void {
  const goesOnAt = new Date().toISOString();
  endStep(gameId);
  edit(gameId).transact(() => {
    for (const id of openBreaks(part))
      edit(gameId).set(['films', filmId, 'breaks', id, 'goesOnAt'], goesOnAt);
  });
  endStep(gameId);
}
