/** A straight line of a picture: normalX · x + normalY · y + offsetPx = 0 with a normal of length 1. */
export interface PictureLine {
  readonly normalX: number;
  readonly normalY: number;
  readonly offsetPx: number;
}

/**
 * The line with the least Σ weight · distance² through points (pixels, any; weights ≥ 0), and their root mean square
 * distance from it, pixels. Null when fewer than two points of weight differ. Source: total least squares, whose normal is the
 * lesser principal axis of the points (Pearson 1901, Philosophical Magazine 2, 559).
 */
export const lineThrough = (
  xPx: ArrayLike<number>,
  yPx: ArrayLike<number>,
  weights: ArrayLike<number>,
): { readonly line: PictureLine; readonly rmsPx: number } | null => {
  let [sum, middleX, middleY] = [0, 0, 0];
  for (let i = 0; i < xPx.length; i++) {
    sum += weights[i]!;
    middleX += weights[i]! * xPx[i]!;
    middleY += weights[i]! * yPx[i]!;
  }
  if (!(sum > 0)) return null;
  middleX /= sum;
  middleY /= sum;
  let [xx, xy, yy] = [0, 0, 0];
  for (let i = 0; i < xPx.length; i++) {
    const dx = xPx[i]! - middleX;
    const dy = yPx[i]! - middleY;
    xx += weights[i]! * dx * dx;
    xy += weights[i]! * dx * dy;
    yy += weights[i]! * dy * dy;
  }
  if (!(xx + yy > 0)) return null;
  const alongRad = Math.atan2(2 * xy, xx - yy) / 2;
  const normalX = -Math.sin(alongRad);
  const normalY = Math.cos(alongRad);
  const least = normalX * normalX * xx + 2 * normalX * normalY * xy + normalY * normalY * yy;
  return {
    line: { normalX, normalY, offsetPx: -normalX * middleX - normalY * middleY },
    rmsPx: Math.sqrt(Math.max(0, least) / sum),
  };
};
