import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { missingOf, needlessOf, stretchesAround } from './copy-window.ts';

const moments = fc.array(fc.nat(5000), { maxLength: 60 });
const wish = fc.record({
  before: fc.nat(200),
  after: fc.nat(200),
  most: fc.integer({ min: 1, max: 300 }),
  last: fc.constant(5000),
});

describe('the stretches round moments', () => {
  it('hold just the frames that lie near one, each once, in pieces that are not too long', () => {
    fc.assert(
      fc.property(moments, wish, (at, of) => {
        const stretches = stretchesAround(at, of);
        const frames = stretches.flatMap(({ fromFrame, toFrame }) =>
          Array.from({ length: toFrame - fromFrame + 1 }, (_, i) => fromFrame + i),
        );
        const plain = new Set<number>();
        for (const one of at)
          for (let i = Math.max(0, one - of.before); i <= Math.min(of.last, one + of.after); i++)
            plain.add(i);
        expect(frames).toEqual([...plain].sort((a, b) => a - b));
        for (const { fromFrame, toFrame } of stretches) expect(toFrame - fromFrame).toBeLessThan(of.most);
      }),
    );
  });

  it('are all there once they are made, and none of them is needless', () => {
    fc.assert(
      fc.property(moments, wish, (at, of) => {
        const stretches = stretchesAround(at, of);
        expect(missingOf(stretches, stretches)).toEqual([]);
        expect(needlessOf(stretches, stretches)).toEqual([]);
        expect(needlessOf(stretches, [])).toEqual(stretches);
        expect(missingOf(stretches, [])).toEqual(stretches);
      }),
    );
  });
});
