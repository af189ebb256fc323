import type { FilmPoint } from '@icewright/engine';
import { type FilmMark, type FilmView, POLE_M, sizeOf } from './film-mark.ts';
import { bandOf } from './mark-shapes.ts';
import { areaOnFilm, heightOnFilm, lineOnFilm, pointOnFilm, ringOf } from './on-film.ts';

/** Where a mark is to be grasped in the picture, pixels: areas are closed, lines are not. Empty when none of it is seen. */
export const outlineOfMark = (
  mark: FilmMark,
  view: FilmView,
): { readonly isArea: boolean; readonly lines: readonly (readonly FilmPoint[])[] } => {
  const last = mark.placesM[mark.placesM.length - 1];
  if (!last) return { isArea: false, lines: [] };
  const sizeM = sizeOf(mark);
  if (mark.kind === 'zone') return areaOf(areaOnFilm(view, mark.placesM));
  if (mark.kind === 'lane') return areaOf(areaOnFilm(view, bandOf(mark.placesM, sizeM).area));
  if (mark.kind === 'link' || mark.kind === 'arrow')
    return { isArea: false, lines: lineOnFilm(view, mark.placesM) };
  if (mark.kind !== 'text') return areaOf(areaOnFilm(view, ringOf(last, sizeM)));
  const foot = pointOnFilm(view, last);
  if (!foot) return { isArea: false, lines: [] };
  const half = Math.max(16, 4.4 * mark.words.length) * view.unitPx;
  const top = foot.yPx - heightOnFilm(view, last, POLE_M) - 26 * view.unitPx;
  return areaOf([
    { xPx: foot.xPx - half, yPx: top },
    { xPx: foot.xPx + half, yPx: top },
    { xPx: foot.xPx + half, yPx: foot.yPx },
    { xPx: foot.xPx - half, yPx: foot.yPx },
  ]);
};

const areaOf = (area: readonly FilmPoint[]) => ({ isArea: true, lines: area.length > 2 ? [area] : [] });
