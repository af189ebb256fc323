import { describe, expect, it } from 'vitest';
import { randomOf } from '../random/random.ts';
import { isNone } from '../units/none.ts';
import { fitContest, type TaggedContest, taggedPerS } from './fit-contest.ts';

/** Contests as the hazard says they come: a wait of known length, won when an exponential time is shorter. */
const simulated = (count: number, seed: number, rates: Parameters<typeof taggedPerS>[1]): TaggedContest[] => {
  const random = randomOf(seed);
  return Array.from({ length: count }, () => {
    const open = { angleRad: Math.PI * (2 * random.uniform() - 1), relativeMps: 4 * random.uniform() };
    const lastS = 0.3 + 2 * random.uniform();
    const tagged = { ...open, inReachS: lastS, won: false };
    const waitS = -Math.log(1 - random.uniform()) / taggedPerS(tagged, rates);
    return waitS < lastS ? { ...tagged, inReachS: waitS, won: true } : tagged;
  });
};
const TRUE = { ratePerS: 1.2, sideRatio: 0.8, behindRatio: 0.4 };

describe('fitting contests', () => {
  it('finds the figures that the contests were made with, and its intervals hold them about 95 times in 100', () => {
    const names = ['ratePerS', 'sideRatio', 'behindRatio'] as const;
    let within = 0;
    for (let seed = 0; seed < 60; seed++) {
      const fit = fitContest(simulated(400, seed, TRUE));
      if (isNone(fit)) throw new Error(fit.reason);
      for (const name of names) if (fit[name].lower < TRUE[name] && TRUE[name] < fit[name].upper) within++;
    }
    // 180 intervals: 171 expected, standard deviation 2.9.
    expect(within).toBeGreaterThan(160);
    const many = fitContest(simulated(20_000, 99, TRUE));
    if (isNone(many)) throw new Error(many.reason);
    for (const name of names) expect(many[name].value / TRUE[name]).toBeCloseTo(1, 1);
  });

  it('agrees with iteratively reweighted least squares of the same Poisson model, written apart', () => {
    const contests = simulated(300, 5, TRUE);
    const fit = fitContest(contests);
    if (isNone(fit)) throw new Error(fit.reason);
    // McCullagh & Nelder 1989, Generalized Linear Models, ch. 2: z = η + (y − μ)/μ, weights μ, offset ln exposure.
    const rows = contests.map(({ inReachS, angleRad, relativeMps, won }) => {
      const c = Math.cos(angleRad);
      return {
        x: [1, 1 - Math.abs(c), c < 0 ? -c : 0],
        offset: Math.log(inReachS / (1 + (relativeMps / 3) ** 2)),
        y: won ? 1 : 0,
      };
    });
    let beta = [0, 0, 0];
    for (let step = 0; step < 60; step++) {
      const a = [0, 1, 2].map(() => [0, 0, 0, 0]);
      for (const { x, offset, y } of rows) {
        const eta = x.reduce((sum, value, i) => sum + value * beta[i]!, 0);
        const mu = Math.exp(eta + offset);
        for (let i = 0; i < 3; i++) {
          for (let j = 0; j < 3; j++) a[i]![j]! += mu * x[i]! * x[j]!;
          a[i]![3]! += mu * x[i]! * (eta + (y - mu) / mu);
        }
      }
      beta = eliminated(a);
    }
    expect(Math.log(fit.ratePerS.value)).toBeCloseTo(beta[0]!, 6);
    expect(Math.log(fit.sideRatio.value)).toBeCloseTo(beta[1]!, 6);
    expect(Math.log(fit.behindRatio.value)).toBeCloseTo(beta[2]!, 6);
  });

  it('with all contests from the front, the rate alone would be wins by time: the others cannot be told', () => {
    const front = simulated(200, 3, TRUE).map(contest => ({ ...contest, angleRad: 0 }));
    expect(fitContest(front)).toMatchObject({ reason: 'oneSided' });
  });

  it('says so when too few were won, or a figure is none', () => {
    expect(fitContest(simulated(8, 1, TRUE))).toMatchObject({ reason: 'tooFewWon' });
    const bad = [{ inReachS: Number.NaN, angleRad: 0, relativeMps: 0, won: true }];
    expect(fitContest(bad)).toMatchObject({ reason: 'notANumber' });
  });
});

/** Gaussian elimination with the right-hand side as fourth column. */
const eliminated = (rows: number[][]): number[] => {
  const a = rows.map(row => [...row]);
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      if (j === i) continue;
      const part = a[j]![i]! / a[i]![i]!;
      for (let k = i; k < 4; k++) a[j]![k]! -= part * a[i]![k]!;
    }
  }
  return [0, 1, 2].map(i => a[i]![3]! / a[i]![i]!);
};
