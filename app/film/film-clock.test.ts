import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockText, jumpTarget } from './film-clock.ts';

describe('the clock of a film', () => {
  it.each([
    [0, '0:00.00'],
    [65.999, '1:05.99'],
    [3723.4, '1:02:03.40'],
  ])('%d s reads %s', (timeS, text) => expect(clockText(timeS)).toBe(text));

  it.each([
    ['12:34.5', { timeS: 754.5 }],
    ['1:00:00', { timeS: 3600 }],
    ['250', { frameIndex: 250 }],
    ['frame 250', { frameIndex: 250 }],
    ['8.5', { timeS: 8.5 }],
    ['9 s', { timeS: 9 }],
    ['999999', { frameIndex: 999_999 }],
  ])('%s goes to %o', (typed, target) => expect(jumpTarget(typed)).toEqual(target));

  it.each(['', 'soon', '1:2:3:4', '-5', '12:'])('%s is neither a time nor a frame', typed =>
    expect(jumpTarget(typed)).toBeUndefined(),
  );

  it('a time it wrote takes one back to the same hundredth', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359_999 }), hundredths => {
        expect(jumpTarget(clockText(hundredths / 100))).toEqual({
          timeS: expect.closeTo(hundredths / 100, 6),
        });
      }),
    );
  });
});
