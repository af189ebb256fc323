import type { PinFit } from '@icewright/engine';
import { canvasPen, drawFilmMarks, FILM_PALETTE, type FilmMark } from '@icewright/picture';

/** What stands over one picture of a film. */
export interface OverFilm {
  readonly marks: readonly FilmMark[];
  /** Absent: the picture is not tied to the ice, and no mark can lie on it. */
  readonly fit?: PinFit;
}

export type OverContext = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;

const FAMILIES = {
  words: '"Newsreader Variable", Georgia, serif',
  figures: '"Encode Sans Variable", Arial, sans-serif',
};

/** Letters of a canvas are those that are loaded when it is drawn. */
export const lettersReady = (): Promise<unknown> =>
  Promise.all([
    document.fonts.load(`16px ${FAMILIES.figures}`),
    document.fonts.load(`16px ${FAMILIES.words}`),
    document.fonts.load(`italic 16px ${FAMILIES.words}`),
  ]);

export const filmPenOn = (context: OverContext) => canvasPen(context, FAMILIES, FILM_PALETTE);

/** Draws the marks of a picture of the film's own size on a canvas of that size. */
export const drawOverFilm = (
  context: OverContext,
  { marks, fit }: OverFilm,
  widthPx: number,
  heightPx: number,
): void => {
  if (!fit || marks.length === 0) return;
  drawFilmMarks(filmPenOn(context), marks, { fit, widthPx, heightPx, unitPx: unitOf(widthPx, heightPx) });
};

/** As large for the picture as on a usual screen of the film room, where it is 910 pixels wide: read from the bench too. */
export const unitOf = (widthPx: number, heightPx: number): number =>
  Math.sqrt((widthPx * heightPx) / (910 * 512));
