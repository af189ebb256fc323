import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactLn } from './exact-ln.ts';
import { randomOf, randomPartOf } from './random.ts';

const drawsOf = (seed: number, count: number): number[] => {
  const random = randomOf(seed);
  return Array.from({ length: count }, () => random.uniform());
};

describe('seeded random numbers', () => {
  it('are the same for the same seed and differ for another', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), seed => {
        expect(drawsOf(seed, 5)).toEqual(drawsOf(seed, 5));
        expect(drawsOf(seed, 5)).not.toEqual(drawsOf(seed === 0 ? 1 : -seed / 2 + 1e-3, 5));
      }),
    );
  });

  it('are these on every machine', () => {
    const random = randomOf(4680);
    expect([random.uniform(), random.normal(), random.normal(), random.below(100)]).toMatchInlineSnapshot(`
      [
        0.5206077468171109,
        -0.858671954933853,
        2.594015080023547,
        96,
      ]
    `);
  });

  it('are uniform: mean, spread and no lag', () => {
    const draws = drawsOf(1, 100_000);
    const mean = draws.reduce((sum, u) => sum + u, 0) / draws.length;
    const lag = draws.slice(1).reduce((sum, u, i) => sum + (u - 0.5) * (draws[i]! - 0.5), 0) / draws.length;
    const square = draws.reduce((sum, u) => sum + (u - 0.5) ** 2, 0) / draws.length;
    // Five standard errors of each.
    expect(Math.abs(mean - 0.5)).toBeLessThan(5 * Math.sqrt(1 / 12 / 1e5));
    expect(Math.abs(square - 1 / 12)).toBeLessThan(5 * Math.sqrt(1 / 180 / 1e5));
    expect(Math.abs(lag)).toBeLessThan(5 / 12 / Math.sqrt(1e5));
    for (let bin = 0; bin < 20; bin++) {
      const share = draws.filter(u => Math.floor(u * 20) === bin).length / draws.length;
      expect(Math.abs(share - 0.05)).toBeLessThan(5 * Math.sqrt((0.05 * 0.95) / 1e5));
    }
  });

  it('normal deviates have mean 0, variance 1, 95 % within 1.96', () => {
    const random = randomOf(2);
    const draws = Array.from({ length: 100_000 }, () => random.normal());
    const mean = draws.reduce((sum, z) => sum + z, 0) / draws.length;
    const variance = draws.reduce((sum, z) => sum + z * z, 0) / draws.length;
    const inside = draws.filter(z => Math.abs(z) < 1.959964).length / draws.length;
    expect(Math.abs(mean)).toBeLessThan(5 / Math.sqrt(1e5));
    expect(Math.abs(variance - 1)).toBeLessThan(5 * Math.sqrt(2 / 1e5));
    expect(Math.abs(inside - 0.95)).toBeLessThan(5 * Math.sqrt((0.95 * 0.05) / 1e5));
  });

  it('parts of one seed are streams of their own', () => {
    const first = Array.from({ length: 200 }, (_, i) => randomPartOf(9, i).uniform());
    expect(new Set(first).size).toBe(200);
    const mean = first.reduce((sum, u) => sum + u, 0) / 200;
    expect(Math.abs(mean - 0.5)).toBeLessThan(5 * Math.sqrt(1 / 12 / 200));
  });

  it('whole numbers below a count stay below it', () => {
    const random = randomOf(3);
    const seen = new Set(Array.from({ length: 500 }, () => random.below(6)));
    expect([...seen].sort()).toEqual([0, 1, 2, 3, 4, 5]);
  });
});

describe('logarithm without the machine’s own', () => {
  it('is Math.log to the last digits', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-300, max: 1e300, noNaN: true }), value => {
        const exact = Math.log(value);
        expect(Math.abs(exactLn(value) - exact)).toBeLessThanOrEqual(4e-16 * Math.max(1, Math.abs(exact)));
      }),
    );
  });
});
