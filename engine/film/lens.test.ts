import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { shownOf, straightOf } from './lens.ts';

describe('a lens of one term', () => {
  it('is undone, anywhere in the picture', () => {
    fc.assert(
      fc.property(evenly(-0.14, 0.14), evenly(0, 720), evenly(0, 1280), (k1, xPx, yPx) => {
        const lens = { k1, widthPx: 720, heightPx: 1280 };
        const back = shownOf(lens, straightOf(lens, { xPx, yPx }));
        expect(Math.hypot(back.xPx - xPx, back.yPx - yPx)).toBeLessThan(1e-6);
      }),
    );
  });

  it('moves the corner by its term of the half diagonal, the middle not at all', () => {
    const lens = { k1: -0.02, widthPx: 600, heightPx: 800 };
    // Half diagonal 500 px, so the corner is pulled in by 10 px, along (−0.6, −0.8).
    expect(shownOf(lens, { xPx: 600, yPx: 800 })).toEqual({ xPx: 594, yPx: 792 });
    expect(shownOf(lens, { xPx: 300, yPx: 400 })).toEqual({ xPx: 300, yPx: 400 });
    expect(straightOf({ ...lens, k1: 0 }, { xPx: 17, yPx: 3 })).toEqual({ xPx: 17, yPx: 3 });
  });
});
