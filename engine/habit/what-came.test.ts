import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { whatCameOf } from './what-came.ts';

type Step = 'lost' | 'regained' | 'whistle';
const seen = (...steps: readonly (readonly [Step, number])[]) =>
  steps.map(([step, timeS]) => ({ step, timeS }));

describe('what came of a moment', () => {
  it('times the first that follows, and leaves out what came before', () => {
    const found = whatCameOf(
      [
        seen(['lost', 10], ['regained', 14], ['regained', 20]),
        seen(['regained', 5], ['lost', 8]),
        seen(['lost', 3], ['whistle', 4], ['regained', 9]),
        seen(['whistle', 1]),
      ],
      'lost',
      'regained',
    );
    expect(found).toMatchObject({ startedCount: 3, cameCount: 2, secondsS: [4, 6], median: null });
    // Wilson 1927 for 2 of 3, by the formula: 0.2077 to 0.9385.
    expect(found.share!.lowerRatio).toBeCloseTo(0.2077, 4);
    expect(found.share!.upperRatio).toBeCloseTo(0.9385, 4);
  });

  it('knows nothing of moments in which it never began', () => {
    expect(whatCameOf([seen(['whistle', 1]), []], 'lost', 'regained')).toEqual({
      startedCount: 0,
      cameCount: 0,
      share: null,
      secondsS: [],
      median: null,
    });
  });

  it('does not hang on the order of the steps, nor on where the clock of the film begins', () => {
    const step = fc.record({
      step: fc.constantFrom<Step>('lost', 'regained', 'whistle'),
      timeS: fc.integer({ min: 0, max: 60 }),
    });
    fc.assert(
      fc.property(fc.array(fc.array(step, { maxLength: 6 }), { maxLength: 12 }), moments => {
        const one = whatCameOf(moments, 'lost', 'regained');
        const other = whatCameOf(
          moments.map(steps => [...steps].reverse().map(each => ({ ...each, timeS: each.timeS + 1000 }))),
          'lost',
          'regained',
        );
        expect(other).toEqual(one);
        expect(one.cameCount).toBeLessThanOrEqual(one.startedCount);
        expect(one.secondsS.every(seconds => seconds > 0)).toBe(true);
      }),
    );
  });
});
