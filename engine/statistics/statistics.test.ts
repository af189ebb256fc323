/// <reference path="./jstat.d.ts" />
import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { isNone, type None } from '../units/none.ts';
import { garwoodPer60 } from './counts.ts';
import { gammaQuantile, lnGamma, lowerGammaShare, upperGammaShare } from './gamma.ts';
import { cohenKappa } from './kappa.ts';
import { normalBelow, normalQuantile } from './normal.ts';
import { newcombeDifference, wilsonInterval } from './rates.ts';
import { sampleSizePerGroup } from './sample-size.ts';

const tally = fc
  .tuple(fc.integer({ min: 1, max: 400 }), evenly(0, 1))
  .map(([trialCount, share]) => ({ trialCount, successCount: Math.round(share * trialCount) }));
const confidence = evenly(0.5, 0.999);

const answer = <T extends object>(value: T): Exclude<T, None<string>> => {
  if (isNone(value)) throw new Error(value.reason);
  return value as Exclude<T, None<string>>;
};

describe('quantiles', () => {
  // Independent: jstat. It is right to about 1e-8 for small shapes.
  it('agree with an independent library', () => {
    fc.assert(
      fc.property(evenly(-4, 4), z => {
        expect(normalBelow(z)).toBeCloseTo(jStat.normal.cdf(z, 0, 1), 7);
      }),
    );
    for (const p of [0.001, 0.025, 0.2, 0.5, 0.9, 0.975, 0.9995])
      expect(normalQuantile(p)).toBeCloseTo(jStat.normal.inv(p, 0, 1), 6);
    for (const shape of [0.5, 1, 3, 12.5]) {
      for (const x of [0.1, 1, 4, 20])
        expect(lowerGammaShare(shape, x)).toBeCloseTo(jStat.gamma.cdf(x, shape, 1), 8);
      expect(lnGamma(shape)).toBeCloseTo(jStat.gammaln(shape), 9);
    }
  });

  // Printed tables, digits from memory: Φ⁻¹(0.975) = 1.959963984540054, χ²(0.95; 10) = 18.307.
  it('have the printed digits', () => {
    expect(normalQuantile(0.975)).toBeCloseTo(1.959963984540054, 13);
    expect(2 * gammaQuantile(5, 0.95)).toBeCloseTo(18.307, 3);
    expect(normalQuantile(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(normalQuantile(1)).toBe(Number.POSITIVE_INFINITY);
  });

  it('undo their distributions, and shares add to one', () => {
    fc.assert(
      fc.property(evenly(1e-9, 1 - 1e-9), evenly(0.2, 300), (p, shape) => {
        expect(normalBelow(normalQuantile(p))).toBeCloseTo(p, 12);
        expect(lowerGammaShare(shape, gammaQuantile(shape, p))).toBeCloseTo(p, 10);
        expect(lowerGammaShare(shape, shape) + upperGammaShare(shape, shape)).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('rates', () => {
  it('Wilson: both limits satisfy the score equation and hold the rate', () => {
    fc.assert(
      fc.property(tally, confidence, (counts, sure) => {
        const { rateRatio, lowerRatio, upperRatio } = answer(wilsonInterval(counts, sure));
        const z = normalQuantile((1 + sure) / 2);
        for (const limit of [lowerRatio, upperRatio])
          expect((rateRatio - limit) ** 2 * counts.trialCount).toBeCloseTo(z * z * limit * (1 - limit), 8);
        expect(lowerRatio).toBeLessThanOrEqual(rateRatio);
        expect(upperRatio).toBeGreaterThanOrEqual(rateRatio);
      }),
    );
  });

  it('done and missed mirror each other', () => {
    fc.assert(
      fc.property(tally, tally, confidence, (one, two, sure) => {
        const missed = { trialCount: one.trialCount, successCount: one.trialCount - one.successCount };
        expect(answer(wilsonInterval(missed, sure)).lowerRatio).toBeCloseTo(
          1 - answer(wilsonInterval(one, sure)).upperRatio,
          10,
        );
        const forth = answer(newcombeDifference(one, two, sure));
        const back = answer(newcombeDifference(two, one, sure));
        expect(back.lowerRatio).toBeCloseTo(-forth.upperRatio, 10);
        expect(forth.lowerRatio).toBeGreaterThanOrEqual(-1);
        expect(forth.upperRatio).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('without trials, time or data there is no answer, with its reason', () => {
    const none = { successCount: 0, trialCount: 0 };
    expect(wilsonInterval(none)).toEqual({ kind: 'none', reason: 'noTrials' });
    expect(newcombeDifference(none, { successCount: 1, trialCount: 2 })).toEqual({
      kind: 'none',
      reason: 'noTrials',
    });
    expect(garwoodPer60(3, 0)).toEqual({ kind: 'none', reason: 'noTime' });
    expect(
      cohenKappa([
        [0, 0],
        [0, 0],
      ]),
    ).toEqual({ kind: 'none', reason: 'noData' });
    expect(
      cohenKappa([
        [9, 0],
        [0, 0],
      ]),
    ).toEqual({ kind: 'none', reason: 'noVariation' });
    expect(sampleSizePerGroup({ rate1: 0.4, rate2: 0.4, power: 0.8, alphaTwoSided: 0.05 })).toEqual({
      kind: 'none',
      reason: 'sameRate',
    });
  });
});

describe('counts', () => {
  it('Garwood: each limit leaves its tail of the Poisson distribution', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60 }), evenly(5, 500), confidence, (events, minutes, sure) => {
        const { lowerPer60, upperPer60 } = answer(garwoodPer60(events, minutes, sure));
        const tail = (1 - sure) / 2;
        const below = (mean: number, most: number): number => {
          let term = Math.exp(-mean);
          let sum = most < 0 ? 0 : term;
          for (let k = 1; k <= most; k++) sum += term *= mean / k;
          return sum;
        };
        const scale = minutes / 60;
        expect(below(upperPer60 * scale, events)).toBeCloseTo(tail, 9);
        if (events > 0) expect(1 - below(lowerPer60 * scale, events - 1)).toBeCloseTo(tail, 9);
        else expect(lowerPer60).toBe(0);
      }),
    );
  });
});

describe('agreement', () => {
  it('is the same with the taggers swapped, and with every count doubled', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 9, maxLength: 9 }), counts => {
        const table = [counts.slice(0, 3), counts.slice(3, 6), counts.slice(6, 9)];
        const found = cohenKappa(table);
        fc.pre(!isNone(found));
        const swapped = answer(cohenKappa([0, 1, 2].map(i => table.map(row => row[i]!))));
        const doubled = answer(cohenKappa(table.map(row => row.map(count => 2 * count))));
        const { kappa, standardError } = answer(found);
        expect(swapped.kappa).toBeCloseTo(kappa, 12);
        expect(doubled.kappa).toBeCloseTo(kappa, 12);
        if (standardError !== null && standardError > 1e-6)
          expect(doubled.standardError!).toBeCloseTo(standardError / Math.SQRT2, 6);
      }),
    );
  });

  it('refuses a table that is not square', () => {
    expect(() => cohenKappa([[1, 2]])).toThrow(/square/);
  });
});

describe('chances needed', () => {
  // Quality note of the project: to see 50 → 70 % with 80 % power takes about 94 chances a side.
  it('fall with the difference and rise with the power', () => {
    const needed = (rate2: number, power: number): number =>
      sampleSizePerGroup({ rate1: 0.5, rate2, power, alphaTwoSided: 0.05 }) as number;
    expect(Math.abs(needed(0.7, 0.8) - 93.5)).toBeLessThan(1);
    expect(needed(0.8, 0.8)).toBeLessThan(needed(0.7, 0.8));
    expect(needed(0.7, 0.9)).toBeGreaterThan(needed(0.7, 0.8));
  });
});
