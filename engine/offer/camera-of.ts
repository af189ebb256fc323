import type { Matrix3 } from '../film/pins.ts';
import {
  BENT_VIEW,
  CAMERA_REACH,
  HIGHEST_CAMERA,
  LONGEST_LENS,
  LOWEST_CAMERA,
  SHORTEST_LENS,
  STEEPEST_ROLL,
} from './view-rows.ts';

/** The camera behind a map from the ice to a picture, if its pixels are square and its axis goes through the middle. */
export interface CameraGuess {
  /** In half diagonals of the picture. */
  readonly focal: number;
  readonly xM: number;
  readonly yM: number;
  readonly heightM: number;
}

/**
 * The camera of a map from the ice (metres) to a picture whose middle is (0, 0) and whose half diagonal is 1, y down. Null when
 * no camera in a stand gives such a map: a focal length beyond all lenses, axes that are not square to each other, a camera
 * under or far off the ice, or lying on its side. The axes need not be quite square, since a cut picture has its middle elsewhere.
 * Source: Zhang 2000, IEEE Trans. Pattern Analysis and Machine Intelligence 22, 1330 (two constraints of a plane).
 */
export const cameraOf = (m: Matrix3 | Float64Array): CameraGuess | null => {
  const [a, b, c, d, e, f, g, h, i] = m as Matrix3;
  const cross = a * b + d * e;
  const apart = a * a + d * d - b * b - e * e;
  const perSquare = -(cross * g * h + apart * (g * g - h * h)) / (cross * cross + apart * apart);
  if (!(perSquare > LONGEST_LENS.value ** -2 && perSquare < SHORTEST_LENS.value ** -2)) return null;
  const k = Math.sqrt(perSquare);
  const length1 = Math.sqrt(perSquare * (a * a + d * d) + g * g);
  const length2 = Math.sqrt(perSquare * (b * b + e * e) + h * h);
  const bent = BENT_VIEW.value;
  if (length1 > (1 + bent) * length2 || length2 > (1 + bent) * length1) return null;
  if (Math.abs(perSquare * cross + g * h) > bent * length1 * length2) return null;
  const scale = 2 / (length1 + length2);
  const [r11, r21, r31] = [k * a * scale, k * d * scale, g * scale];
  const [r12, r22, r32] = [k * b * scale, k * e * scale, h * scale];
  const [t1, t2, t3] = [k * c * scale, k * f * scale, i * scale];
  const [r13, r23, r33] = [r21 * r32 - r31 * r22, r31 * r12 - r11 * r32, r11 * r22 - r21 * r12];
  if (Math.abs(r13) > STEEPEST_ROLL.value) return null;
  const heightM = -(r13 * t1 + r23 * t2 + r33 * t3);
  if (!(heightM > LOWEST_CAMERA.value && heightM < HIGHEST_CAMERA.value)) return null;
  const xM = -(r11 * t1 + r21 * t2 + r31 * t3);
  const yM = -(r12 * t1 + r22 * t2 + r32 * t3);
  return Math.hypot(xM, yM) < CAMERA_REACH.value ? { focal: 1 / k, xM, yM, heightM } : null;
};
