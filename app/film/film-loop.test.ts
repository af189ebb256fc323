import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nextLoop, turnOf } from './film-loop.ts';
import { fasterRate, isHeardAt, slowerRate } from './play-rates.ts';

describe('a loop', () => {
  it('is set by two presses in either order, and let go by the third', () => {
    expect(nextLoop(undefined, 40)).toEqual({ fromFrame: 40 });
    expect(nextLoop({ fromFrame: 40 }, 90)).toEqual({ fromFrame: 40, toFrame: 90 });
    expect(nextLoop({ fromFrame: 40 }, 10)).toEqual({ fromFrame: 10, toFrame: 40 });
    expect(nextLoop({ fromFrame: 10, toFrame: 40 }, 20)).toBeUndefined();
    expect(nextLoop({ fromFrame: 40 }, 40)).toBeUndefined();
  });

  it('never lets a walk leave it, whichever way and however many frames a picture brings', () => {
    const walk = fc.array(fc.tuple(fc.constantFrom(1, -1), fc.integer({ min: 1, max: 9 })), {
      maxLength: 200,
    });
    fc.assert(
      fc.property(fc.nat(500), fc.integer({ min: 1, max: 300 }), walk, (fromFrame, length, steps) => {
        const loop = { fromFrame, toFrame: fromFrame + length };
        let at = fromFrame;
        for (const [direction, count] of steps) {
          at += direction * count;
          at = turnOf(loop, at, direction) ?? at;
          expect(at).toBeGreaterThanOrEqual(loop.fromFrame);
          expect(at).toBeLessThanOrEqual(loop.toFrame);
        }
      }),
    );
  });

  it('turns nothing while its end is not set', () => {
    expect(turnOf({ fromFrame: 5 }, 900, 1)).toBeUndefined();
  });
});

describe('speeds', () => {
  it('go up and down one by one and stay at the last', () => {
    const up = [1, 2, 3, 4].reduce<number[]>(all => [...all, fasterRate(all.at(-1), 1)], []);
    expect(up).toEqual([1, 2, 4, 4]);
    const down = [1, 2, 3].reduce<number[]>(all => [...all, slowerRate(all.at(-1), -1)], []);
    expect(down).toEqual([-0.5, -0.25, -0.25]);
    expect(fasterRate(-2, 1)).toBe(1);
    expect(fasterRate(0.25, 1)).toBe(0.5);
  });

  it('are heard where the pitch can be kept', () => {
    expect([0.25, 0.5, 1, 2, 4, -1].map(isHeardAt)).toEqual([false, true, true, true, false, false]);
  });
});
