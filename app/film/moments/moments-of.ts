import type { Game } from '@icewright/book';
import type { Id } from '@icewright/engine';
import type { ListedMoment } from './filter-moments.ts';

/** The moments of one film of a game, in the order of the film; the same list while no moment changed. */
export const momentsOf = ({ moments }: Game, film: Id<'film'>): readonly ListedMoment[] => {
  const known = sorted.get(moments);
  const found = known?.get(film);
  if (found) return found;
  const list = Object.entries(moments)
    .filter(([, one]) => one.film === film)
    .sort(([, a], [, b]) => a.frameIndex - b.frameIndex);
  if (known) known.set(film, list);
  else sorted.set(moments, new Map([[film, list]]));
  return list;
};

const sorted = new WeakMap<Game['moments'], Map<Id<'film'>, readonly ListedMoment[]>>();
