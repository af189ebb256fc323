import type { IceCovariance, IcePoint } from '../units/points.ts';

/** The inverse of a 2 × 2 covariance; the caller has made sure that it has one. */
export const inverse = ({ xxM2, xyM2, yyM2 }: IceCovariance): IceCovariance => {
  const determinant = xxM2 * yyM2 - xyM2 * xyM2;
  return { xxM2: yyM2 / determinant, xyM2: -xyM2 / determinant, yyM2: xxM2 / determinant };
};

export const plus = (a: IceCovariance, b: IceCovariance): IceCovariance => ({
  xxM2: a.xxM2 + b.xxM2,
  xyM2: a.xyM2 + b.xyM2,
  yyM2: a.yyM2 + b.yyM2,
});

export const times = ({ xxM2, xyM2, yyM2 }: IceCovariance, by: number): IceCovariance => ({
  xxM2: xxM2 * by,
  xyM2: xyM2 * by,
  yyM2: yyM2 * by,
});

/** How many standard deviations, squared, a step over the ice is (Mahalanobis). */
export const squareIn = ({ xM, yM }: IcePoint, covM2: IceCovariance): number => {
  const { xxM2, xyM2, yyM2 } = inverse(covM2);
  return xxM2 * xM * xM + 2 * xyM2 * xM * yM + yyM2 * yM * yM;
};
