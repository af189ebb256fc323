import { product3 } from './matrix.ts';
import type { PinFit } from './pins.ts';

/**
 * The tie of a part of a picture, cut out without turning or scaling it: `leftPx`, `topPx` are where the part begins, pixels of the whole, any. Null where a
 * lens bends the picture, since a part has no middle of its own to bend about. Source: a shift of the picture's pixels, by definition of the fit.
 */
export const fitOfPart = (fit: PinFit, leftPx: number, topPx: number): PinFit | null => {
  if (fit.lens && fit.lens.k1 !== 0) return null;
  const { lens: _, ...straight } = fit;
  return {
    ...straight,
    filmFromIce: product3([1, 0, -leftPx, 0, 1, -topPx, 0, 0, 1], fit.filmFromIce),
    iceFromFilm: product3(fit.iceFromFilm, [1, 0, leftPx, 0, 1, topPx, 0, 0, 1]),
    scaling: {
      ...fit.scaling,
      filmXPx: fit.scaling.filmXPx - leftPx,
      filmYPx: fit.scaling.filmYPx - topPx,
    },
  };
};
