export interface Parameters {
  readonly topSpeedMps: number;
  readonly tauS: number;
  readonly offsetS: number;
}

/** Normal equations of the three-parameter fit: JᵀJ (upper triangle by rows), Jᵀr, and the sum of squares. */
export interface Normals {
  a: [number, number, number, number, number, number];
  g: [number, number, number];
  rss: number;
}

export const startNormals = (): Normals => ({ a: [0, 0, 0, 0, 0, 0], g: [0, 0, 0], rss: 0 });

/** Adds one time: its residual and the model's derivatives by top speed and τ (that by the offset is 1). */
export const addNormals = (normals: Normals, residual: number, byV: number, byTau: number): void => {
  const { a, g } = normals;
  a[0] += byV * byV;
  a[1] += byV * byTau;
  a[2] += byV;
  a[3] += byTau * byTau;
  a[4] += byTau;
  a[5] += 1;
  g[0] += byV * residual;
  g[1] += byTau * residual;
  g[2] += residual;
  normals.rss += residual * residual;
};

/** Solves (A + damping · diag A) x = g by Cholesky; undefined when A is singular to rounding. */
export const solve3 = ({ a, g }: Normals, damping: number): [number, number, number] | undefined => {
  const grown = 1 + damping;
  const l00 = Math.sqrt(a[0] * grown);
  const l10 = a[1] / l00;
  const l20 = a[2] / l00;
  const d1 = a[3] * grown - l10 * l10;
  const l11 = Math.sqrt(d1);
  const l21 = (a[4] - l20 * l10) / l11;
  const d2 = a[5] * grown - l20 * l20 - l21 * l21;
  if (!(l00 > 0 && d1 > 0 && d2 > 0)) return undefined;
  const l22 = Math.sqrt(d2);
  const y0 = g[0] / l00;
  const y1 = (g[1] - l10 * y0) / l11;
  const y2 = (g[2] - l20 * y0 - l21 * y1) / l22;
  const x2 = y2 / l22;
  const x1 = (y1 - l21 * x2) / l11;
  return [(y0 - l10 * x1 - l20 * x2) / l00, x1, x2];
};
