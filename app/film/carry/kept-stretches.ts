import type { LensTerm, TrackedStretch } from '@icewright/engine';
import { filmStore } from '../film-store.ts';

/** A stretch of a film through which the camera was followed. */
export interface FollowedStretch {
  readonly stretch: TrackedStretch;
  readonly lens: LensTerm;
}

interface KeptStretch extends FollowedStretch {
  readonly hash: string;
  readonly keptAt: number;
}

/** Twenty seconds take two to four megabytes. */
const MOST_KEPT = 40;
const store = filmStore('icewright-followed-stretches', 'stretches', MOST_KEPT);

/**
 * Stretches that were followed, kept in this browser by the film's hash, the newest first: following takes longer than the stretch lasts,
 * and what hangs on it (marks, the next freeze) is to be there the next day. When lost, the camera is followed again.
 */
export const findStretches = async (hash: string): Promise<FollowedStretch[]> =>
  ((await store.all()) as KeptStretch[])
    .filter(one => one.hash === hash)
    .sort((a, b) => b.keptAt - a.keptAt)
    .map(({ stretch, lens }) => ({ stretch, lens }));

export const keepStretch = async (hash: string, { stretch, lens }: FollowedStretch): Promise<void> => {
  const { frames } = stretch;
  const key = `${hash}:${frames[0]?.frameIndex}-${frames[frames.length - 1]?.frameIndex}`;
  await store.keep(key, { hash, stretch, lens, keptAt: Date.now() } satisfies KeptStretch);
};
