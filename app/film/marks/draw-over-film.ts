import type { FilmPoint, PinFit, Rink } from '@icewright/engine';
import {
  canvasPen,
  drawFilmBeam,
  drawFilmMarks,
  drawFilmShade,
  drawMarksAbove,
  drawMarksOnIce,
  FILM_PALETTE,
  type FilmMark,
  type FilmView,
} from '@icewright/picture';
import { type Bodies, findBodies } from '../bodies/find-bodies.ts';

/** What stands over one picture of a film. */
export interface OverFilm {
  readonly marks: readonly FilmMark[];
  /** Absent: the picture is not tied to the ice, and no mark can lie on it. */
  readonly fit?: PinFit;
  /** The sheet; absent: marks lie over the skaters. */
  readonly rink?: Rink;
  /** Where somebody is known to stand, pixels of the film. */
  readonly standing?: readonly FilmPoint[];
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

/** Who stands before the marks of a picture that is on a canvas of the film's own size. */
export const bodiesBefore = async (
  picture: HTMLCanvasElement,
  { marks, fit, rink, standing = [] }: OverFilm,
): Promise<Bodies | undefined> => {
  if (!fit || !rink || marks.length === 0) return undefined;
  const { width, height } = picture;
  return findBodies(picture, marks, viewOf(fit, width, height), rink, standing);
};

/** Draws the marks of a picture of the film's own size, what lies on the ice under who stands before it. */
export const drawOverFilm = (
  context: OverContext,
  { marks, fit }: OverFilm,
  widthPx: number,
  heightPx: number,
  bodies: Bodies | undefined,
): void => {
  if (!fit || marks.length === 0) return;
  const view = viewOf(fit, widthPx, heightPx);
  if (!bodies) {
    drawFilmMarks(filmPenOn(context), marks, view);
    return;
  }
  drawFilmShade(filmPenOn(context), marks, view);
  const layer = new OffscreenCanvas(widthPx, heightPx);
  const onIce = layer.getContext('2d')!;
  drawFilmBeam(filmPenOn(onIce), marks, view);
  drawMarksOnIce(filmPenOn(onIce), marks, view);
  onIce.globalCompositeOperation = 'destination-out';
  onIce.drawImage(bodies.cover, bodies.leftPx, bodies.topPx);
  context.drawImage(layer, 0, 0);
  drawMarksAbove(filmPenOn(context), marks, view);
};

const viewOf = (fit: PinFit, widthPx: number, heightPx: number): FilmView => ({
  fit,
  widthPx,
  heightPx,
  unitPx: unitOf(widthPx, heightPx),
});

/** As large for the picture as on a usual screen of the film room, where it is 910 pixels wide: read from the bench too. */
export const unitOf = (widthPx: number, heightPx: number): number =>
  Math.sqrt((widthPx * heightPx) / (910 * 512));
