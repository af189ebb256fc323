import { type Lens, straightOf } from '../film/lens.ts';
import type { PinFit } from '../film/pins.ts';
import { refinedFitOf } from '../film/refine-fit.ts';
import { placeThrough } from './scaled-map.ts';

interface Seen {
  readonly fit: PinFit;
  readonly lens: Lens;
}

/** Places farther from the middle of the ice in view lie on no sheet. */
const FARTHEST_M = 60;
/** Places compared across and down the picture: enough rows that several lie on the ice however the camera tilts. */
const [ACROSS, DOWN] = [6, 18];

/**
 * A fit whose ± also holds that its lens may be another by one sd: `other` is the same fit made with that lens. The places of
 * the picture that both give are compared, and the change of coefficients that comes nearest to the difference is added.
 * Source: first-order propagation of one more unknown, by difference; our own.
 */
export const withLensDoubt = (own: Seen, other: Seen): PinFit => {
  const { fit, lens } = own;
  const { iceXM, iceYM, icePerM, filmXPx, filmYPx, filmPerPx } = fit.scaling;
  const [x, y, u, v] = [[], [], [], []] as [number[], number[], number[], number[]];
  for (let row = 0; row < DOWN; row++) {
    for (let column = 0; column < ACROSS; column++) {
      const shown = {
        xPx: (lens.widthPx * (column + 0.5)) / ACROSS,
        yPx: (lens.heightPx * (row + 0.5)) / DOWN,
      };
      const here = straightOf(lens, shown);
      const there = straightOf(other.lens, shown);
      const place = placeThrough(other.fit.iceFromFilm, there.xPx, there.yPx);
      if (place === null) continue;
      const [px, py] = [(place[0] - iceXM) * icePerM, (place[1] - iceYM) * icePerM];
      if (Math.hypot(px, py) > FARTHEST_M * icePerM) continue;
      x.push(px);
      y.push(py);
      u.push((here.xPx - filmXPx) * filmPerPx);
      v.push((here.yPx - filmYPx) * filmPerPx);
    }
  }
  const [xs, ys, us, vs] = [x, y, u, v].map(values => Float64Array.from(values)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const refined =
    x.length < 3 * ACROSS ? null : refinedFitOf({ count: x.length, x: xs, y: ys, u: us, v: vs });
  if (refined === null) return fit;
  const shift = refined.coefficients.map((entry, i) => entry - fit.coefficients[i]!);
  const covariance = fit.covariance.map((entry, i) => entry + shift[Math.floor(i / 8)]! * shift[i % 8]!);
  return { ...fit, covariance };
};
