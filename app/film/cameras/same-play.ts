import type { FilmPart } from '@icewright/book';

/** Whether two films of a game may show the same play, so that their clocks can be tied: parts that follow each other do not. */
export const maySamePlay = (
  one: Pick<FilmPart, 'as' | 'label'>,
  other: Pick<FilmPart, 'as' | 'label'>,
): boolean => !(isPart(one) && isPart(other));

/** Of films added before that was kept, the names that are given to parts tell. */
const isPart = ({ as, label }: Pick<FilmPart, 'as' | 'label'>): boolean =>
  as === undefined ? /^(whole game|part \d+)$/.test(label) : as === 'part';
