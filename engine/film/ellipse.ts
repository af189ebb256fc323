import type { IceCovariance } from '../units/points.ts';

/** Half axes, metres, and the direction of the longer one, radians in (−π/2, π/2], 0 along +x, anticlockwise. */
export interface IceEllipse {
  readonly semiMajorM: number;
  readonly semiMinorM: number;
  readonly angleRad: number;
}

/**
 * The ellipse that holds a normally spread point with the chance `confidence` (0 to 1, without 1): half axes
 * √(χ² · eigenvalue), with χ² = −2 ln(1 − confidence) for two degrees (5.9915 at 0.95). Source: quantile of χ² with two
 * degrees in closed form; eigenvalues of a symmetric 2 × 2 matrix.
 */
export const ellipseOf = ({ xxM2, xyM2, yyM2 }: IceCovariance, confidence = 0.95): IceEllipse => {
  const chiSquare = -2 * Math.log(1 - confidence);
  const middle = (xxM2 + yyM2) / 2;
  const reach = Math.hypot((xxM2 - yyM2) / 2, xyM2);
  return {
    semiMajorM: Math.sqrt(chiSquare * Math.max(0, middle + reach)),
    semiMinorM: Math.sqrt(chiSquare * Math.max(0, middle - reach)),
    angleRad: Math.atan2(2 * xyM2, xxM2 - yyM2) / 2,
  };
};
