/**
 * A point on the ice, metres. Origin at centre ice, +x towards the end we attack in the first period,
 * y to the left of +x. Turning ends round is a half turn (−x, −y), never a mirror.
 */
export interface IcePoint {
  readonly xM: number;
  readonly yM: number;
}

/** A velocity on the ice, metres a second, axes as `IcePoint`. */
export interface IceVelocity {
  readonly xMps: number;
  readonly yMps: number;
}

/** A point of the shown picture (rotation applied), pixels. (0, 0) is the top left corner, y points down. */
export interface FilmPoint {
  readonly xPx: number;
  readonly yPx: number;
}

/** Covariance of an ice point, m²: variance along x, covariance, variance along y. */
export interface IceCovariance {
  readonly xxM2: number;
  readonly xyM2: number;
  readonly yyM2: number;
}

/** An estimate with its standard deviation, both in the same unit. */
export interface Estimate {
  readonly value: number;
  readonly sd: number;
}
