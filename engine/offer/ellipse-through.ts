/** A conic a x² + b x y + c y² + d x + e y + f = 0. */
export type Conic = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/**
 * The ellipse with the least algebraic distance to points (any units, best of size 1; at least five), by the constraint
 * 4 a c − b² = 1; a circle counts. Null when the points do not fix one. Source: Halíř & Flusser 1998, Numerically stable direct
 * least squares fitting of ellipses, WSCG '98 (from memory).
 */
export const ellipseThrough = (x: ArrayLike<number>, y: ArrayLike<number>): Conic | null => {
  const s = new Float64Array(36);
  const row = new Float64Array(6);
  for (let i = 0; i < x.length; i++) {
    row[0] = x[i]! * x[i]!;
    row[1] = x[i]! * y[i]!;
    row[2] = y[i]! * y[i]!;
    row[3] = x[i]!;
    row[4] = y[i]!;
    row[5] = 1;
    for (let p = 0; p < 6; p++) for (let q = 0; q < 6; q++) s[6 * p + q] = s[6 * p + q]! + row[p]! * row[q]!;
  }
  const block = (top: number, left: number): number[] =>
    Array.from({ length: 9 }, (_, k) => s[6 * (top + Math.floor(k / 3)) + left + (k % 3)]!);
  const [s1, s2, s3] = [block(0, 0), block(0, 3), block(3, 3)];
  const s3Inverse = inverseOf(s3);
  if (s3Inverse === null) return null;
  const t = product(s3Inverse, transposed(s2)).map(value => -value);
  const m = product(s2, t).map((value, k) => value + s1[k]!);
  const reduced = [0, 1, 2].flatMap(k => [m[6 + k]! / 2, -m[3 + k]!, m[k]! / 2]);
  const rows = [0, 3, 6].flatMap(from => [0, 1, 2].map(k => reduced[3 * k + from / 3]!));
  for (const root of eigenvaluesOf(rows)) {
    const [a, b, c] = nullVectorOf(rows.map((value, k) => (k % 4 === 0 ? value - root : value)));
    if (!(4 * a * c - b * b > 0)) continue;
    const [d, e, f] = [0, 3, 6].map(k => t[k]! * a + t[k + 1]! * b + t[k + 2]! * c) as [
      number,
      number,
      number,
    ];
    return [a, b, c, d, e, f];
  }
  return null;
};

const product = (a: readonly number[], b: readonly number[]): number[] =>
  Array.from({ length: 9 }, (_, k) => {
    const [row, column] = [3 * Math.floor(k / 3), k % 3];
    return a[row]! * b[column]! + a[row + 1]! * b[3 + column]! + a[row + 2]! * b[6 + column]!;
  });

const transposed = (a: readonly number[]): number[] => [0, 3, 6, 1, 4, 7, 2, 5, 8].map(k => a[k]!);

const cross = (a: readonly number[], b: readonly number[]): [number, number, number] => [
  a[1]! * b[2]! - a[2]! * b[1]!,
  a[2]! * b[0]! - a[0]! * b[2]!,
  a[0]! * b[1]! - a[1]! * b[0]!,
];

const rowsOf = (a: readonly number[]): [number[], number[], number[]] => [
  a.slice(0, 3),
  a.slice(3, 6),
  a.slice(6),
];

const inverseOf = (a: readonly number[]): number[] | null => {
  const [p, q, r] = rowsOf(a);
  const columns = [cross(q, r), cross(r, p), cross(p, q)];
  const determinant = p[0]! * columns[0]![0] + p[1]! * columns[0]![1] + p[2]! * columns[0]![2];
  if (!(Math.abs(determinant) > 1e-14)) return null;
  return Array.from({ length: 9 }, (_, k) => columns[k % 3]![Math.floor(k / 3)]! / determinant);
};

/** The direction that all three rows of a singular matrix are square to. */
const nullVectorOf = (a: readonly number[]): [number, number, number] => {
  const [p, q, r] = rowsOf(a);
  const options = [cross(p, q), cross(q, r), cross(r, p)];
  return options.sort((one, other) => Math.hypot(...other) - Math.hypot(...one))[0]!;
};

/** The real eigenvalues of a 3 × 3 matrix. */
const eigenvaluesOf = (a: readonly number[]): number[] => {
  const trace = a[0]! + a[4]! + a[8]!;
  const minors =
    a[0]! * a[4]! - a[1]! * a[3]! + a[0]! * a[8]! - a[2]! * a[6]! + a[4]! * a[8]! - a[5]! * a[7]!;
  const [p, q, r] = rowsOf(a);
  const [c0, c1, c2] = cross(q, r);
  const determinant = p[0]! * c0 + p[1]! * c1 + p[2]! * c2;
  const shift = trace / 3;
  const third = (trace * trace - 3 * minors) / 9;
  const half = (2 * trace ** 3 - 9 * trace * minors + 27 * determinant) / 54;
  if (half * half < third ** 3) {
    const angle = Math.acos(Math.max(-1, Math.min(1, half / Math.sqrt(third ** 3))));
    return [0, 1, 2].map(k => shift + 2 * Math.sqrt(third) * Math.cos((angle - 2 * Math.PI * k) / 3));
  }
  const root = Math.sign(half) * Math.cbrt(Math.abs(half) + Math.sqrt(half * half - third ** 3));
  return [shift + root + (root === 0 ? 0 : third / root)];
};
