import type { Matrix3 } from '../film/pins.ts';
import type { Random } from '../random/random.ts';
import type { GreyPicture } from './grey-picture.ts';

/** A flat scene with detail of every size, for tests: grey at any place, pixels of its own plane. */
export type DrawnScene = (x: number, y: number) => number;

/** Smooth noise of two sizes with hard-edged boxes on it, like advertisements on boards. */
export const someScene = (random: Random, boxCount = 60, reachPx = 900): DrawnScene => {
  const lattice = Float64Array.from({ length: 64 * 64 }, () => random.uniform());
  const noise = (x: number, y: number): number => {
    const left = Math.floor(x);
    const top = Math.floor(y);
    const soft = (t: number) => t * t * (3 - 2 * t);
    const [fx, fy] = [soft(x - left), soft(y - top)];
    const at = (i: number, j: number) => lattice[(j & 63) * 64 + (i & 63)]!;
    const upper = at(left, top) * (1 - fx) + at(left + 1, top) * fx;
    const lower = at(left, top + 1) * (1 - fx) + at(left + 1, top + 1) * fx;
    return upper * (1 - fy) + lower * fy;
  };
  const boxes = Array.from({ length: boxCount }, () => ({
    x: reachPx * (random.uniform() - 0.25),
    y: reachPx * (random.uniform() - 0.25),
    half: 8 + 30 * random.uniform(),
    by: 120 * (random.uniform() - 0.5),
  }));
  return (x, y) => {
    let grey = 60 + 50 * noise(x / 17, y / 17) + 40 * noise(x / 6 + 31, y / 6);
    for (const box of boxes) {
      if (Math.abs(x - box.x) < box.half && Math.abs(y - box.y) < 0.6 * box.half) grey += box.by;
    }
    return grey;
  };
};

/** The scene seen through scene ~ sceneFromPicture · (x, y, 1), four samples a pixel, with noise of a sd in grey. */
export const pictureOfScene = (
  scene: DrawnScene,
  m: Matrix3,
  widthPx: number,
  heightPx: number,
  random: Random,
  noiseSd: number,
): GreyPicture => {
  const grey = new Uint8Array(widthPx * heightPx);
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      let sum = 0;
      for (const [dx, dy] of [
        [0.25, 0.25],
        [0.75, 0.25],
        [0.25, 0.75],
        [0.75, 0.75],
      ] as const) {
        const w = m[6] * (x + dx) + m[7] * (y + dy) + m[8];
        sum += scene(
          (m[0] * (x + dx) + m[1] * (y + dy) + m[2]) / w,
          (m[3] * (x + dx) + m[4] * (y + dy) + m[5]) / w,
        );
      }
      grey[y * widthPx + x] = Math.max(0, Math.min(255, Math.round(sum / 4 + noiseSd * random.normal())));
    }
  }
  return { widthPx, heightPx, grey };
};

/** Where a matrix takes a point. */
export const moved = (m: Matrix3, x: number, y: number): [number, number] => {
  const w = m[6] * x + m[7] * y + m[8];
  return [(m[0] * x + m[1] * y + m[2]) / w, (m[3] * x + m[4] * y + m[5]) / w];
};
