import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holdOnTheWay, holdsOf } from './film-holds.ts';

describe('where playback stands', () => {
  it('finds the same frame as walking there one by one, both ways', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 0, max: 60 }), { maxLength: 6 }),
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: 1, max: 9 }),
        fc.constantFrom(1, -1, 0.5, -2),
        (held, from, steps, rate) => {
          const holds = new Map(held.map(frame => [frame, 2]));
          const way = Math.sign(rate);
          const to = from + way * steps;
          let walked: number | undefined;
          for (let at = from + way; walked === undefined; at += way) {
            if (holds.has(at)) walked = at;
            if (at === to) break;
          }
          expect(holdOnTheWay(holds, from, to, rate, undefined)).toBe(walked);
        },
      ),
    );
  });

  it('stands at the first frame of a loop each time round', () => {
    const holds = new Map([[10, 3]]);
    const loop = { fromFrame: 10, toFrame: 40 };
    expect(holdOnTheWay(holds, 40, 10, 1, loop)).toBe(10);
    // A busy machine shows the first picture after the turn a little late.
    expect(holdOnTheWay(holds, 41, 12, 1, loop)).toBe(10);
    expect(holdOnTheWay(holds, 12, 13, 1, loop)).toBeUndefined();
  });

  it('takes those of this film that say how long', () => {
    const one = (film: string, frameIndex: number, holdS?: number) => ({ film, frameIndex, holdS }) as never;
    const freezes = { a: one('f', 5, 2), b: one('f', 9), c: one('g', 7, 2), d: one('f', 11, 0) };
    expect([...holdsOf(freezes as never, 'f')]).toEqual([[5, 2]]);
  });
});
