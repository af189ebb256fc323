import type { HandMark } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { gapKey, handGaps } from './hand-gaps.ts';

const timesS = Float64Array.from({ length: 300 }, (_, i) => i / 30);
const mark = (frameIndex: number, xPx = 100): HandMark => ({
  frameIndex,
  timeS: frameIndex / 30,
  footPx: { xPx, yPx: 50 },
});

describe('the gaps between hands', () => {
  it('reach from hand to hand, and two seconds beyond the outer ones', () => {
    const gaps = handGaps([mark(100), mark(160)], { fromFrame: 0, toFrame: 299 }, timesS);
    expect(gaps.map(({ fromFrame, toFrame }) => [fromFrame, toFrame])).toEqual([
      [40, 100],
      [100, 160],
      [160, 220],
    ]);
  });

  it('end with the stretch', () => {
    const gaps = handGaps([mark(100)], { fromFrame: 90, toFrame: 100 }, timesS);
    expect(gaps.map(({ fromFrame, toFrame }) => [fromFrame, toFrame])).toEqual([[90, 100]]);
  });

  it('are known by their hands: a moved hand makes two of them new', () => {
    const stretch = { fromFrame: 0, toFrame: 299 };
    const before = handGaps([mark(60), mark(100), mark(160)], stretch, timesS).map(gapKey);
    const after = handGaps([mark(60), mark(100, 101), mark(160)], stretch, timesS).map(gapKey);
    expect(after.map((key, i) => key === before[i])).toEqual([true, false, false, true]);
  });
});
