import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockLabelsOf } from './clock-labels.ts';

describe('clock times over a plan', () => {
  it('stand every five minutes where there is room, every ten where letters are large', () => {
    expect(clockLabelsOf(60, 60, 3).minutes).toEqual([0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60]);
    expect(clockLabelsOf(60, 60, 6).minutes).toEqual([0, 10, 20, 30, 40, 50, 60]);
  });

  it('leave out a mark close to the end of the ice', () => {
    expect(clockLabelsOf(52, 52, 3).minutes).toEqual([0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 52]);
  });

  it('never touch, and say beginning and end wherever both have room', () => {
    const anything = fc.record({
      span: fc.integer({ min: 10, max: 180 }),
      iceShare: fc.double({ min: 0.5, max: 1, noNaN: true }),
      room: fc.double({ min: 0.5, max: 30, noNaN: true }),
    });
    fc.assert(
      fc.property(anything, ({ span, iceShare, room }) => {
        const ice = Math.round(span * iceShare);
        const { minutes } = clockLabelsOf(span, ice, room);
        const edges = minutes.map(minute => {
          const left = minute === 0 ? 0 : minute === ice ? minute - room : minute - room / 2;
          return [left, left + room] as const;
        });
        for (const [index, [left]] of edges.slice(1).entries()) {
          expect(left).toBeGreaterThanOrEqual(edges[index]![1] - 1e-9);
        }
        if (ice >= 2 * room) expect(minutes).toEqual(expect.arrayContaining([0, ice]));
      }),
      { seed: 20261129 },
    );
  });
});
