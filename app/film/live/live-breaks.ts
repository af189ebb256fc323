import { type FilmPart, newId } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { edit, endStep } from '../../shell/book.ts';

type Breaks = NonNullable<FilmPart['breaks']>;

/** The clock that is stopped now; undefined while it runs. */
export const openBreaks = (part: Pick<FilmPart, 'breaks'>): Id<'break'>[] =>
  (Object.entries(part.breaks ?? {}) as [Id<'break'>, Breaks[Id<'break'>]][])
    .filter(([, one]) => one.goesOnAt === undefined)
    .map(([id]) => id);

/** Stretches in which the clock stood, by the watch, ms; those that two people made of one break are one. The last may be open. */
export const standsOf = (
  part: Pick<FilmPart, 'breaks'>,
): readonly { readonly fromMs: number; readonly toMs: number }[] => {
  const all = Object.values(part.breaks ?? {})
    .map(({ stoppedAt, goesOnAt }) => ({
      fromMs: Date.parse(stoppedAt),
      toMs: goesOnAt === undefined ? Number.POSITIVE_INFINITY : Date.parse(goesOnAt),
    }))
    .filter(({ fromMs, toMs }) => toMs > fromMs)
    .sort((a, b) => a.fromMs - b.fromMs);
  const joined: { fromMs: number; toMs: number }[] = [];
  for (const one of all) {
    const last = joined.at(-1);
    if (last && one.fromMs <= last.toMs) last.toMs = Math.max(last.toMs, one.toMs);
    else joined.push({ ...one });
  }
  return joined;
};

/** Seconds that the clock shows at a time of the watch. */
export const clockSecondsAt = (part: Pick<FilmPart, 'breaks'>, startMs: number, atMs: number): number => {
  let stoodMs = 0;
  for (const { fromMs, toMs } of standsOf(part)) {
    const from = Math.max(fromMs, startMs);
    if (from < atMs) stoodMs += Math.max(0, Math.min(toMs, atMs) - from);
  }
  return Math.max(0, (atMs - startMs - stoodMs) / 1000);
};

/** The last second the clock shows, seconds: where it stands in a break; without end while it runs. */
export const clockEndS = (part: Pick<FilmPart, 'breaks'>, startMs: number): number =>
  openBreaks(part).length === 0 ? Number.POSITIVE_INFINITY : clockSecondsAt(part, startMs, FAR_MS);
const FAR_MS = Number.MAX_SAFE_INTEGER;

/** Seconds by the watch from the start until the clock first showed this. */
export const watchSecondsOf = (part: Pick<FilmPart, 'breaks'>, startMs: number, clockS: number): number => {
  let watchMs = startMs + 1000 * clockS;
  for (const { fromMs, toMs } of standsOf(part)) {
    const from = Math.max(fromMs, startMs);
    if (from >= watchMs || toMs === Number.POSITIVE_INFINITY) break;
    watchMs += Math.max(0, toMs - from);
  }
  return (watchMs - startMs) / 1000;
};

export function stopClock(gameId: string, filmId: string, part: Pick<FilmPart, 'breaks'>): void {
  const id = newId<'break'>();
  const one = { stoppedAt: new Date().toISOString() };
  endStep(gameId);
  if (part.breaks) edit(gameId).set(['films', filmId, 'breaks', id], one);
  else edit(gameId).set(['films', filmId, 'breaks'], { [id]: one });
  endStep(gameId);
}

export function letClockRun(gameId: string, filmId: string, part: Pick<FilmPart, 'breaks'>): void {
  const goesOnAt = new Date().toISOString();
  endStep(gameId);
  edit(gameId).transact(() => {
    for (const id of openBreaks(part))
      edit(gameId).set(['films', filmId, 'breaks', id, 'goesOnAt'], goesOnAt);
  });
  endStep(gameId);
}
