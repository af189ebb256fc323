import { describe, expect, it } from 'vitest';
import { product3 } from '../film/matrix.ts';
import { randomOf } from '../random/random.ts';
import { blendedMaps } from './blend-maps.ts';
import { composed, matrixOf, placeThrough, rescaled, type ScaledMap } from './scaled-map.ts';

const random = randomOf(12);

const someMap = (sd: number): ScaledMap => {
  const coefficients = [1, 0, 0, 0, 1, 0, 0, 0].map(entry => entry + 0.1 * random.normal());
  // A covariance that is not diagonal: Σ of a few outer products.
  const rows = Array.from({ length: 10 }, () => Array.from({ length: 8 }, () => sd * random.normal()));
  const covariance = Array.from({ length: 64 }, (_, i) =>
    rows.reduce((sum, row) => sum + (row[Math.floor(i / 8)]! * row[i % 8]!) / 10, 0),
  );
  const scale = () => ({
    x: 500 + 100 * random.normal(),
    y: 300 + 50 * random.normal(),
    per: 0.004 + 0.002 * random.uniform(),
  });
  return { from: scale(), to: scale(), coefficients, covariance };
};

describe('maps between scaled planes', () => {
  it('one after the other are the product of their matrices', () => {
    for (let i = 0; i < 50; i++) {
      const [first, second] = [someMap(0.01), someMap(0.01)];
      const both = composed(second, first, first.from, second.to);
      const plain = product3(matrixOf(second), matrixOf(first));
      const [x, y] = [500, 300];
      const expected = placeThrough(plain, x, y);
      if (both === null || expected === null) continue;
      const place = placeThrough(matrixOf(both), x, y)!;
      expect(Math.hypot(place[0] - expected[0], place[1] - expected[1])).toBeLessThan(1e-6);
    }
  });

  it('carry their ± as many draws of both would spread', () => {
    const [first, second] = [someMap(0.002), someMap(0.002)];
    const both = composed(second, first, first.from, second.to)!;
    const drawn = Array.from({ length: 4000 }, () => {
      const one = composed(drawOf(second), drawOf(first), first.from, second.to)!;
      return Array.from(one.coefficients);
    });
    for (let i = 0; i < 8; i++) {
      const mean = drawn.reduce((sum, row) => sum + row[i]!, 0) / drawn.length;
      const variance = drawn.reduce((sum, row) => sum + (row[i]! - mean) ** 2, 0) / drawn.length;
      expect(both.covariance[9 * i]! / variance).toBeGreaterThan(0.9);
      expect(both.covariance[9 * i]! / variance).toBeLessThan(1.1);
    }
  });

  it('come back the same from another scale', () => {
    for (let i = 0; i < 20; i++) {
      const map = someMap(0.01);
      const other = someMap(0.01);
      const there = rescaled(map, other.from, other.to);
      const back = there && rescaled(there, map.from, map.to);
      if (!back) continue;
      for (let k = 0; k < 8; k++) expect(back.coefficients[k]).toBeCloseTo(map.coefficients[k]!, 8);
      for (let k = 0; k < 64; k++) expect(back.covariance[k]).toBeCloseTo(map.covariance[k]!, 8);
    }
  });
});

describe('two answers made one', () => {
  it('lie at the middle of equals, with half the variance', () => {
    const first = someMap(0.01);
    const second = { ...first, coefficients: Array.from(first.coefficients, entry => entry + 0.001) };
    const { map, disagree } = blendedMaps(first, second)!;
    for (let i = 0; i < 8; i++) expect(map.coefficients[i]).toBeCloseTo(first.coefficients[i]! + 0.0005, 8);
    if (!disagree)
      for (let i = 0; i < 64; i++) expect(map.covariance[i]).toBeCloseTo(first.covariance[i]! / 2, 10);
  });

  it('lean to the surer one, whichever comes first', () => {
    const sure = someMap(0.001);
    const unsure = {
      ...sure,
      coefficients: Array.from(sure.coefficients, entry => entry + 0.001),
      covariance: Array.from(sure.covariance, entry => 100 * entry),
    };
    for (const blend of [blendedMaps(sure, unsure)!, blendedMaps(unsure, sure)!]) {
      for (let i = 0; i < 8; i++) {
        expect(blend.map.coefficients[i]).toBeCloseTo(sure.coefficients[i]! + 0.001 / 101, 7);
      }
    }
  });

  it('say that they disagree, and raise their ±, when they lie far apart', () => {
    const first = someMap(0.001);
    const far = { ...first, coefficients: Array.from(first.coefficients, entry => entry + 0.05) };
    const { map, disagree } = blendedMaps(first, far)!;
    expect(disagree).toBe(true);
    expect(map.covariance[0]).toBeGreaterThan(first.covariance[0]!);
  });
});

/** A draw of a map by its own covariance, through its Cholesky factor. */
const drawOf = (map: ScaledMap): ScaledMap => {
  const factor = new Float64Array(64);
  for (let i = 0; i < 8; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = map.covariance[8 * i + j]!;
      for (let k = 0; k < j; k++) sum -= factor[8 * i + k]! * factor[8 * j + k]!;
      factor[8 * i + j] = i === j ? Math.sqrt(sum) : sum / factor[9 * j]!;
    }
  }
  const normals = Array.from({ length: 8 }, () => random.normal());
  const coefficients = Array.from(map.coefficients, (entry, i) =>
    normals.reduce((sum, normal, j) => sum + (j <= i ? factor[8 * i + j]! * normal : 0), entry),
  );
  return { ...map, coefficients };
};
