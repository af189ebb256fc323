import type { Conic } from './ellipse-through.ts';

/**
 * A map from the ice, metres from the middle of a circle of `radiusM`, to a picture in which it is seen as this ellipse and its
 * middle at (u, v); turned on the ice by an unknown angle. Nine numbers, row by row; null when (u, v) is not inside the ellipse.
 * Source: the polar of the middle is the horizon, and conjugate points on it are square to each other: Hartley & Zisserman 2004, 2.8 and 8.6 (from memory).
 */
export const circleView = (
  [a, b, c, d, e, f]: Conic,
  u: number,
  v: number,
  radiusM: number,
): Float64Array | null => {
  const times = ([x, y, w]: Vector): Vector => [
    a * x + (b / 2) * y + (d / 2) * w,
    (b / 2) * x + c * y + (e / 2) * w,
    (d / 2) * x + (e / 2) * y + f * w,
  ];
  const middle: Vector = [u, v, 1];
  const horizon = times(middle);
  // The sign by which the conic is negative within the ellipse.
  const sign = Math.sign(a + c);
  const depth = -sign * dot(middle, horizon);
  if (!(depth > 0)) return null;
  const first = cross(horizon, Math.abs(horizon[0]) > Math.abs(horizon[1]) ? [0, 1, 0] : [1, 0, 0]);
  const second = cross(horizon, times(first));
  const length1 = sign * dot(first, times(first));
  const length2 = sign * dot(second, times(second));
  if (!(length1 > 0 && length2 > 0)) return null;
  const scale = radiusM / Math.sqrt(depth);
  const columns = [
    first.map(value => value / Math.sqrt(length1)),
    second.map(value => value / Math.sqrt(length2)),
    middle.map(value => value * scale),
  ];
  const determinant = dot(
    columns[2] as unknown as Vector,
    cross(columns[0] as unknown as Vector, columns[1] as unknown as Vector),
  );
  // Anticlockwise on the ice is clockwise with y down.
  const flip = determinant > 0 ? -1 : 1;
  const map = new Float64Array(9);
  for (let row = 0; row < 3; row++) {
    map[3 * row] = columns[0]![row]!;
    map[3 * row + 1] = flip * columns[1]![row]!;
    map[3 * row + 2] = columns[2]![row]!;
  }
  return map;
};

type Vector = readonly [number, number, number];

const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
