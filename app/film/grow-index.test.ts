import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frameIndexOf } from './frame-index.ts';
import { GrowingIndex } from './grow-index.ts';

/** Times in the order a decoder gets them: groups of pictures, each with its last picture first. */
const decodeOrder = fc
  .array(fc.integer({ min: 1, max: 16 }), { minLength: 1, maxLength: 400 })
  .map(groups => {
    const order: number[] = [];
    let at = 0;
    for (const size of groups) {
      order.push(at + size - 1);
      for (let i = 0; i < size - 1; i++) order.push(at + i);
      at += size;
    }
    return order.map(frame => (frame * 1001) / 60_000);
  });

describe('an index that grows', () => {
  it('ends as the index that is made of all at once, and never takes back a number', () => {
    fc.assert(
      fc.property(decodeOrder, timesS => {
        const growing = new GrowingIndex(60_000);
        const seen: Float64Array[] = [];
        timesS.forEach((timeS, i) => {
          growing.add(timeS, 1001 / 60_000);
          if (i % 97 === 0) seen.push(growing.now.timesS);
        });
        growing.finish();
        const whole = frameIndexOf(timesS, 1001 / 60_000, 60_000);
        expect(growing.now).toEqual(whole);
        for (const part of seen) expect(part).toEqual(whole.timesS.subarray(0, part.length));
      }),
      { numRuns: 60 },
    );
  });

  it('puts in order what is out of order beyond what codecs may do', () => {
    const growing = new GrowingIndex(1000);
    for (let i = 0; i < 1000; i++) growing.add(i === 900 ? 0.0005 : i / 1000, 0.001);
    growing.finish();
    const { timesS } = growing.now;
    expect([...timesS]).toEqual([...timesS].sort((a, b) => a - b));
    expect(timesS[1]).toBe(0.0005);
  });
});
