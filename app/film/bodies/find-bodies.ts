import { type FilmPoint, fitOfPart, type PinFit, type Rink } from '@icewright/engine';
import { boxOnFilm, type FilmBox, type FilmMark, type FilmView } from '@icewright/picture';
import { picturePixels } from '../picture-pixels.ts';
import type { BodiesAsk, BodiesSaid } from './bodies-messages.ts';

/** Who stands on the ice, as a picture that covers them and is clear elsewhere, and where its corner lies in the film’s picture. */
export interface Bodies {
  readonly cover: OffscreenCanvas;
  readonly leftPx: number;
  readonly topPx: number;
}

/**
 * Who stands on the ice round the marks of a picture that is on a canvas of the film’s own size: who is found, and who is `known`
 * to stand there. Undefined when no mark lies on the ice, when nothing tells,
 * and where no worker can be had: then marks lie over the skaters.
 */
export const findBodies = async (
  picture: HTMLCanvasElement | OffscreenCanvas,
  marks: readonly FilmMark[],
  view: FilmView,
  rink: Rink,
  known: readonly FilmPoint[],
): Promise<Bodies | undefined> => {
  const box = boxOnFilm(marks, view, BESIDE_SHARE * view.heightPx);
  const part = box && partOf(box, view);
  if (!part) return undefined;
  const { leftPx, topPx, rightPx, bottomPx } = part.box;
  const {
    data: rgba,
    width,
    height,
  } = picturePixels(picture, leftPx, topPx, rightPx - leftPx, bottomPx - topPx);
  const here = known.map(({ xPx, yPx }) => ({ xPx: xPx - leftPx, yPx: yPx - topPx }));
  const mask = await ask({ rgba, widthPx: width, heightPx: height, fit: part.fit, rink, known: here });
  return mask ? { cover: coverOf(mask, width, height), leftPx, topPx } : undefined;
};

/** So much of the picture’s height beside the marks: who stands there reaches in, and the ice there tells its colour. */
const BESIDE_SHARE = 0.16;

/** A picture that a lens bends is looked through whole. */
const partOf = (box: FilmBox, { fit, widthPx, heightPx }: FilmView): { box: FilmBox; fit: PinFit } => {
  const ofPart = fitOfPart(fit, box.leftPx, box.topPx);
  return ofPart
    ? { box, fit: ofPart }
    : { box: { leftPx: 0, topPx: 0, rightPx: widthPx, bottomPx: heightPx }, fit };
};

const coverOf = (mask: Uint8Array, width: number, height: number): OffscreenCanvas => {
  const cover = new OffscreenCanvas(width, height);
  const image = new ImageData(width, height);
  for (let at = 0; at < mask.length; at++) if (mask[at] === 1) image.data[4 * at + 3] = 255;
  cover.getContext('2d')!.putImageData(image, 0, 0);
  return cover;
};

let worker: Worker | undefined;
let lastId = 0;
const waiting = new Map<number, (mask: Uint8Array | undefined) => void>();

/** One worker for the page, made when first asked; it answers in order. */
const ask = (asked: Omit<BodiesAsk, 'id'>): Promise<Uint8Array | undefined> => {
  worker ??= begun();
  const id = ++lastId;
  const answer = new Promise<Uint8Array | undefined>(resolve => waiting.set(id, resolve));
  worker.postMessage({ id, ...asked } satisfies BodiesAsk, [asked.rgba.buffer]);
  return answer;
};

const begun = (): Worker => {
  const made = new Worker(new URL('./bodies.worker.ts', import.meta.url), { type: 'module' });
  made.addEventListener('message', ({ data: { id, mask } }: MessageEvent<BodiesSaid>) => {
    waiting.get(id)?.(mask ?? undefined);
    waiting.delete(id);
  });
  made.addEventListener('error', () => {
    // Nobody waits for ever: those marks lie over the skaters, and the next picture has a worker anew.
    for (const done of waiting.values()) done(undefined);
    waiting.clear();
    made.terminate();
    worker = undefined;
  });
  return made;
};
