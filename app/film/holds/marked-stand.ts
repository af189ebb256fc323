import type { Game, Mark } from '@icewright/book';
import { MARKED_STAND } from '@icewright/engine';

/**
 * How long a freeze begins to stand with its first mark: without it the mark would be seen for one picture. Undefined where it has
 * one already, or where a hand has said how long, nought too.
 */
export const standWithFirstMark = (
  { marks, freezes }: Pick<Game, 'marks' | 'freezes'>,
  freeze: Mark['freeze'],
): number | undefined => {
  const one = freeze && freezes[freeze];
  if (!one || one.holdS !== undefined) return undefined;
  return Object.values(marks).some(mark => mark.freeze === freeze) ? undefined : MARKED_STAND.value;
};
