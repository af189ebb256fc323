import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import type { Look } from './followed-way.ts';
import {
  crossingsOf,
  firstOver,
  gapOverTime,
  passingAt,
  speedOverTime,
  timeBetween,
} from './way-readings.ts';

/** Straight and steady from a place on, 20 looks a second. */
const steady = (x0M: number, yM: number, vxMps: number, sdM = 0.1, lookCount = 61): Look[] =>
  Array.from({ length: lookCount }, (_, i) => ({
    frameIndex: i,
    timeS: i / 20,
    xM: x0M + (vxMps * i) / 20,
    yM,
    sdM,
    vxMps,
    vyMps: 0,
    sdMps: 0.2,
  }));

describe('what a followed way tells', () => {
  it('tells speed and gap with their ±', () => {
    expect(speedOverTime(steady(0, 0, -6))[7]).toEqual({ timeS: 0.35, value: 6, sd: 0.2 });
    const gap = gapOverTime(steady(0, 0, 6), steady(3, 4, 6, 0.2));
    expect(gap).toHaveLength(61);
    expect(gap[30]!.value).toBeCloseTo(5, 9);
    expect(gap[30]!.sd).toBeCloseTo(Math.hypot(0.1, 0.2), 9);
  });

  it('tells nothing in a hole, before or after', () => {
    const way = steady(0, 0, 6).filter(({ timeS }) => timeS < 1 || timeS > 2);
    expect(passingAt(way, 1.5)).toBeUndefined();
    expect(passingAt(way, 3.2)).toBeUndefined();
    expect(passingAt(way, -0.1)).toBeUndefined();
    expect(passingAt(way, 2.225)!.atM.xM).toBeCloseTo(13.35, 6);
    expect(crossingsOf(way, 9)).toEqual([]);
  });

  it('finds when a line is crossed, as exactly as the place over the speed', () => {
    fc.assert(
      fc.property(
        evenly(-5, 5),
        fc.double({ min: 1, max: 9, noNaN: true }),
        fc.double({ min: 0.1, max: 2.8, noNaN: true }),
        (x0M, vxMps, atS) => {
          const xM = x0M + vxMps * atS;
          const [crossing, ...rest] = crossingsOf(steady(x0M, 1, vxMps), xM);
          expect(rest).toEqual([]);
          expect(crossing!.timeS.value).toBeCloseTo(atS, 6);
          expect(crossing!.timeS.sd).toBeCloseTo(0.1 / vxMps, 6);
          expect(crossing!.towards).toBe('plusX');
        },
      ),
      { seed: 3 },
    );
  });

  it('says who is first over a line and by how much, and when it cannot tell', () => {
    const ways = new Map([
      ['late', steady(-6, 0, 6)],
      ['early', steady(-3, 4, 6)],
      ['never', steady(2, 4, 6)],
    ]);
    const first = firstOver(ways, 1, 'plusX');
    if (first.kind === 'none') throw new Error('somebody crossed');
    expect(first.order.map(({ id }) => id)).toEqual(['early', 'late']);
    expect(first.leadS!.value).toBeCloseTo(0.5, 6);
    expect(first.leadM!.value).toBeCloseTo(3, 6);
    expect(first.isSure).toBe(true);
    const near = firstOver(
      new Map([
        ['a', steady(-3, 0, 6)],
        ['b', steady(-3.1, 4, 6)],
      ]),
      1,
      'plusX',
    );
    expect(near.kind === 'crossed' && near.isSure).toBe(false);
    expect(firstOver(ways, 1, 'minusX')).toEqual({ kind: 'none', reason: 'nobodyCrossed' });
    expect(firstOver(ways, 1, 'plusX', 2)).toEqual({ kind: 'none', reason: 'nobodyCrossed' });
  });

  // A uniform spread of ± h has variance h²/3.
  it('tells the time between two events from their frames', () => {
    const time = timeBetween({ timeS: 1, halfFrameS: 0.02 }, { timeS: 3.4, halfFrameS: 0.02 });
    expect(time.value).toBeCloseTo(2.4, 12);
    expect(time.sd).toBeCloseTo(Math.sqrt((2 * 0.02 ** 2) / 3), 12);
  });
});
