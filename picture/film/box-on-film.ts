import type { FilmMark, FilmView } from './film-mark.ts';
import { outlineOfMark } from './mark-outline.ts';

/** A rectangle of a picture, whole pixels; right and bottom are not in it. */
export interface FilmBox {
  readonly leftPx: number;
  readonly topPx: number;
  readonly rightPx: number;
  readonly bottomPx: number;
}

/** The part of the picture that marks on the ice take, and so much beside it; undefined where none of them is seen. Ghosts and words go above everybody. */
export const boxOnFilm = (
  marks: readonly FilmMark[],
  view: FilmView,
  besidePx: number,
): FilmBox | undefined => {
  const points = marks
    .filter(({ kind }) => kind !== 'ghost' && kind !== 'text')
    .flatMap(mark => outlineOfMark(mark, view).lines.flat());
  const within = (px: number, mostPx: number) => Math.max(0, Math.min(mostPx, Math.round(px)));
  const [xs, ys] = [points.map(({ xPx }) => xPx), points.map(({ yPx }) => yPx)];
  const box = {
    leftPx: within(Math.min(...xs) - besidePx, view.widthPx),
    topPx: within(Math.min(...ys) - besidePx, view.heightPx),
    rightPx: within(Math.max(...xs) + besidePx, view.widthPx),
    bottomPx: within(Math.max(...ys) + besidePx, view.heightPx),
  };
  return box.rightPx > box.leftPx && box.bottomPx > box.topPx ? box : undefined;
};
