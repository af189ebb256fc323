import type { FilmPoint, IceCovariance, IcePoint } from '../units/points.ts';
import { FOOT_SD, NEAREST_HORIZON } from './film-rows.ts';
import { shownOf, straightOf } from './lens.ts';
import type { PinFit } from './pins.ts';

/** A click placed on the ice. `covM2` holds both the tie's ± and the click's own. */
export type Placement =
  | {
      readonly kind: 'placed';
      readonly atM: IcePoint;
      readonly covM2: IceCovariance;
      readonly by: Sensitivity;
    }
  | { readonly kind: 'none'; readonly reason: 'aboveHorizon' | 'nearHorizon' };

/**
 * What a placed point hangs on, metres: rows x and y of ∂ice/∂coefficient (8 each), and of ∂ice/∂click. Points of
 * one fit share its error through `byCoefficients`, so differences between them are better known than each of them.
 */
export interface Sensitivity {
  readonly byCoefficients: readonly number[];
  readonly byClick: readonly [xByX: number, xByY: number, yByX: number, yByY: number];
  readonly clickSdPx: number;
}

/**
 * Where a point of the picture lies on the ice, metres, with its covariance to first order (m²). The point is taken
 * to touch the ice: feet, not heads; it may lie outside the boards, which the caller can ask the rink. `footSdPx` is
 * how well the click hits it (`FOOT_SD` by default, 0 for a point known exactly). `none` for a point above the
 * horizon, or so near to it that the ± cannot be believed. Source: first-order propagation, Hartley & Zisserman 2004, ch.
 * 5 (from memory).
 */
export const iceFromFilm = (
  fit: PinFit,
  shownPx: FilmPoint,
  { footSdPx = FOOT_SD.value }: { readonly footSdPx?: number } = {},
): Placement => {
  const m = fit.iceFromFilm;
  // The lens also scales the click's own ±, by a few hundredths: left out.
  const px = fit.lens ? straightOf(fit.lens, shownPx) : shownPx;
  const t = m[6] * px.xPx + m[7] * px.yPx + m[8];
  if (!(t > 0)) return { kind: 'none', reason: 'aboveHorizon' };
  const atM = {
    xM: (m[0] * px.xPx + m[1] * px.yPx + m[2]) / t,
    yM: (m[3] * px.xPx + m[4] * px.yPx + m[5]) / t,
  };
  const by = sensitivityAt(fit, atM, footSdPx);
  if (by === null) return { kind: 'none', reason: 'nearHorizon' };
  return { kind: 'placed', atM, covM2: covarianceBetween(fit, by, by, true), by };
};

/**
 * Where a point of the ice is drawn in the picture, pixels; it may lie outside it. Null behind the camera. Source: the
 * pinhole camera as a homography, by definition of the fit.
 */
export const filmFromIce = (fit: PinFit, { xM, yM }: IcePoint): FilmPoint | null => {
  const m = fit.filmFromIce;
  const w = m[6] * xM + m[7] * yM + m[8];
  if (!(w > 0)) return null;
  const px = { xPx: (m[0] * xM + m[1] * yM + m[2]) / w, yPx: (m[3] * xM + m[4] * yM + m[5]) / w };
  return fit.lens ? shownOf(fit.lens, px) : px;
};

/**
 * Covariance of two placed points of one fit: G_a Cov(h) G_bᵀ, and the click's own part when both are one point.
 * For two different points the matrix is not symmetric; `xyM2` is then the mean of its two sides. Source: as
 * `iceFromFilm`.
 */
export const covarianceBetween = (
  fit: PinFit,
  a: Sensitivity,
  b: Sensitivity,
  isSamePoint: boolean,
): IceCovariance => {
  const [xx, xy, yx, yy] = crossCovarianceOf(fit, a, b, isSamePoint);
  return { xxM2: xx, xyM2: (xy + yx) / 2, yyM2: yy };
};

/**
 * The four entries xx, xy, yx, yy of the covariance of point a (rows) with point b (columns), m². Source: as
 * `iceFromFilm`.
 */
export const crossCovarianceOf = (
  fit: PinFit,
  a: Sensitivity,
  b: Sensitivity,
  isSamePoint: boolean,
): [number, number, number, number] => {
  const result: [number, number, number, number] = [0, 0, 0, 0];
  const { covariance } = fit;
  for (let i = 0; i < 8; i++) {
    let byX = 0;
    let byY = 0;
    for (let j = 0; j < 8; j++) {
      const entry = covariance[8 * i + j]!;
      byX += entry * b.byCoefficients[j]!;
      byY += entry * b.byCoefficients[8 + j]!;
    }
    result[0] += a.byCoefficients[i]! * byX;
    result[1] += a.byCoefficients[i]! * byY;
    result[2] += a.byCoefficients[8 + i]! * byX;
    result[3] += a.byCoefficients[8 + i]! * byY;
  }
  if (isSamePoint) {
    const [xByX, xByY, yByX, yByY] = a.byClick;
    const variance = a.clickSdPx * a.clickSdPx;
    result[0] += variance * (xByX * xByX + xByY * xByY);
    result[1] += variance * (xByX * yByX + xByY * yByY);
    result[2] += variance * (xByX * yByX + xByY * yByY);
    result[3] += variance * (yByX * yByX + yByY * yByY);
  }
  return result;
};

const sensitivityAt = (fit: PinFit, atM: IcePoint, clickSdPx: number): Sensitivity | null => {
  const { iceXM, iceYM, icePerM, filmPerPx } = fit.scaling;
  const h = fit.coefficients;
  const x = (atM.xM - iceXM) * icePerM;
  const y = (atM.yM - iceYM) * icePerM;
  const w = h[6]! * x + h[7]! * y + 1;
  const u = (h[0]! * x + h[1]! * y + h[2]!) / w;
  const v = (h[3]! * x + h[4]! * y + h[5]!) / w;
  // A = ∂film/∂ice in the scaled planes; its inverse turns pixels into metres.
  const a = (h[0]! - h[6]! * u) / w;
  const b = (h[1]! - h[7]! * u) / w;
  const c = (h[3]! - h[6]! * v) / w;
  const d = (h[4]! - h[7]! * v) / w;
  const determinant = a * d - b * c;
  const inverse = [d / determinant, -b / determinant, -c / determinant, a / determinant] as const;
  const [p, q, r] = [x / w, y / w, 1 / w];
  const byU = [p, q, r, 0, 0, 0, -p * u, -q * u];
  const byV = [0, 0, 0, p, q, r, -p * v, -q * v];
  const byX = byU.map((value, i) => -(inverse[0] * value + inverse[1] * byV[i]!));
  const byY = byU.map((value, i) => -(inverse[2] * value + inverse[3] * byV[i]!));
  if (!(relativeDepthSd(fit, x, y, w, byX, byY, inverse, clickSdPx * filmPerPx) < NEAREST_HORIZON.value)) {
    return null;
  }
  const byCoefficients = [...byX, ...byY].map(value => value / icePerM);
  const perPx = filmPerPx / icePerM;
  const byClick = [inverse[0] * perPx, inverse[1] * perPx, inverse[2] * perPx, inverse[3] * perPx] as const;
  return { byCoefficients, byClick, clickSdPx };
};

/** sd(w)/w of a point that is fixed in the picture: w moves with the tie, and with the place that the tie gives. */
const relativeDepthSd = (
  fit: PinFit,
  x: number,
  y: number,
  w: number,
  byX: readonly number[],
  byY: readonly number[],
  inverse: readonly [number, number, number, number],
  clickSd: number,
): number => {
  const [g, h] = [fit.coefficients[6]!, fit.coefficients[7]!];
  const pull = byX.map((value, i) => g * value + h * byY[i]! + (i === 6 ? x : i === 7 ? y : 0));
  let variance =
    (clickSd * Math.hypot(g * inverse[0] + h * inverse[2], g * inverse[1] + h * inverse[3])) ** 2;
  for (let i = 0; i < 8; i++) {
    for (let j = 0; j < 8; j++) variance += pull[i]! * pull[j]! * fit.covariance[8 * i + j]!;
  }
  return Math.sqrt(variance) / w;
};
