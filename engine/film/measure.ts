import type { End } from '../units/ends.ts';
import type { Estimate, FilmPoint } from '../units/points.ts';
import { FOOT_SD } from './film-rows.ts';
import { crossCovarianceOf, iceFromFilm, type Placement } from './ice-from-film.ts';
import type { PinFit } from './pins.ts';

/** A length on the ice, metres, with its standard deviation; or which point has no place on the ice, and why. */
export type Measured =
  | { readonly kind: 'measured'; readonly lengthM: Estimate }
  | {
      readonly kind: 'none';
      readonly point: 'a' | 'b';
      readonly reason: Extract<Placement, { kind: 'none' }>['reason'];
    };

/** How well the two points are known, pixels (standard deviation): both alike, or each. */
export type FootSdPx = number | readonly [aPx: number, bPx: number];

/**
 * Distance on the ice between two points of one picture, metres (a gap, when they are a defender and the carrier).
 * The error of the tie is shared by both points, so the ± is that of their difference and not of two separate
 * places. First order: below about twice its sd a distance is biased upwards. Source: first-order propagation from the
 * joint covariance.
 */
export const distanceBetween = (
  fit: PinFit,
  aPx: FilmPoint,
  bPx: FilmPoint,
  footSdPx: FootSdPx = FOOT_SD.value,
): Measured =>
  measured(fit, aPx, bPx, footSdPx, (dxM, dyM) => {
    const distanceM = Math.hypot(dxM, dyM);
    const isOne = distanceM === 0;
    return { value: distanceM, along: isOne ? [1, 0] : [dxM / distanceM, dyM / distanceM] };
  });

/**
 * How far a is ahead of b towards an end, along the length of the sheet, metres; negative when it is behind. Two
 * are level when the ± takes in 0. Any two places of one picture. Our reading of *level with*, see docs/decisions.
 */
export const alongOffset = (
  fit: PinFit,
  aPx: FilmPoint,
  bPx: FilmPoint,
  towards: End,
  footSdPx: FootSdPx = FOOT_SD.value,
): Measured => {
  const sign = towards === 'plusX' ? 1 : -1;
  return measured(fit, aPx, bPx, footSdPx, dxM => ({ value: sign * dxM, along: [sign, 0] }));
};

const measured = (
  fit: PinFit,
  aPx: FilmPoint,
  bPx: FilmPoint,
  footSdPx: FootSdPx,
  lengthOf: (dxM: number, dyM: number) => { value: number; along: readonly [number, number] },
): Measured => {
  const [aSdPx, bSdPx] = typeof footSdPx === 'number' ? [footSdPx, footSdPx] : footSdPx;
  const a = iceFromFilm(fit, aPx, { footSdPx: aSdPx });
  if (a.kind === 'none') return { kind: 'none', point: 'a', reason: a.reason };
  const b = iceFromFilm(fit, bPx, { footSdPx: bSdPx });
  if (b.kind === 'none') return { kind: 'none', point: 'b', reason: b.reason };
  const { value, along } = lengthOf(a.atM.xM - b.atM.xM, a.atM.yM - b.atM.yM);
  const [xx, xy, yx, yy] = crossCovarianceOf(fit, a.by, b.by, false);
  const [ux, uy] = along;
  const variance =
    ux * ux * (a.covM2.xxM2 + b.covM2.xxM2 - 2 * xx) +
    ux * uy * (2 * a.covM2.xyM2 + 2 * b.covM2.xyM2 - 2 * xy - 2 * yx) +
    uy * uy * (a.covM2.yyM2 + b.covM2.yyM2 - 2 * yy);
  return { kind: 'measured', lengthM: { value, sd: Math.sqrt(Math.max(0, variance)) } };
};
