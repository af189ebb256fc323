/**
 * Solves, in place, eight linear equations of nine columns each (row by row in `rows`, 72 numbers): the eight entries of a map
 * whose ninth is 1, into `into` (9 numbers). False when they do not fix it. Source: elimination with partial pivots.
 */
export const solveMap = (rows: Float64Array, into: Float64Array): boolean => {
  for (let column = 0; column < 8; column++) {
    let pivot = column;
    for (let row = column + 1; row < 8; row++) {
      if (Math.abs(rows[9 * row + column]!) > Math.abs(rows[9 * pivot + column]!)) pivot = row;
    }
    const top = rows[9 * pivot + column]!;
    if (Math.abs(top) < 1e-9) return false;
    if (pivot !== column) {
      for (let k = column; k < 9; k++) {
        const kept = rows[9 * column + k]!;
        rows[9 * column + k] = rows[9 * pivot + k]!;
        rows[9 * pivot + k] = kept;
      }
    }
    for (let row = column + 1; row < 8; row++) {
      const by = rows[9 * row + column]! / top;
      if (by === 0) continue;
      for (let k = column + 1; k < 9; k++)
        rows[9 * row + k] = rows[9 * row + k]! - by * rows[9 * column + k]!;
    }
  }
  for (let row = 7; row >= 0; row--) {
    let sum = rows[9 * row + 8]!;
    for (let k = row + 1; k < 8; k++) sum -= rows[9 * row + k]! * into[k]!;
    into[row] = sum / rows[9 * row + row]!;
  }
  into[8] = 1;
  return true;
};

/** Two equations of a point of the ice (x, y) drawn at (u, v): where two rows of `rows` from `at` on are written. */
export const putPoint = (
  rows: Float64Array,
  at: number,
  x: number,
  y: number,
  u: number,
  v: number,
): void => {
  rows.set([x, y, 1, 0, 0, 0, -u * x, -u * y, u, 0, 0, 0, x, y, 1, -v * x, -v * y, v], 9 * at);
};

/** Two equations of a line of the ice x = const whose picture is p u + q v + r = 0, by two of its points, at y = ±reach. */
export const putLine = (
  rows: Float64Array,
  at: number,
  x: number,
  [p, q, r]: readonly [number, number, number],
  y1: number,
  y2: number,
): void => {
  rows.set([p * x, p * y1, p, q * x, q * y1, q, r * x, r * y1, -r], 9 * at);
  rows.set([p * x, p * y2, p, q * x, q * y2, q, r * x, r * y2, -r], 9 * at + 9);
};
