import type { IcePoint } from '../units/points.ts';

/** One cubic piece, parameter 0–1: x = ax + bx u + cx u² + dx u³, metres. */
export interface CubicPiece {
  readonly ax: number;
  readonly bx: number;
  readonly cx: number;
  readonly dx: number;
  readonly ay: number;
  readonly by: number;
  readonly cy: number;
  readonly dy: number;
}

/** How fast the point moves over the parameter, metres. */
export const speedOnPiece = (piece: CubicPiece, u: number): number => {
  const x = piece.bx + u * (2 * piece.cx + 3 * piece.dx * u);
  const y = piece.by + u * (2 * piece.cy + 3 * piece.dy * u);
  return Math.sqrt(x * x + y * y);
};

/** Points nearer to each other than this are one point. */
const SAME_POINT_M = 1e-6;

/**
 * Cubic spline through the points with continuous curvature: knots by the square root of the chord (centripetal, so that
 * near points make no loops), natural ends, or the given direction at the start. Empty when all points coincide.
 */
export const splinePieces = (
  pointsM: readonly IcePoint[],
  startHeadingRad: number | undefined,
): readonly CubicPiece[] => {
  const points = pointsM.filter((point, i) => i === 0 || apart(point, pointsM[i - 1]!) > SAME_POINT_M);
  if (points.length < 2) return [];
  const gaps = points.slice(1).map((point, i) => Math.sqrt(apart(point, points[i]!)));
  const startSpeed = gaps[0]!;
  const slopesX = slopesOf(
    points.map(point => point.xM),
    gaps,
    startHeadingRad === undefined ? undefined : startSpeed * Math.cos(startHeadingRad),
  );
  const slopesY = slopesOf(
    points.map(point => point.yM),
    gaps,
    startHeadingRad === undefined ? undefined : startSpeed * Math.sin(startHeadingRad),
  );
  return gaps.map((gap, i) => {
    const from = points[i]!;
    const to = points[i + 1]!;
    const [bx, cx, dx] = hermite(from.xM, to.xM, slopesX[i]! * gap, slopesX[i + 1]! * gap);
    const [by, cy, dy] = hermite(from.yM, to.yM, slopesY[i]! * gap, slopesY[i + 1]! * gap);
    return { ax: from.xM, bx, cx, dx, ay: from.yM, by, cy, dy };
  });
};

const apart = (a: IcePoint, b: IcePoint): number => Math.hypot(a.xM - b.xM, a.yM - b.yM);

const hermite = (
  from: number,
  to: number,
  slope0: number,
  slope1: number,
): readonly [number, number, number] => [
  slope0,
  3 * (to - from) - 2 * slope0 - slope1,
  2 * (from - to) + slope0 + slope1,
];

/** First derivatives at the knots that make the second derivative continuous: one tridiagonal solve (Thomas). */
const slopesOf = (
  values: readonly number[],
  gaps: readonly number[],
  startSlope: number | undefined,
): Float64Array => {
  const last = values.length - 1;
  const upper = new Float64Array(last + 1);
  const right = new Float64Array(last + 1);
  const chord = (i: number): number => (values[i + 1]! - values[i]!) / gaps[i]!;
  if (startSlope === undefined) {
    upper[0] = 0.5;
    right[0] = 1.5 * chord(0);
  } else {
    right[0] = startSlope;
  }
  for (let i = 1; i <= last; i++) {
    const before = gaps[i - 1]!;
    const after = i < last ? gaps[i]! : 0;
    const lower = i < last ? after : 1;
    const middle = i < last ? 2 * (before + after) : 2;
    const target = i < last ? 3 * (after * chord(i - 1) + before * chord(i)) : 3 * chord(last - 1);
    const pivot = middle - lower * upper[i - 1]!;
    upper[i] = i < last ? before / pivot : 0;
    right[i] = (target - lower * right[i - 1]!) / pivot;
  }
  for (let i = last - 1; i >= 0; i--) right[i] = right[i]! - upper[i]! * right[i + 1]!;
  return right;
};
