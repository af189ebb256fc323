/**
 * The pixels of a part of a canvas, by way of a copy: a browser moves a canvas that is read itself out of the graphics card, and from then on each frame that
 * is drawn on it takes longer.
 */
export const picturePixels = (
  canvas: HTMLCanvasElement | OffscreenCanvas,
  leftPx = 0,
  topPx = 0,
  widthPx = canvas.width,
  heightPx = canvas.height,
): ImageData => {
  const copy = new OffscreenCanvas(widthPx, heightPx).getContext('2d', { willReadFrequently: true })!;
  copy.drawImage(canvas, -leftPx, -topPx);
  return copy.getImageData(0, 0, widthPx, heightPx);
};
