import { loadOpenCV } from '@opencvjs/web';
import { describe, expect, it } from 'vitest';
import { inverse3 } from '../film/matrix.ts';
import type { Matrix3 } from '../film/pins.ts';
import { type Random, randomOf } from '../random/random.ts';
import { cornersOf } from './corners.ts';
import { moved, pictureOfScene, someScene } from './drawn-scene.reference.ts';
import { followPatches } from './follow-patches.ts';
import { followPoints } from './follow-points.ts';
import type { GreyPicture } from './grey-picture.ts';
import { patchesOf } from './patches.ts';
import { pyramidOf } from './pyramid.ts';

const [WIDTH, HEIGHT, LEVELS] = [480, 270, 4];
const STILL: Matrix3 = [1, 0, 0, 0, 1, 0, 0, 0, 1];

/** A move as between two pictures of a pan: some pixels across, a little turn, zoom and tilt. */
const someMove = (random: Random, reachPx: number): Matrix3 => {
  const spread = (by: number) => by * (2 * random.uniform() - 1);
  const zoom = 1 + spread(0.015);
  const turn = spread(0.01);
  return [zoom, -turn, spread(reachPx), turn, zoom, spread(reachPx / 3), spread(1e-5), spread(1e-5), 1];
};

const pairOf = (seed: number, reachPx: number) => {
  const random = randomOf(seed);
  const scene = someScene(random);
  const move = someMove(random, reachPx);
  const before = pictureOfScene(scene, STILL, WIDTH, HEIGHT, random, 2);
  const after = pictureOfScene(scene, inverse3(move), WIDTH, HEIGHT, random, 2);
  const points = cornersOf(pyramidOf(before, 1)[0]!, {
    perCell: 2,
    cellPx: 40,
    leastStrength: 8,
    marginPx: 4,
    leftOut: [],
  });
  return { before, after, move, points };
};

const medianOf = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

describe('points followed from picture to picture', () => {
  it('are as near the truth as with OpenCV 4.13 (calcOpticalFlowPyrLK), and as many are kept', {
    timeout: 240_000,
  }, async () => {
    const cv = await loadOpenCV();
    const matOf = ({ widthPx, heightPx, grey }: GreyPicture) =>
      cv.matFromArray(heightPx, widthPx, cv.CV_8UC1, Array.from(grey));
    const ours: number[] = [];
    const theirs: number[] = [];
    let [asked, oursKept, theirsKept] = [0, 0, 0];
    for (let seed = 1; seed <= 4; seed++) {
      const { before, after, move, points } = pairOf(seed, 18);
      const count = points.xPx.length;
      // Corners on pixel centres: OpenCV's places are whole numbers there.
      const flat = Array.from({ length: 2 * count }, (_, i) =>
        i % 2 === 0 ? points.xPx[i >> 1]! - 0.5 : points.yPx[i >> 1]! - 0.5,
      );
      const mats = [matOf(before), matOf(after), cv.matFromArray(count, 1, cv.CV_32FC2, flat)] as const;
      const back = { to: new cv.Mat(), status: new cv.Mat(), error: new cv.Mat() };
      const there = { to: new cv.Mat(), status: new cv.Mat(), error: new cv.Mat() };
      const window = new cv.Size(21, 21);
      const until = new cv.TermCriteria(cv.TermCriteria_EPS + cv.TermCriteria_MAX_ITER, 30, 0.01);
      cv.calcOpticalFlowPyrLK(
        mats[0],
        mats[1],
        mats[2],
        there.to,
        there.status,
        there.error,
        window,
        LEVELS - 1,
        until,
      );
      cv.calcOpticalFlowPyrLK(
        mats[1],
        mats[0],
        there.to,
        back.to,
        back.status,
        back.error,
        window,
        LEVELS - 1,
        until,
      );
      const our = followPoints(pyramidOf(before, LEVELS), pyramidOf(after, LEVELS), points, 0.5, 0.1);
      for (let i = 0; i < count; i++) {
        const [x, y] = moved(move, points.xPx[i]!, points.yPx[i]!);
        if (x < 0 || y < 0 || x > WIDTH || y > HEIGHT) continue;
        asked++;
        if (our.found[i] === 1) {
          oursKept++;
          ours.push(Math.hypot(our.xPx[i]! - x, our.yPx[i]! - y));
        }
        const returned = Math.hypot(
          back.to.data32F[2 * i]! - flat[2 * i]!,
          back.to.data32F[2 * i + 1]! - flat[2 * i + 1]!,
        );
        if (there.status.data[i] === 1 && back.status.data[i] === 1 && returned <= 0.5) {
          theirsKept++;
          theirs.push(Math.hypot(there.to.data32F[2 * i]! + 0.5 - x, there.to.data32F[2 * i + 1]! + 0.5 - y));
        }
      }
      for (const mat of [...mats, ...Object.values(there), ...Object.values(back)]) mat.delete();
    }
    expect(asked).toBeGreaterThan(500);
    expect(medianOf(ours)).toBeLessThanOrEqual(medianOf(theirs) + 0.05);
    expect(oursKept / asked).toBeGreaterThanOrEqual(theirsKept / asked - 0.05);
  });

  it('are found from a near guess over any distance', () => {
    const { before, after, move, points } = pairOf(21, 120);
    const guess = { xPx: Float64Array.from(points.xPx), yPx: Float64Array.from(points.yPx) };
    for (let i = 0; i < guess.xPx.length; i++) {
      const [x, y] = moved(move, points.xPx[i]!, points.yPx[i]!);
      guess.xPx[i] = x + 3;
      guess.yPx[i] = y - 2;
    }
    const found = followPatches(patchesOf(pyramidOf(before, 3), points, 0.1), pyramidOf(after, 3), guess);
    const missesPx = Array.from(found.found, (isFound, i) => {
      const [x, y] = moved(move, points.xPx[i]!, points.yPx[i]!);
      return isFound === 1 ? Math.hypot(found.xPx[i]! - x, found.yPx[i]! - y) : Number.NaN;
    }).filter(miss => !Number.isNaN(miss));
    expect(missesPx.length).toBeGreaterThan(30);
    expect(medianOf(missesPx)).toBeLessThan(0.15);
  });

  it('are not found where the picture is blank', () => {
    const blank: GreyPicture = { widthPx: 200, heightPx: 100, grey: new Uint8Array(20000).fill(90) };
    const points = { xPx: Float64Array.of(50, 120.5), yPx: Float64Array.of(50, 40) };
    const pyramid = pyramidOf(blank, 3);
    expect([...followPoints(pyramid, pyramid, points, 0.5, 0.1).found]).toEqual([0, 0]);
  });

  it('stay where they are when nothing moves', () => {
    const { before, points } = pairOf(5, 0);
    const pyramid = pyramidOf(before, LEVELS);
    const found = followPoints(pyramid, pyramid, points, 0.01, 0.1);
    expect(found.found.every(one => one === 1)).toBe(true);
    expect(Math.max(...found.xPx.map((x, i) => Math.abs(x - points.xPx[i]!)))).toBeLessThan(1e-6);
  });
});
