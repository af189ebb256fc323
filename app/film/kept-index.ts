import { filmStore } from './film-store.ts';
import type { FrameIndex } from './frame-index.ts';

/** A long film's index takes two or three megabytes. */
const MOST_KEPT = 40;
const store = filmStore('icewright-film-indexes', 'indexes', MOST_KEPT);

/**
 * Indexes of films that took long to look through, kept in this browser by the film's hash: the film opens at once the next
 * time. They are numbers only; when lost, the film is looked through again.
 */
export const findIndex = async (hash: string): Promise<FrameIndex | undefined> => {
  const kept = (await store.find(hash)) as (FrameIndex & { keptAt: number }) | undefined;
  return (
    kept && { timesS: kept.timesS, endS: kept.endS, frameCount: kept.frameCount, ticksPerS: kept.ticksPerS }
  );
};

export const keepIndex = async (hash: string, index: FrameIndex): Promise<void> => {
  // A view into a longer array would be kept with all that lies behind it.
  const timesS = index.timesS.slice();
  await store.keep(hash, { ...index, timesS, keptAt: Date.now() });
};
