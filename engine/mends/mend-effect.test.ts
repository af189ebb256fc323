import { describe, expect, it } from 'vitest';
import { type RateInterval, wilsonInterval } from '../statistics/rates.ts';
import { changesDrill, changesReps } from './mend-effect.ts';

const share = (successCount: number): RateInterval =>
  wilsonInterval({ successCount, trialCount: 400 }) as RateInterval;

describe('what a mend does to the drill', () => {
  it('is to change it when the problem goes with the finding: the habit held in all reps instead of in six of ten', () => {
    expect(changesDrill({ before: share(240), after: share(400) })).toBe(true);
    expect(changesDrill({ before: share(240), after: share(150) })).toBe(true);
    expect(changesDrill({ before: share(240), after: share(260) })).toBe(false);
  });

  it('is to change it when no rep comes to the question any more', () => {
    expect(changesDrill({ before: share(240), after: null })).toBe(true);
    expect(changesDrill({ before: null, after: null })).toBe(false);
  });

  it('is nothing to its reps when only their beat is changed', () => {
    expect(changesReps([{ path: ['flow'] }])).toBe(false);
    expect(changesReps([{ path: ['flow'] }, { path: ['spots', 'F1', 'atM'] }])).toBe(true);
  });
});
