import type { OfferedPin, PinFit } from '@icewright/engine';

/** A picture to look through, and how many pixels of the film go into one of it. */
export interface SmallPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rgba: Uint8ClampedArray;
  readonly filmPerPx: number;
}

/** Markings are found as well in a picture of this size as in a larger one, and sooner. */
const LONG_SIDE_PX = 1280;

/** The picture, made smaller where its longer side is longer than it takes: each pixel the mean of those it stands for. */
export const smallPicture = ({ data, width, height }: ImageData): SmallPicture => {
  const filmPerPx = Math.max(1, Math.max(width, height) / LONG_SIDE_PX);
  if (filmPerPx === 1) return { widthPx: width, heightPx: height, rgba: data, filmPerPx };
  const widthPx = Math.round(width / filmPerPx);
  const heightPx = Math.round(height / filmPerPx);
  const rgba = new Uint8ClampedArray(4 * widthPx * heightPx);
  for (let y = 0; y < heightPx; y++) {
    const top = Math.floor(y * filmPerPx);
    const bottom = Math.max(top + 1, Math.min(height, Math.floor((y + 1) * filmPerPx)));
    for (let x = 0; x < widthPx; x++) {
      const left = Math.floor(x * filmPerPx);
      const right = Math.max(left + 1, Math.min(width, Math.floor((x + 1) * filmPerPx)));
      for (let k = 0; k < 4; k++) {
        let sum = 0;
        for (let v = top; v < bottom; v++)
          for (let u = left; u < right; u++) sum += data[4 * (v * width + u) + k]!;
        rgba[4 * (y * widthPx + x) + k] = sum / ((bottom - top) * (right - left));
      }
    }
  }
  return { widthPx, heightPx, rgba, filmPerPx };
};

/** The same offer in the film's own pixels. */
export const inFilmPixels = <Offer extends { readonly pins: readonly OfferedPin[]; readonly fit: PinFit }>(
  offer: Offer,
  filmPerPx: number,
): Offer => {
  const [a, b, c, d, e, f, g, h, i] = offer.fit.filmFromIce;
  const s = filmPerPx;
  return {
    ...offer,
    pins: offer.pins.map(({ landmark, filmPx, sdPx }) => ({
      landmark,
      filmPx: { xPx: filmPx.xPx * s, yPx: filmPx.yPx * s },
      sdPx: sdPx * s,
    })),
    fit: { ...offer.fit, filmFromIce: [a * s, b * s, c * s, d * s, e * s, f * s, g, h, i] },
  };
};
