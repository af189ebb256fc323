import { boardsDistance, rinkOf } from '@icewright/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { onIce } from './on-ice.ts';

describe('a place under the hand', () => {
  const rinks = (['200x85ft', '60x30m', 'halfIce', 'crossIce'] as const).map(preset => rinkOf({ preset }));

  it('stays where it is on the ice, and is the nearest place inside when it is not', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...rinks),
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: -40, max: 40, noNaN: true }),
        (rink, xM, yM) => {
          const at = onIce(rink, { xM, yM });
          expect(boardsDistance(rink.boards, at)).toBeGreaterThanOrEqual(0.48);
          expect(at.xM).toBeGreaterThanOrEqual(rink.area.minXM);
          expect(at.xM).toBeLessThanOrEqual(rink.area.maxXM);
          const again = onIce(rink, at);
          expect(Math.hypot(again.xM - at.xM, again.yM - at.yM)).toBeLessThan(0.03);
        },
      ),
      { seed: 11, numRuns: 400 },
    );
  });
});
