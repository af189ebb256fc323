import type { Matrix3 } from '../film/pins.ts';

/** A map from the ice, metres, to pixels as one to a picture whose middle is (0, 0) and whose half diagonal is 1. Source: by definition. */
export const normalisedMap = (
  m: Matrix3,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): Float64Array => {
  const halfDiagonal = Math.hypot(widthPx, heightPx) / 2;
  const row = (from: number, middlePx: number) =>
    [0, 1, 2].map(k => (m[from + k]! - middlePx * m[6 + k]!) / halfDiagonal);
  return Float64Array.of(...row(0, widthPx / 2), ...row(3, heightPx / 2), m[6], m[7], m[8]);
};
