import type { Game } from '@icewright/book';
import type { Id } from '@icewright/engine';

/** Whether any of the moments that came in is still in the game, and on this film where one is named: what is said of their coming is over once Undo took them back. */
export const areStillHere = (ids: readonly string[], game: Pick<Game, 'moments'>, film?: string): boolean =>
  ids.some(id => {
    const one = game.moments[id as Id<'moment'>];
    return one !== undefined && (film === undefined || one.film === film);
  });
