import { drawFrame } from '../draw-frame.ts';
import { FrameReader } from '../frame-reader.ts';
import type { OpenFilm } from '../open-film.ts';
import {
  bodiesBefore,
  drawOverFilm,
  filmPenOn,
  lettersReady,
  type OverContext,
  type OverFilm,
  unitOf,
} from './draw-over-film.ts';

/** One picture of a film with its marks, as a PNG of the film's own size; a title line stands above it. Undefined where the film has no such picture. */
export const stillOf = async (
  film: OpenFilm,
  frameIndex: number,
  over: OverFilm & { readonly title?: string },
): Promise<Blob | undefined> => {
  const reader = new FrameReader(film);
  try {
    await lettersReady();
    const answer = await reader.read(frameIndex);
    if (answer.kind !== 'picture') return undefined;
    const picture = document.createElement('canvas');
    drawFrame(picture, answer.picture, film);
    const context = picture.getContext('2d')!;
    const bodies = await bodiesBefore(picture, over);
    drawOverFilm(context, over, film.widthPx, film.heightPx, bodies);
    return await pngOf(over.title === undefined ? picture : titled(picture, over.title));
  } finally {
    reader.close();
  }
};

const titled = (picture: HTMLCanvasElement, title: string): HTMLCanvasElement => {
  const unit = unitOf(picture.width, picture.height);
  const headPx = Math.round(HEAD_PX * unit);
  const canvas = document.createElement('canvas');
  canvas.width = picture.width;
  canvas.height = picture.height + headPx;
  const context = canvas.getContext('2d')!;
  titleLine(context, title, canvas.width, headPx, unit);
  context.drawImage(picture, 0, headPx);
  return canvas;
};

const titleLine = (
  context: OverContext,
  title: string,
  widthPx: number,
  headPx: number,
  unit: number,
): void => {
  context.fillStyle = '#f1f6f8';
  context.fillRect(0, 0, widthPx, headPx);
  filmPenOn(context).text('filmTitle', title, 16 * unit, 0.68 * headPx, { size: 24 * unit });
};
const HEAD_PX = 46;

const pngOf = (canvas: HTMLCanvasElement): Promise<Blob | undefined> =>
  new Promise(resolve => canvas.toBlob(blob => resolve(blob ?? undefined), 'image/png'));
