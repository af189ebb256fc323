import { describe, expect, it } from 'vitest';
import { drawnFrame, feetPx } from './drawn-skaters.reference.ts';
import type { FoundPlace } from './follow-one-way.ts';
import { joinedPlaces } from './join-ways.ts';

const { fit, filmFromIce } = drawnFrame(0, 0, []);
const fitAt = () => fit;
const END = 30;

const foundAt = (frameIndex: number, sinceFrames: number, xM: number, yM: number): FoundPlace => ({
  frameIndex,
  timeS: frameIndex / 30,
  atM: { xM, yM },
  footPx: feetPx(filmFromIce, { xM, yM }),
  sinceS: sinceFrames / 30,
  unseenS: 0,
  unlike: 0.1,
});

const handAt = (frameIndex: number, xM: number, yM: number) => ({
  frameIndex,
  timeS: frameIndex / 30,
  footPx: feetPx(filmFromIce, { xM, yM }),
});

/** Found forward as far as `until`, and backward as far as `from`; the forward one `asideM` away. */
const joinedOf = (until: number, from: number, asideM: (k: number) => number) => {
  const marks = [handAt(0, -3, 0), handAt(END, 0, 0)];
  const way = { from: marks[0]!, to: marks[1]! };
  const inner = Array.from({ length: END - 1 }, (_, k) => k + 1);
  const forward = inner.filter(k => k <= until).map(k => foundAt(k, k, -3 + (3 * k) / END, asideM(k)));
  const backward = inner
    .filter(k => k >= from)
    .reverse()
    .map(k => foundAt(k, END - k, -3 + (3 * k) / END, 0));
  return joinedPlaces([{ ...way, forward, backward }], marks, fitAt);
};

const sdOf = (places: ReturnType<typeof joinedOf>, k: number) =>
  Math.sqrt(places.find(({ frameIndex }) => frameIndex === k)!.covM2.xxM2);

describe('places found forward and backward', () => {
  it('are surer together than alone, and surest at the hands', () => {
    const both = joinedOf(END, 0, () => 0);
    expect(both.map(({ by }) => by)).toEqual([
      'hand',
      ...Array.from({ length: END - 1 }, () => 'both'),
      'hand',
    ]);
    expect(sdOf(both, 15)).toBeLessThan(
      sdOf(
        joinedOf(20, 19, () => 0),
        15,
      ),
    );
    expect(sdOf(both, 2)).toBeLessThan(sdOf(both, 15));
  });

  it('are three times as unsure where the ways never met', () => {
    const met = joinedOf(12, 12, () => 0);
    const never = joinedOf(12, 13, () => 0);
    for (const k of [3, 8, 11, 14, 25]) expect(sdOf(never, k) / sdOf(met, k)).toBeCloseTo(3, 6);
  });

  it('are unsure again after the last meeting, for there the forward way may follow somebody else', () => {
    const parted = joinedOf(END, 22, k => (k < 24 ? 0 : 0.4 * (k - 23)));
    const whole = joinedOf(END, 22, () => 0);
    expect(sdOf(parted, 20)).toBeCloseTo(sdOf(whole, 20), 9);
    expect(sdOf(parted, 26)).toBeGreaterThan(sdOf(whole, 26));
    const late = parted.find(({ frameIndex }) => frameIndex === 28)!;
    // The forward way is 2 m away there.
    expect(Math.abs(late.atM.yM)).toBeLessThan(0.1);
  });
});
