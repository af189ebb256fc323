import type { OpenFilm } from './open-film.ts';

/** The film that was opened last, on its way from the door to the room: a long one is not looked through twice. */
let opened: { readonly hash: string; readonly film: OpenFilm } | undefined;

export const leaveOpened = (hash: string, film: OpenFilm): void => {
  opened?.film.close();
  opened = { hash, film };
};

/** Whoever takes it closes it. */
export const takeOpened = (hash: string): OpenFilm | undefined => {
  if (opened?.hash !== hash) return undefined;
  const { film } = opened;
  opened = undefined;
  return film;
};
