import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { isNone } from '../units/none.ts';
import { fitSprint } from './fit-sprint.ts';
import { sprintTimeTo } from './sprint.ts';

const GATES_M = [5, 10, 15, 20, 30, 40];

const fitOf = (distancesM: readonly number[], timesS: readonly number[]) => {
  const fit = fitSprint(distancesM, timesS);
  if (isNone(fit)) throw new Error(fit.reason);
  return fit;
};
const timesOf = (topSpeedMps: number, tauS: number, offsetS: number): number[] =>
  GATES_M.map(distanceM => (sprintTimeTo({ topSpeedMps, tauS }, distanceM) as number) + offsetS);

describe('own tests', () => {
  it('times made by a sprint give that sprint back', () => {
    fc.assert(
      fc.property(evenly(5, 11), evenly(0.7, 2), evenly(-0.4, 0.4), (topSpeedMps, tauS, offsetS) => {
        const fit = fitOf(GATES_M, timesOf(topSpeedMps, tauS, offsetS));
        expect(fit.topSpeedMps).toBeCloseTo(topSpeedMps, 6);
        expect(fit.tauS).toBeCloseTo(tauS, 6);
        expect(fit.offsetS).toBeCloseTo(offsetS, 6);
      }),
    );
  });

  it('a later start of the clock moves the offset alone; the order of the gates is no matter', () => {
    const times = timesOf(8.3, 1.2, 0.05).map(
      (timeS, i) => timeS + [0.01, -0.02, 0.015, 0, -0.01, 0.005][i]!,
    );
    const fit = fitOf(GATES_M, times);
    const shifted = fitOf(
      GATES_M,
      times.map(timeS => timeS + 0.25),
    );
    expect(shifted.topSpeedMps).toBeCloseTo(fit.topSpeedMps, 6);
    expect(shifted.offsetS).toBeCloseTo(fit.offsetS + 0.25, 6);
    const turned = fitOf([...GATES_M].reverse(), [...times].reverse());
    expect(turned.tauS).toBeCloseTo(fit.tauS, 6);
    expect(turned.standardErrors![0]).toBeCloseTo(fit.standardErrors![0], 6);
  });

  it('is a minimum: no step aside has a smaller sum of squares', () => {
    const times = timesOf(7.6, 1.3, 0).map((timeS, i) => timeS + 0.02 * (i % 2 === 0 ? 1 : -1));
    const fit = fitOf(GATES_M, times);
    const rss = (v: number, tau: number, offset: number): number =>
      GATES_M.reduce(
        (sum, distanceM, i) =>
          sum +
          (times[i]! - offset - (sprintTimeTo({ topSpeedMps: v, tauS: tau }, distanceM) as number)) ** 2,
        0,
      );
    const best = rss(fit.topSpeedMps, fit.tauS, fit.offsetS);
    for (const [dv, dt, doff] of [
      [0.01, 0, 0],
      [-0.01, 0, 0],
      [0, 0.01, 0],
      [0, -0.01, 0],
      [0, 0, 0.01],
      [0, 0, -0.01],
    ] as const)
      expect(rss(fit.topSpeedMps + dv, fit.tauS + dt, fit.offsetS + doff)).toBeGreaterThan(best);
  });

  it('refuses with the reason', () => {
    expect(fitSprint([10, 30, 10], [2, 4, 2.1])).toEqual({ kind: 'none', reason: 'tooFewSplits' });
    // Times that bend the wrong way: the skater would slow down from the start.
    expect(fitSprint([5, 10, 20, 30], [0.5, 1.2, 3, 5.4])).toEqual({
      kind: 'none',
      reason: 'timesFitNoSprint',
    });
    expect(() => fitSprint([5, 10], [1])).toThrow(/2 distances but 1/);
  });

  it('with exactly three times gives no ±', () => {
    const fit = fitOf([5, 15, 30], [1.5, 2.9, 4.8]);
    expect(fit.standardErrors).toBeNull();
    expect(fit.residualSdS).toBeNull();
  });
});
