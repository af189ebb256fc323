import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineThrough } from './line-through.ts';

describe('a line through points', () => {
  // Closed form: points of a line are on it; the sides of a rectangle are half its width off the middle line.
  it('is the middle line of a long rectangle, half its width off', () => {
    const fitted = lineThrough([0, 100, 0, 100], [2, 2, 6, 6], [1, 1, 1, 1])!;
    expect(Math.abs(fitted.line.normalY)).toBeCloseTo(1, 12);
    expect(fitted.line.offsetPx / fitted.line.normalY).toBeCloseTo(-4, 12);
    expect(fitted.rmsPx).toBeCloseTo(2, 12);
  });

  it('goes through the points of a line of any direction', () => {
    const whole = fc.integer({ min: -700, max: 700 });
    fc.assert(
      fc.property(whole, whole, fc.integer({ min: 0, max: 359 }), (x, y, degrees) => {
        const rad = (degrees * Math.PI) / 180;
        const along = [-300, -20, 5, 250];
        const fitted = lineThrough(
          along.map(t => x + t * Math.cos(rad)),
          along.map(t => y + t * Math.sin(rad)),
          [1, 2, 3, 4],
        )!;
        const { normalX, normalY, offsetPx } = fitted.line;
        expect(Math.abs(normalX * x + normalY * y + offsetPx)).toBeLessThan(1e-6);
        expect(Math.abs(normalX * Math.cos(rad) + normalY * Math.sin(rad))).toBeLessThan(1e-6);
      }),
    );
  });

  it('has no answer for a single place', () => {
    expect(lineThrough([3, 3], [4, 4], [1, 1])).toBeNull();
    expect(lineThrough([3, 9], [4, 4], [0, 0])).toBeNull();
  });
});
