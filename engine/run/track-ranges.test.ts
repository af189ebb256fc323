import { describe, expect, it } from 'vitest';
import { randomOf } from '../random/random.ts';
import { named } from './drill-shorthand.reference.ts';
import type { Track } from './run-result.ts';
import { leastApart2, mostClosing2, rangesOf, widened } from './track-ranges.ts';

const random = randomOf(3);
const column = (count: number): Float64Array =>
  Float64Array.from({ length: count }, () => 20 * random.uniform() - 10);
const anyTrack = (count: number): Track => ({
  spot: named('F1'),
  xM: column(count),
  yM: column(count),
  xMps: column(count),
  yMps: column(count),
  facingRad: new Float64Array(count),
  actIndex: new Int16Array(count),
  acts: [],
  distanceM: 1,
});

describe('ranges of tracks', () => {
  it('are widened to exactly those of the blocks around', () => {
    const { numbers, blockCount } = rangesOf(anyTrack(230), 12, 3);
    for (const by of [0, 1, 2, 3, 4, 7, 30]) {
      const wide = widened({ numbers, blockCount }, by).numbers;
      for (let block = 0; block < blockCount; block++) {
        const around = Array.from({ length: blockCount }, (_, i) => i).filter(i => Math.abs(i - block) <= by);
        for (let k = 0; k < 8; k++) {
          const values = around.map(i => numbers[8 * i + k]!);
          expect(wide[8 * block + k]).toBe(k % 2 === 0 ? Math.min(...values) : Math.max(...values));
        }
      }
    }
  });

  it('never tell a pair apart that is nearer, nor slower than it is: every two samples looked at', () => {
    for (const count of [1, 5, 12, 13, 60, 97]) {
      const a = anyTrack(count);
      const b = anyTrack(count);
      for (const wider of [0, 1, 3]) {
        const rangesA = rangesOf(a, 12, 3);
        const rangesB = widened(rangesOf(b, 12, 3), wider);
        expect(rangesA.blockCount).toBe(Math.ceil(count / 12));
        for (let i = 0; i < count; i += 3) {
          const block = Math.floor(i / 12);
          for (let k = 0; k < count; k += 3) {
            if (Math.abs(Math.floor(k / 12) - block) > wider) continue;
            const apart2 = (a.xM[i]! - b.xM[k]!) ** 2 + (a.yM[i]! - b.yM[k]!) ** 2;
            const closing2 = (a.xMps[i]! - b.xMps[k]!) ** 2 + (a.yMps[i]! - b.yMps[k]!) ** 2;
            expect(leastApart2(rangesA, rangesB, block)).toBeLessThanOrEqual(apart2);
            expect(mostClosing2(rangesA, rangesB, block)).toBeGreaterThanOrEqual(closing2);
          }
        }
      }
    }
  });

  it('of single samples are exact', () => {
    const a = anyTrack(1);
    const b = anyTrack(1);
    const apart2 = (a.xM[0]! - b.xM[0]!) ** 2 + (a.yM[0]! - b.yM[0]!) ** 2;
    expect(leastApart2(rangesOf(a, 12, 3), rangesOf(b, 12, 3), 0)).toBeCloseTo(apart2, 12);
  });
});
