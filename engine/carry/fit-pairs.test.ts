import { loadOpenCV } from '@opencvjs/web';
import { describe, expect, it } from 'vitest';
import type { Matrix3 } from '../film/pins.ts';
import { type Random, randomOf } from '../random/random.ts';
import { isNone } from '../units/none.ts';
import { moved } from './drawn-scene.reference.ts';
import { fitPairs } from './fit-pairs.ts';
import { matrixOf } from './scaled-map.ts';

const MOVE: Matrix3 = [1.03, -0.01, 60, 0.012, 1.02, -14, 3e-5, -1e-5, 1];

const pairsOf = (random: Random, count: number, strayShare: number, noisePx: number): Float64Array =>
  Float64Array.from(
    Array.from({ length: count }, () => {
      const [x, y] = [1280 * random.uniform(), 720 * random.uniform()];
      const [u, v] =
        random.uniform() < strayShare ? [1280 * random.uniform(), 720 * random.uniform()] : moved(MOVE, x, y);
      return [x, y, u + noisePx * random.normal(), v + noisePx * random.normal()];
    }).flat(),
  );

const PLACES = [
  [100, 80],
  [1200, 90],
  [640, 360],
  [60, 700],
  [1230, 690],
] as const;

describe('the move of a camera from pairs of points', () => {
  it('is found though four in ten go astray, as near as with OpenCV 4.13 (findHomography, RANSAC)', async () => {
    const cv = await loadOpenCV();
    const random = randomOf(3);
    let [ours, theirs] = [0, 0];
    for (let round = 0; round < 20; round++) {
      const pairs = pairsOf(random, 150, 0.4, 0.2);
      const fit = fitPairs(pairs, random);
      if (isNone(fit)) throw new Error(fit.reason);
      const planes = [0, 2].map(k =>
        cv.matFromArray(
          150,
          2,
          cv.CV_32F,
          Array.from({ length: 300 }, (_, i) => pairs[4 * (i >> 1) + k + (i % 2)]!),
        ),
      );
      const found = cv.findHomography(planes[0]!, planes[1]!, cv.RANSAC, 2.5);
      const their = Array.from(found.data64F) as unknown as Matrix3;
      for (const mat of [...planes, found]) mat.delete();
      const our = matrixOf(fit.map);
      for (const [x, y] of PLACES) {
        const [u, v] = moved(MOVE, x, y);
        const missOf = (m: Matrix3) => Math.hypot(moved(m, x, y)[0] - u, moved(m, x, y)[1] - v);
        ours += missOf(our);
        theirs += missOf(their);
      }
      expect(Math.abs(fit.sdPx - 0.2)).toBeLessThan(0.06);
    }
    expect(ours / 100).toBeLessThan(0.15);
    expect(ours).toBeLessThan(1.1 * theirs);
  });

  it('is the same for the same seed', () => {
    const pairs = pairsOf(randomOf(5), 80, 0.3, 0.3);
    expect(fitPairs(pairs, randomOf(1))).toEqual(fitPairs(pairs, randomOf(1)));
  });

  it('is not made up where there is none', () => {
    const random = randomOf(6);
    const few = fitPairs(pairsOf(random, 12, 0, 0.2), random);
    expect(few).toEqual({ kind: 'none', reason: 'tooFewPoints' });
    const noise = fitPairs(pairsOf(random, 120, 1, 0.2), random);
    expect(noise).toEqual({ kind: 'none', reason: 'noAgreement' });
  });
});
