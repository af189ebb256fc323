import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockText, jumpTarget } from './film-clock.ts';
import { frameIndexOf } from './frame-index.ts';

const index = frameIndexOf(
  Array.from({ length: 108_000 }, (_, i) => i / 30),
  1 / 30,
);

describe('the clock of a film', () => {
  it.each([
    [0, '0:00.00'],
    [65.999, '1:05.99'],
    [3723.4, '1:02:03.40'],
  ])('%d s reads %s', (timeS, text) => expect(clockText(timeS)).toBe(text));

  it.each([
    ['12:34.5', Math.round(754.5 * 30)],
    ['1:00:00', 107_999],
    ['250', 250],
    ['frame 250', 250],
    ['8.5', 255],
    ['9 s', 270],
    ['999999', 107_999],
  ])('%s goes to frame %d', (typed, frame) => expect(jumpTarget(typed, index)).toBe(frame));

  it.each(['', 'soon', '1:2:3:4', '-5', '12:'])('%s is neither a time nor a frame', typed =>
    expect(jumpTarget(typed, index)).toBeUndefined(),
  );

  it('a time it wrote takes one back to the same hundredth', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359_999 }), hundredths => {
        const frame = jumpTarget(clockText(hundredths / 100), index)!;
        expect(Math.abs(frame - (hundredths / 100) * 30)).toBeLessThanOrEqual(1);
      }),
    );
  });
});
