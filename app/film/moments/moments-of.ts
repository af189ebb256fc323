import type { Game } from '@icewright/book';
import type { Id } from '@icewright/engine';
import type { ListedMoment } from './filter-moments.ts';

/** The moments of one film of a game, in the order of the film. */
export const momentsOf = (game: Game, film: Id<'film'>): ListedMoment[] =>
  Object.entries(game.moments)
    .filter(([, one]) => one.film === film)
    .sort(([, a], [, b]) => a.frameIndex - b.frameIndex);
