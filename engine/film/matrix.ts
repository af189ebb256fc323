import type { Matrix3 } from './pins.ts';

/** a · b for 3 × 3 matrices. */
export const product3 = (a: Matrix3, b: Matrix3): Matrix3 => {
  const entry = (row: number, column: number) =>
    a[3 * row]! * b[column]! + a[3 * row + 1]! * b[3 + column]! + a[3 * row + 2]! * b[6 + column]!;
  return [
    entry(0, 0),
    entry(0, 1),
    entry(0, 2),
    entry(1, 0),
    entry(1, 1),
    entry(1, 2),
    entry(2, 0),
    entry(2, 1),
    entry(2, 2),
  ];
};

/** The inverse of a 3 × 3 matrix by its cofactors. The caller has made sure that the determinant is not 0. */
export const inverse3 = (m: Matrix3): Matrix3 => {
  const [a, b, c, d, e, f, g, h, i] = m;
  const determinant = determinant3(m);
  return [
    (e * i - f * h) / determinant,
    (c * h - b * i) / determinant,
    (b * f - c * e) / determinant,
    (f * g - d * i) / determinant,
    (a * i - c * g) / determinant,
    (c * d - a * f) / determinant,
    (d * h - e * g) / determinant,
    (b * g - a * h) / determinant,
    (a * e - b * d) / determinant,
  ];
};

export const determinant3 = ([a, b, c, d, e, f, g, h, i]: Matrix3): number =>
  a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);

/**
 * Cholesky factor of a symmetric positive definite `size` × `size` matrix, row by row, into `factor` (lower half).
 * Returns false, leaving `factor` half written, when the matrix is not positive definite to working precision.
 */
export const factorInto = (matrix: Float64Array, factor: Float64Array, size: number): boolean => {
  for (let row = 0; row < size; row++) {
    for (let column = 0; column <= row; column++) {
      let sum = matrix[size * row + column]!;
      for (let k = 0; k < column; k++) sum -= factor[size * row + k]! * factor[size * column + k]!;
      if (row === column) {
        if (!(sum > matrix[size * row + row]! * 1e-15)) return false;
        factor[size * row + row] = Math.sqrt(sum);
      } else {
        factor[size * row + column] = sum / factor[size * column + column]!;
      }
    }
  }
  return true;
};

/** Solves (factor · factorᵀ) x = right for x, in place of `right`. */
export const solveInPlace = (factor: Float64Array, right: Float64Array, size: number): void => {
  for (let row = 0; row < size; row++) {
    let sum = right[row]!;
    for (let k = 0; k < row; k++) sum -= factor[size * row + k]! * right[k]!;
    right[row] = sum / factor[size * row + row]!;
  }
  for (let row = size - 1; row >= 0; row--) {
    let sum = right[row]!;
    for (let k = row + 1; k < size; k++) sum -= factor[size * k + row]! * right[k]!;
    right[row] = sum / factor[size * row + row]!;
  }
};

/** The inverse of factor · factorᵀ, row by row. */
export const inverseOfFactored = (factor: Float64Array, size: number): Float64Array => {
  const inverse = new Float64Array(size * size);
  const column = new Float64Array(size);
  for (let at = 0; at < size; at++) {
    column.fill(0);
    column[at] = 1;
    solveInPlace(factor, column, size);
    for (let row = 0; row < size; row++) inverse[size * row + at] = column[row]!;
  }
  return inverse;
};
