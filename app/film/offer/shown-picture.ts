/** What is looked at: the picture in so many pixels, and how many of the film's go into one. */
export interface ShownPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rgba: Uint8ClampedArray;
  readonly filmPerPx: number;
}

/** Markings are found as well in a picture of this size as in a larger one, and sooner. */
const LONG_SIDE_PX = 1280;

/** The picture on a canvas, made smaller where it is larger than it takes; null where there is none. */
export const shownPicture = (canvas: HTMLCanvasElement): ShownPicture | null => {
  const filmPerPx = Math.max(1, Math.max(canvas.width, canvas.height) / LONG_SIDE_PX);
  const widthPx = Math.round(canvas.width / filmPerPx);
  const heightPx = Math.round(canvas.height / filmPerPx);
  const small = document.createElement('canvas');
  small.width = widthPx;
  small.height = heightPx;
  const pen = small.getContext('2d', { willReadFrequently: true });
  if (!pen || widthPx === 0 || heightPx === 0) return null;
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(canvas, 0, 0, widthPx, heightPx);
  return { widthPx, heightPx, rgba: pen.getImageData(0, 0, widthPx, heightPx).data, filmPerPx };
};
