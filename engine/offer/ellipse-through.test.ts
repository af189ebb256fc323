import { loadOpenCV } from '@opencvjs/web';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomOf } from '../random/random.ts';
import { type Conic, ellipseThrough } from './ellipse-through.ts';

/** Middle, half axes (longer first) and the longer one's direction. */
interface Shape {
  readonly x: number;
  readonly y: number;
  readonly long: number;
  readonly short: number;
  readonly rad: number;
}

const pointsOf = ({ x, y, long, short, rad }: Shape, angles: readonly number[]): [number[], number[]] => [
  angles.map(t => x + long * Math.cos(t) * Math.cos(rad) - short * Math.sin(t) * Math.sin(rad)),
  angles.map(t => y + long * Math.cos(t) * Math.sin(rad) + short * Math.sin(t) * Math.cos(rad)),
];

/** By the textbook: the middle is where the slope is 0; half axes are √(−value there / eigenvalue). */
const shapeOf = ([a, b, c, d, e, f]: Conic): Shape => {
  const square = 4 * a * c - b * b;
  const [x, y] = [(b * e - 2 * c * d) / square, (b * d - 2 * a * e) / square];
  const value = a * x * x + b * x * y + c * y * y + d * x + e * y + f;
  const middle = (a + c) / 2;
  const apart = Math.hypot((a - c) / 2, b / 2);
  const sign = Math.sign(middle);
  const [long, short] = [-sign, sign].map(by => Math.sqrt(-value / (middle + by * apart)));
  return { x, y, long: long!, short: short!, rad: Math.atan2(b, a - c) / 2 + (sign > 0 ? Math.PI / 2 : 0) };
};

const unit = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1000 }).map(k => min + ((max - min) * k) / 1000);

describe('an ellipse through points', () => {
  it('is the one they were taken from', () => {
    const shapes = fc.record({
      x: unit(-0.8, 0.8),
      y: unit(-0.5, 0.5),
      short: unit(0.02, 0.2),
      ratio: unit(1, 6),
      rad: unit(0, 3.1),
    });
    fc.assert(
      fc.property(shapes, unit(0, 6), ({ x, y, short, ratio, rad }, start) => {
        const truth = { x, y, short, long: short * ratio, rad };
        const angles = Array.from({ length: 12 }, (_, k) => start + 0.4 * k);
        const found = shapeOf(ellipseThrough(...pointsOf(truth, angles))!);
        for (const part of ['x', 'y', 'long', 'short'] as const)
          expect(found[part]).toBeCloseTo(truth[part], 3);
      }),
    );
  });

  it('is null for points of a line, of which there are endlessly many', () => {
    expect(ellipseThrough([0, 1, 2, 3, 4, 5], [0, 1, 2, 3, 4, 5])).toBeNull();
  });

  // The method it makes stable, Fitzgibbon, Pilu & Fisher 1999, as OpenCV has it.
  it('is that of OpenCV 4.13 (fitEllipseDirect) for points that stray', async () => {
    const cv = await loadOpenCV();
    const random = randomOf(5);
    for (let round = 0; round < 30; round++) {
      const truth = {
        x: 300 + 50 * random.uniform(),
        y: 200,
        long: 90 + 60 * random.uniform(),
        short: 40,
        rad: 3 * random.uniform(),
      };
      const angles = Array.from({ length: 40 }, () => 2 * Math.PI * random.uniform());
      const [xs, ys] = pointsOf(truth, angles).map(values =>
        values.map(v => Math.fround(v + random.normal())),
      );
      const points = cv.matFromArray(
        40,
        1,
        cv.CV_32FC2,
        xs!.flatMap((x, k) => [x, ys![k]!]),
      );
      const theirs = cv.fitEllipseDirect(points);
      points.delete();
      const ours = shapeOf(
        ellipseThrough(
          xs!.map(x => (x - 300) / 100),
          ys!.map(y => (y - 200) / 100),
        )!,
      );
      expect(300 + 100 * ours.x).toBeCloseTo(theirs.center.x, 1);
      expect(200 + 100 * ours.y).toBeCloseTo(theirs.center.y, 1);
      expect(200 * ours.long).toBeCloseTo(Math.max(theirs.size.width, theirs.size.height), 0);
      expect(200 * ours.short).toBeCloseTo(Math.min(theirs.size.width, theirs.size.height), 0);
    }
  });
});
