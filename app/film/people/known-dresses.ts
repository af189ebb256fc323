import { type Dress, dressMiddles, type FoundPerson } from '@icewright/engine';

type Dresses = readonly (Dress | undefined)[];

/** Dresses seen in pictures of each film since the page was opened, so that a dress keeps its letter from freeze to freeze. */
const seen = new Map<string, Dresses>();

export const knownDresses = (film: string): Dresses => seen.get(film) ?? [];

/** A dress known already stays as it was seen first. */
export const rememberDresses = (film: string, people: readonly FoundPerson[]): void => {
  const before = knownDresses(film);
  seen.set(
    film,
    dressMiddles(people).map((dress, group) => before[group] ?? dress),
  );
};
