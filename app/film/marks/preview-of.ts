import type { Game } from '@icewright/book';
import type { FilmPoint } from '@icewright/engine';
import type { FilmMark, FilmView } from '@icewright/picture';
import type { FilmTie } from './film-tie.ts';
import { isWhole, placeAt, REACH_PX, standingAt } from './lay-mark.ts';
import { placeNow } from './mark-places.ts';
import type { PictureTime } from './marks-at.ts';
import type { MarksDesk } from './use-marks-desk.ts';

/** What is being laid, with its next place under the pointer. */
export const previewOf = (
  desk: MarksDesk,
  game: Game,
  picture: PictureTime,
  tie: FilmTie,
  view: FilmView,
  pointer: FilmPoint | undefined,
): FilmMark | undefined => {
  const { kind } = desk;
  if (!kind || !desk.isOpen) return undefined;
  const laid = desk.laid.flatMap(place => placeNow(place, game, picture.filmTimeS, tie)?.atM ?? []);
  const next = pointer && placeAt(view.fit, pointer, standingAt(game, picture, tie), REACH_PX * view.unitPx);
  const placesM = next ? [...laid, next.atM] : laid;
  if (placesM.length === 0) return undefined;
  if (!isWhole(kind, placesM.length)) {
    return placesM.length === 1
      ? { kind: 'ring', placesM, words: '', sizeM: 0.3 }
      : { kind: 'link', placesM, words: '' };
  }
  return { kind, placesM, words: '' };
};
