import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { wrapRad } from './angles.ts';
import { feetOf, metresOf } from './feet.ts';
import { isNone, noneBecause } from './none.ts';

describe('units', () => {
  // 1 ft = 0.3048 m exactly (international yard and pound agreement, 1959).
  it('feet and inches to metres and back', () => {
    expect(metresOf(200)).toBeCloseTo(60.96, 12);
    expect(metresOf(5, 7)).toBeCloseTo(1.7018, 12);
    fc.assert(
      fc.property(evenly(0, 300), feet => {
        expect(feetOf(metresOf(feet))).toBeCloseTo(feet, 10);
      }),
    );
  });

  it('an angle wraps into (−π, π] and keeps its direction', () => {
    fc.assert(
      fc.property(evenly(-100, 100), angleRad => {
        const wrapped = wrapRad(angleRad);
        expect(wrapped).toBeGreaterThan(-Math.PI);
        expect(wrapped).toBeLessThanOrEqual(Math.PI);
        expect(Math.cos(wrapped - angleRad)).toBeCloseTo(1, 9);
      }),
    );
    expect(wrapRad(-Math.PI)).toBe(Math.PI);
  });

  it('no answer is told from an answer', () => {
    expect(isNone(noneBecause('why'))).toBe(true);
    expect(isNone({ value: 1 })).toBe(false);
    expect(isNone(3)).toBe(false);
  });
});
