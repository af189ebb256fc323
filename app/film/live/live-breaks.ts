import type { FilmPart, Moment } from '@icewright/book';
import type { Id } from '@icewright/engine';

type Breaks = NonNullable<FilmPart['breaks']>;

/** The clock that is stopped now; undefined while it runs. */
export const openBreaks = (part: Pick<FilmPart, 'breaks'>): Id<'break'>[] =>
  (Object.entries(part.breaks ?? {}) as [Id<'break'>, Breaks[Id<'break'>]][])
    .filter(([, one]) => one.goesOnAt === undefined)
    .map(([id]) => id);

/** The game is over, and nothing more is marked by its clock. */
export const isOver = (part: Pick<FilmPart, 'breaks'>): boolean =>
  Object.values(part.breaks ?? {}).some(one => one.isOver === true && one.goesOnAt === undefined);

/** How often play was broken off and taken up again; a stop that is still open may be one, the end of the game is none. */
export const breakCount = (part: Pick<FilmPart, 'breaks'>): number =>
  standsOf(part).length - (isOver(part) ? 1 : 0);

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

/**
 * A moment's seconds without those of another period: it ends at the latest where the clock was next stopped after it, and begins at the
 * earliest where it was last stopped before. What is marked while the clock stands belongs before the break.
 */
export const withinBreaks = <M extends Seconds>(
  part: Pick<FilmPart, 'breaks'>,
  startMs: number,
  moment: M,
): M => {
  const { filmTimeS, fromS, toS } = moment;
  const stopsS = standsOf(part).map(({ fromMs }) => clockSecondsAt(part, startMs, fromMs));
  const nextS = stopsS.find(stopS => stopS >= filmTimeS) ?? Number.POSITIVE_INFINITY;
  const lastS = stopsS.findLast(stopS => stopS < filmTimeS) ?? 0;
  return {
    ...moment,
    ...(fromS === undefined ? {} : { fromS: Math.max(fromS, lastS) }),
    ...(toS === undefined ? {} : { toS: Math.min(toS, nextS) }),
  };
};

type Seconds = Pick<Moment, 'filmTimeS' | 'fromS' | 'toS'>;
