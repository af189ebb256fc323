import type { Game } from '@icewright/book';

/** The moment that a freeze was made for: `before` where that is one of them, else the first of the film. */
export const momentOfFreeze = (
  { moments }: Pick<Game, 'moments'>,
  freezeId: string,
  before: string | undefined,
): string | undefined => {
  const of = Object.entries(moments).filter(([, one]) => one.freeze === freezeId);
  if (of.some(([id]) => id === before)) return before;
  return of.sort(([, a], [, b]) => a.filmTimeS - b.filmTimeS)[0]?.[0];
};
