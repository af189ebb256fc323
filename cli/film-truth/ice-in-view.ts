import { type FilmPoint, type IcePoint, shownOf } from '@icewright/engine';
import type { FilmTruth, TruthFrame } from './truth-file.ts';

/** Places of the ice, two metres apart, that a picture shows, and where it shows them. */
export const iceInView = (
  truth: FilmTruth,
  { H }: TruthFrame,
): { readonly atM: IcePoint; readonly shownPx: FilmPoint }[] => {
  const { width: widthPx, height: heightPx } = truth.picture;
  const [a, b, c] = H as readonly (readonly [number, number, number])[];
  const places: { atM: IcePoint; shownPx: FilmPoint }[] = [];
  for (let xM = -29; xM <= 29; xM += 2) {
    for (let yM = -12; yM <= 12; yM += 2) {
      const w = c![0] * xM + c![1] * yM + c![2];
      if (!(w > 0)) continue;
      const straight = {
        xPx: (a![0] * xM + a![1] * yM + a![2]) / w,
        yPx: (b![0] * xM + b![1] * yM + b![2]) / w,
      };
      const shownPx = shownOf({ k1: truth.lens.k1, widthPx, heightPx }, straight);
      if (shownPx.xPx < 0 || shownPx.yPx < 0 || shownPx.xPx > widthPx || shownPx.yPx > heightPx) continue;
      places.push({ atM: { xM, yM }, shownPx });
    }
  }
  return places;
};
