import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frameIndexOf, timeOfFrame } from '../frame-index.ts';
import { stretchOf } from './play-moments.ts';

const index = frameIndexOf(
  Array.from({ length: 300 }, (_, i) => i / 30),
  1 / 30,
);

describe('the seconds of a moment', () => {
  it('are its own, to the frame', () => {
    expect(stretchOf({ filmTimeS: 5, fromS: 3, toS: 6.5 }, index)).toEqual({ first: 90, last: 195 });
  });

  it('lie in the film, begin before they end, and hold the moment unless it says otherwise', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 299 }), frame => {
        const { first, last } = stretchOf({ filmTimeS: timeOfFrame(index, frame) }, index);
        expect(first).toBeGreaterThanOrEqual(0);
        expect(last).toBeLessThanOrEqual(299);
        expect(first).toBeLessThanOrEqual(frame);
        expect(last).toBeGreaterThanOrEqual(frame);
      }),
    );
    expect(stretchOf({ filmTimeS: 5, fromS: 7, toS: 6 }, index)).toEqual({ first: 210, last: 210 });
  });
});
