import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isNone } from '../units/none.ts';
import { medianInterval } from './median.ts';

const oneTo = (count: number) => Array.from({ length: count }, (_, i) => i + 1);

describe('the interval of a median', () => {
  // Conover, Practical Nonparametric Statistics (3rd ed.), table A3 (binomial, p = ½): tails of at most .025.
  it.each([
    [6, 1, 6, 0.969],
    [10, 2, 9, 0.979],
    [15, 4, 12, 0.965],
    [20, 6, 15, 0.959],
  ])('of %i values ends at the ranks %i and %i and covers %f', (count, low, high, covers) => {
    const found = medianInterval(oneTo(count));
    expect(found).toMatchObject({ low, high, median: (count + 1) / 2 });
    expect(!isNone(found) && found.confidence).toBeCloseTo(covers, 3);
  });

  it('does not exist for five values, or none', () => {
    expect(medianInterval(oneTo(5))).toMatchObject({ reason: 'tooFew' });
    expect(medianInterval([])).toMatchObject({ reason: 'noData' });
  });

  it('moves and stretches with the values, and asks for no order', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 6, maxLength: 60 }),
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: -50, max: 50 }),
        (values, times, plus) => {
          const one = medianInterval(values);
          const other = medianInterval([...values].reverse().map(each => each * times + plus));
          if (isNone(one) || isNone(other)) throw new Error('there are enough of them');
          expect(other.low).toBe(one.low * times + plus);
          expect(other.high).toBe(one.high * times + plus);
          expect(one.low).toBeLessThanOrEqual(one.median);
          expect(one.high).toBeGreaterThanOrEqual(one.median);
        },
      ),
    );
  });
});
