import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { randomPartOf } from '../random/random.ts';
import { goodPointsOf } from './asked-share.ts';
import { type TuneAnswer, type TuneSetting, tuneSteps } from './tune-steps.ts';

/** Tunes a toy whose rate is known: rep i succeeds when its own luck is below the rate, and comes to the question by another luck. */
const tuneToy = (
  rateAt: (value: number) => number,
  setting: TuneSetting,
  seed = 1,
  askedAt: (value: number) => number = () => 1,
): TuneAnswer => {
  const luck = Array.from({ length: 2000 }, (_, rep) => randomPartOf(seed, rep).uniform());
  const asks = Array.from({ length: 2000 }, (_, rep) => randomPartOf(seed + 7e6, rep).uniform());
  const steps = tuneSteps(setting);
  let step = steps.next();
  while (!step.done) {
    const { values, repCount } = step.value;
    step = steps.next(
      values.map(value => {
        const asked = luck.slice(0, repCount).filter((_, rep) => asks[rep]! < askedAt(value));
        return { trialCount: asked.length, successCount: asked.filter(one => one < rateAt(value)).length };
      }),
    );
  }
  return step.value;
};

const logistic = (value: number): number => 1 / (1 + Math.exp(value));
const inRange = { low: -6, high: 6, now: 0 };

describe('tuning a toy whose rate is known', () => {
  it('finds the crossing of a logistic curve within the ± it gives', () => {
    let inside = 0;
    for (let seed = 1; seed <= 40; seed++) {
      const answer = tuneToy(logistic, { ...inRange, wantedRatio: 0.6 }, seed);
      if (answer.kind !== 'reached') throw new Error(answer.kind);
      // logit(0.6) = ln 1.5: where 1/(1 + e^x) is 0.6.
      const miss = Math.abs(answer.value + Math.log(1.5));
      if (miss <= answer.plusMinus) inside++;
      expect(miss).toBeLessThan(3 * answer.plusMinus);
      // 1.96·√(0.6·0.4/1000) over the slope 0.24.
      expect(answer.plusMinus).toBeGreaterThan(0.08);
      expect(answer.plusMinus).toBeLessThan(0.2);
    }
    expect(inside).toBeGreaterThanOrEqual(36);
  });

  it('takes the crossing nearest to where it stands, of a hill with two', () => {
    const hill = (value: number): number => 0.9 * Math.exp(-value * value);
    for (const now of [-3, 3]) {
      const answer = tuneToy(hill, { ...inRange, now, wantedRatio: 0.5 });
      if (answer.kind !== 'reached') throw new Error(answer.kind);
      const wanted = Math.sign(now) * Math.sqrt(Math.log(0.9 / 0.5));
      expect(Math.abs(answer.value - wanted)).toBeLessThan(2 * answer.plusMinus);
    }
  });

  it('says what it can reach when the wanted rate lies outside', () => {
    const answer = tuneToy(value => 0.3 + 0.02 * value, { ...inRange, wantedRatio: 0.8 });
    if (answer.kind !== 'cannotBeReached') throw new Error(answer.kind);
    expect(answer.highest.value).toBe(6);
    expect(answer.lowest.value).toBe(-6);
    expect(answer.highest.rate.rateRatio).toBeCloseTo(0.42, 1);
    expect(answer.lowest.rate.rateRatio).toBeCloseTo(0.18, 1);
  });

  it('says so when the rate jumps over the wanted one', () => {
    const answer = tuneToy(value => (value < 1.234 ? 0.1 : 0.9), { ...inRange, wantedRatio: 0.5 });
    if (answer.kind !== 'jumps') throw new Error(answer.kind);
    expect(answer.below.value).toBeLessThan(1.234);
    expect(answer.above.value).toBeGreaterThanOrEqual(1.234);
    expect(answer.above.value - answer.below.value).toBeLessThan(1.1);
  });

  it('offers no value to which hardly a rep comes, even where those few come out as is wanted', () => {
    // Beyond 2 the rep does not come about any more: there the few left would give 6 in 10.
    const rateAt = (value: number): number => (value > 2 ? 0.6 : 0.2);
    const askedAt = (value: number): number => (value > 2 ? 0.02 : 0.9);
    const answer = tuneToy(rateAt, { ...inRange, wantedRatio: 0.6 }, 1, askedAt);
    if (answer.kind !== 'cannotBeReached') throw new Error(answer.kind);
    expect(answer.highest.value).toBeLessThanOrEqual(2);
    expect(answer.leastAskedRatio).toBeCloseTo(0.8 * 0.9, 1);
  });

  it('leaps over no gap in which the rep does not come about', () => {
    const rateAt = (value: number): number => (value < -1 ? 0.9 : 0.1);
    const askedAt = (value: number): number => (value >= -3 && value < -1 ? 0 : 1);
    const answer = tuneToy(rateAt, { ...inRange, wantedRatio: 0.6 }, 1, askedAt);
    expect(answer.kind).toBe('cannotBeReached');
    // What is drawn of it has the gap where the values were left out, and there alone.
    const after = goodPointsOf(answer).filter(point => point.afterGap);
    expect(after).toHaveLength(1);
    expect(after[0]!.value).toBeGreaterThanOrEqual(-1);
    expect(after[0]!.value).toBeLessThan(0.5);
  });

  it('says that it is never asked, where no rep comes to the question at any value', () => {
    const answer = tuneToy(logistic, { ...inRange, wantedRatio: 0.6 }, 1, () => 0);
    expect(answer.kind).toBe('neverAsked');
  });

  it('tries what it found with as many reps as are told, and seeks further where it does not hold', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const setting = { ...inRange, wantedRatio: 0.6, repCount: 60, verifyReps: 2000 };
      const answer = tuneToy(logistic, setting, seed);
      if (answer.kind !== 'reached') throw new Error(answer.kind);
      expect(answer.repCount).toBe(2000);
      expect(answer.rate.lowerRatio).toBeLessThanOrEqual(0.6);
      expect(answer.rate.upperRatio).toBeGreaterThanOrEqual(0.6);
    }
  });

  it('whatever the curve: an answer’s own rate has the wanted one in its interval', () => {
    const wave = fc.record({
      middle: fc.double({ min: 0.2, max: 0.8, noNaN: true }),
      height: evenly(0, 0.5),
      pace: fc.double({ min: 0.1, max: 2.5, noNaN: true }),
      wanted: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      seed: fc.integer({ min: 1, max: 1e6 }),
    });
    fc.assert(
      fc.property(wave, ({ middle, height, pace, wanted, seed }) => {
        const rateAt = (value: number): number => middle + height * Math.sin(pace * value);
        const answer = tuneToy(rateAt, { ...inRange, wantedRatio: wanted }, seed);
        if (answer.kind === 'reached') {
          expect(answer.rate.lowerRatio).toBeLessThanOrEqual(wanted);
          expect(answer.rate.upperRatio).toBeGreaterThanOrEqual(wanted);
          expect(answer.value).toBeGreaterThanOrEqual(-6);
          expect(answer.value).toBeLessThanOrEqual(6);
        } else if (answer.kind === 'cannotBeReached') {
          const rates = answer.curve.map(point => point.rate.rateRatio - wanted);
          expect(Math.min(...rates) > 0 || Math.max(...rates) < 0).toBe(true);
        }
      }),
      { numRuns: 60, seed: 3 },
    );
  });
});
