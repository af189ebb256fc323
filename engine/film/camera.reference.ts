import type { Random } from '../random/random.ts';
import type { FilmPoint, IcePoint } from '../units/points.ts';
import type { Matrix3 } from './pins.ts';

/** A pinhole camera in the stand, for tests: metres, radians, pixels. Pan 0 looks along +y, tilt is down. */
export interface Camera {
  readonly placeM: readonly [number, number, number];
  readonly panRad: number;
  readonly tiltRad: number;
  readonly rollRad: number;
  readonly focalPx: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** film ~ K R [e1 e2 −c] for points of the ice plane; the third component is the depth, positive in front. */
export const filmFromIceOf = (camera: Camera): Matrix3 => {
  const { placeM, panRad, tiltRad, rollRad, focalPx, widthPx, heightPx } = camera;
  const ahead = [
    Math.sin(panRad) * Math.cos(tiltRad),
    Math.cos(panRad) * Math.cos(tiltRad),
    -Math.sin(tiltRad),
  ];
  const flatRight = [Math.cos(panRad), -Math.sin(panRad), 0];
  const flatDown = cross(ahead, flatRight);
  const [c, s] = [Math.cos(rollRad), Math.sin(rollRad)];
  const right = flatRight.map((value, i) => c * value + s * flatDown[i]!);
  const down = flatDown.map((value, i) => c * value - s * flatRight[i]!);
  const row = (axis: readonly number[]) => [
    axis[0]!,
    axis[1]!,
    -(axis[0]! * placeM[0] + axis[1]! * placeM[1] + axis[2]! * placeM[2]),
  ];
  const [x, y, z] = [row(right), row(down), row(ahead)];
  const line = (axis: readonly number[], middlePx: number) =>
    axis.map((value, i) => focalPx * value + middlePx * z[i]!);
  return [...line(x, widthPx / 2), ...line(y, heightPx / 2), ...z] as unknown as Matrix3;
};

/** A camera such as stands in a rink: high on one side, looking at the ice, wide or zoomed. */
export const someCamera = (random: Random): Camera => ({
  placeM: [-20 + 40 * random.uniform(), -25 - 10 * random.uniform(), 8 + 12 * random.uniform()],
  panRad: -0.6 + 1.2 * random.uniform(),
  tiltRad: 0.3 + 0.35 * random.uniform(),
  rollRad: -0.02 + 0.04 * random.uniform(),
  focalPx: 800 + 900 * random.uniform(),
  widthPx: 1280,
  heightPx: 720,
});

/** The drawn place of a point of the ice; null behind the camera. */
export const drawnAt = (m: Matrix3, { xM, yM }: IcePoint): FilmPoint | null => {
  const w = m[6] * xM + m[7] * yM + m[8];
  if (!(w > 0)) return null;
  return { xPx: (m[0] * xM + m[1] * yM + m[2]) / w, yPx: (m[3] * xM + m[4] * yM + m[5]) / w };
};

export const isInPicture = (camera: Camera, px: FilmPoint | null): px is FilmPoint =>
  px !== null && px.xPx >= 0 && px.xPx <= camera.widthPx && px.yPx >= 0 && px.yPx <= camera.heightPx;

const cross = (a: readonly number[], b: readonly number[]): number[] => [
  a[1]! * b[2]! - a[2]! * b[1]!,
  a[2]! * b[0]! - a[0]! * b[2]!,
  a[0]! * b[1]! - a[1]! * b[0]!,
];
