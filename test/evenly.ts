import * as fc from 'fast-check';

const PARTS = 1e6;

/**
 * Numbers spread evenly from `min` to `max`, both among them. `fc.double` draws the stored forms of numbers evenly: of those between −10 and 10
 * nearly all are next to nothing, and a law of places on the ice is then asked at the middle of it alone.
 */
export const evenly = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: PARTS }).map(part => min + (part * (max - min)) / PARTS);
