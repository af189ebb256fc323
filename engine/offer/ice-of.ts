import type { IcePoint } from '../units/points.ts';

/** The place of the ice that a map (nine numbers, row by row) draws at (u, v), in its own units; null above the horizon. */
export const iceOf = (m: ArrayLike<number>, u: number, v: number): IcePoint | null => {
  const [p, q, r] = [m[0]! - u * m[6]!, m[1]! - u * m[7]!, u * m[8]! - m[2]!];
  const [s, t, w] = [m[3]! - v * m[6]!, m[4]! - v * m[7]!, v * m[8]! - m[5]!];
  const determinant = p * t - q * s;
  const [xM, yM] = [(r * t - q * w) / determinant, (p * w - r * s) / determinant];
  return m[6]! * xM + m[7]! * yM + m[8]! > 0 ? { xM, yM } : null;
};
