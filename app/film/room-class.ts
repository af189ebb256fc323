import type { OpenFilm } from './open-film.ts';

/** The class of the film room, by which its picture goes along or stays (picture-stands.css). */
export const roomClass = (
  hasFreeze: boolean,
  { widthPx, heightPx }: Pick<OpenFilm, 'widthPx' | 'heightPx'>,
): string =>
  ['film-room with-picture', hasFreeze && 'with-freeze', heightPx > widthPx && 'upright']
    .filter(Boolean)
    .join(' ');
