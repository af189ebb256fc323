import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockText, isPastEnd, jumpTarget } from './film-clock.ts';

describe('the clock of a film', () => {
  it.each([
    [0, '0:00.00'],
    [65.999, '1:06.00'],
    [3599.996, '1:00:00.00'],
    [3723.4, '1:02:03.40'],
  ])('%d s reads %s', (timeS, text) => expect(clockText(timeS)).toBe(text));

  it.each([
    [4.9999, '0:05.0'],
    // The last tick before an event of a film of 29.97 pictures a second.
    [(150 * 1001) / 30_000, '0:05.0'],
    [8.67, '0:08.7'],
    [0.05, '0:00.1'],
    [59.94, '0:59.9'],
    [59.96, '1:00.0'],
    [3599.96, '1:00:00.0'],
  ])('%d s reads %s to the tenth, carried where it must', (timeS, text) =>
    expect(clockText(timeS, 1)).toBe(text),
  );

  it('never stands more than half a tenth from the time', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20_000, noNaN: true }), timeS => {
        const [seconds, ...above] = clockText(timeS, 1).split(':').map(Number).reverse();
        const read = above.reduce((sum, part, i) => sum + part * 60 ** (i + 1), seconds!);
        expect(Math.abs(read - timeS)).toBeLessThanOrEqual(0.05 + 1e-6);
      }),
    );
  });

  it.each([
    [59.96, '0:59'],
    [60, '1:00'],
  ])('whole seconds are those that have passed: %d s is %s', (timeS, text) =>
    expect(clockText(timeS, 0)).toBe(text),
  );

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

  it.each([
    ['99:00', true],
    ['0:20.0', false],
    ['20.1', true],
    ['599', false],
    ['600', true],
  ])('%s lies past the end of 600 frames in 20 s: %s', (typed, isPast) =>
    expect(isPastEnd(jumpTarget(typed)!, { endS: 20, frameCount: 600 })).toBe(isPast),
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
