import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clockAfter,
  clockSaid,
  daySaid,
  findClock,
  hundredthsOf,
  inUnitsOf,
  lengthSaid,
  numberSaid,
  pointsSaid,
} from './figures.ts';

describe('figures as they are written', () => {
  it('a typed clock time is found in either face, and what is none is not', () => {
    expect(findClock('19:40')).toBe('19:40');
    expect(findClock('7:40 pm')).toBe('19:40');
    expect(findClock('12.05 am')).toBe('00:05');
    expect(findClock('9')).toBe('09:00');
    for (const none of ['', '24:00', '7:60', '13 pm', 'noon']) expect(findClock(none)).toBeNull();
  });

  it('every clock time survives being shown and typed again, in both faces', () => {
    fc.assert(
      fc.property(fc.nat(1439), minute => {
        const clock = clockAfter('00:00', minute);
        expect(findClock(clockSaid(clock, '12'))).toBe(clock);
        expect(findClock(clockSaid(clock, '24'))).toBe(clock);
      }),
    );
  });

  it('shares of a whole sum to a hundred, and the first is what it is called elsewhere', () => {
    // By hand: 13 and 14 hundredths each round up of halves.
    expect(hundredthsOf([173, 27])).toEqual([87, 13]);
    expect(hundredthsOf([4, 905, 95])).toEqual([0, 90, 10]);
    expect(hundredthsOf([0, 0])).toEqual([0, 0]);
    fc.assert(
      fc.property(fc.array(fc.nat(1000), { minLength: 1, maxLength: 4 }), counts => {
        const sum = counts.reduce((all, one) => all + one, 0);
        fc.pre(sum > 0 && counts.length > 1);
        const shares = hundredthsOf(counts);
        expect(shares.reduce((all, one) => all + one, 0)).toBe(100);
        expect(shares[0]).toBe(Math.round((100 * counts[0]!) / sum));
        for (const [i, share] of shares.entries())
          expect(Math.abs(share - (100 * counts[i]!) / sum)).toBeLessThan(1.5);
      }),
    );
  });

  it('lengths in feet are those of the international foot', () => {
    expect(lengthSaid(0.3048, 'feet')).toBe('1\u2009ft');
    expect(lengthSaid(60.96, 'feet')).toBe('200\u2009ft');
    expect(lengthSaid(5.28, 'metres')).toBe('5.3\u2009m');
    expect(inUnitsOf('feet', 3.048, 'm/s')).toBe('10 ft/s');
    expect(inUnitsOf('metres', 3.048, 'm/s')).toBe('3.0 m/s');
    expect(inUnitsOf('feet', 3.048, 's')).toBe('3.0 s');
  });

  it('a minus is a minus, and nothing is minus nothing', () => {
    expect(numberSaid(-1.25, 1)).toBe('\u22121.3');
    expect(numberSaid(-0.01, 1)).toBe('0.0');
    expect(pointsSaid(-0.19)).toBe('\u221219');
    expect(pointsSaid(0.23)).toBe('+23');
  });

  it('a day is the same day wherever it is read', () => {
    expect(daySaid('2026-11-12')).toBe('Thu 12 Nov');
  });
});
