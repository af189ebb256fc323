import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gatesOf, gatesSaid } from './gate-words.ts';

describe('gate times as they are typed', () => {
  it('are read however a coach writes a gate', () => {
    for (const typed of [
      '5 1.45, 10 2.25, 20 3.62',
      '5m 1.45s; 10m 2.25s; 20m 3.62s',
      '5: 1.45,10=2.25, 20 m 3.62 s,',
    ])
      expect(gatesOf(typed)).toEqual({
        kind: 'ok',
        gates: [
          { distanceM: 5, timeS: 1.45 },
          { distanceM: 10, timeS: 2.25 },
          { distanceM: 20, timeS: 3.62 },
        ],
      });
    expect(gatesOf('  ')).toEqual({ kind: 'ok', gates: undefined });
  });

  it.each([
    ['5 1.4, ten 2, 20 3', /“ten 2” is not read/],
    ['5 1.4, 10 2', /Three different distances/],
    ['5 1.4, 5 1.5, 5 1.6', /Three different distances/],
    ['5 1.4, 10 2, 300 9', /0.5 to 80 m/],
    ['5 1.4, 10 2, 20 99', /0.1 to 40 s/],
  ])('refuse %s in one sentence', (typed, said) => {
    expect(gatesOf(typed)).toMatchObject({ kind: 'refused', said: expect.stringMatching(said) });
  });

  it('are written as they would be typed', () => {
    const gate = fc.record({
      distanceM: fc.integer({ min: 5, max: 800 }).map(tenths => tenths / 10),
      timeS: fc.integer({ min: 10, max: 4000 }).map(hundredths => hundredths / 100),
    });
    fc.assert(
      fc.property(
        fc.uniqueArray(gate, { minLength: 3, maxLength: 20, selector: one => one.distanceM }),
        gates => {
          expect(gatesOf(gatesSaid(gates))).toEqual({ kind: 'ok', gates });
        },
      ),
    );
  });
});
