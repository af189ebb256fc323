import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reachOf } from './finger-room.ts';

const place = fc.record({
  xM: fc.double({ min: -30, max: 30, noNaN: true }),
  yM: fc.double({ min: -13, max: 13, noNaN: true }),
});

describe('how far a press still takes a thing', () => {
  it('is a finger wide where nothing else is near', () => {
    expect(reachOf({ xM: 0, yM: 0 }, 0.7, [{ xM: 8, yM: 0 }])).toBeCloseTo(1.64);
  });

  it('takes no ground from a neighbour, beyond what a mouse needs', () => {
    fc.assert(
      fc.property(place, place, (a, b) => {
        const awayM = Math.hypot(a.xM - b.xM, a.yM - b.yM);
        fc.pre(awayM > 1.4);
        const both = reachOf(a, 0.7, [a, b]) + reachOf(b, 0.7, [a, b]);
        expect(both).toBeLessThanOrEqual(awayM + 1e-9);
        expect(both).toBeGreaterThanOrEqual(1.4);
      }),
    );
  });
});
