import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resamplerOf } from './resampler.ts';

const sine = (hz: number, rateHz: number, count: number) =>
  Float32Array.from({ length: count }, (_, i) => 0.5 * Math.sin((2 * Math.PI * hz * i) / rateHz));

const joined = (parts: readonly Float32Array[]): number[] => parts.flatMap(part => [...part]);

/** Through pieces of these lengths by turns. */
const inPieces = (
  sound: Float32Array,
  fromHz: number,
  toHz: number,
  lengths: readonly number[],
): number[] => {
  const resampler = resamplerOf(fromHz, toHz, 1);
  const told: Float32Array[] = [];
  for (let at = 0, nth = 0; at < sound.length; nth++) {
    const length = lengths[nth % lengths.length]!;
    told.push(resampler.put([sound.subarray(at, at + length)])[0]!);
    at += length;
  }
  told.push(resampler.end()[0]!);
  return joined(told);
};

/** Loudest difference from the sine itself, dB below it, away from both ends. */
const offDb = (told: readonly number[], hz: number, toHz: number): number => {
  const wanted = sine(hz, toHz, told.length);
  const away = Math.ceil(0.01 * toHz);
  let most = 0;
  for (let i = away; i < told.length - away; i++) most = Math.max(most, Math.abs(told[i]! - wanted[i]!));
  return 20 * Math.log10(most / 0.5);
};

describe('sound at another rate', () => {
  // What a sine is at the other rate is known by itself: nothing of the filter is used.
  it.each([
    [44_100, 48_000, 1_000],
    [44_100, 48_000, 12_000],
    [48_000, 44_100, 1_000],
    [48_000, 44_100, 15_000],
    [22_050, 48_000, 440],
    [48_000, 22_050, 5_000],
    [32_000, 48_000, 9_000],
  ])(
    'from %i to %i a second a sine of %i Hz is that sine across every seam, 80 dB down',
    (fromHz, toHz, hz) => {
      const told = inPieces(sine(hz, fromHz, fromHz), fromHz, toHz, [1_024]);
      expect(told.length).toBe(toHz);
      expect(offDb(told, hz, toHz)).toBeLessThan(-80);
    },
  );

  it('is the same bit for bit, however it is cut into pieces', () => {
    const rate = fc.constantFrom(8_000, 22_050, 44_100, 48_000, 96_000);
    fc.assert(
      fc.property(
        rate,
        rate,
        fc.array(fc.integer({ min: 1, max: 900 }), { minLength: 1, maxLength: 6 }),
        (fromHz, toHz, lengths) => {
          const sound = sine(1_234, fromHz, 3_000);
          expect(inPieces(sound, fromHz, toHz, lengths)).toEqual(inPieces(sound, fromHz, toHz, [3_000]));
        },
      ),
      { numRuns: 40 },
    );
  });

  it('has nothing of what the lower rate cannot carry, and is as long as it was', () => {
    const told = inPieces(sine(15_000, 48_000, 48_000), 48_000, 22_050, [960]);
    expect(told.length).toBe(22_050);
    const loudest = Math.max(...told.slice(400, -400).map(Math.abs));
    expect(20 * Math.log10(loudest / 0.5)).toBeLessThan(-80);
  });

  it('keeps the channels apart, and what is steady as loud as it is', () => {
    const resampler = resamplerOf(44_100, 48_000, 2);
    const steady = (value: number) => new Float32Array(4_410).fill(value);
    const first = resampler.put([steady(0.25), steady(-0.5)]);
    const rest = resampler.end();
    for (const [channel, value] of [
      [0, 0.25],
      [1, -0.5],
    ] as const)
      for (const one of joined([first[channel]!, rest[channel]!]).slice(200, 4_600))
        expect(one).toBeCloseTo(value, 4);
  });
});
