import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { moreChancesToShow, smallestShown, wouldShow } from './chances-needed.ts';
import { habitChange } from './habit-change.ts';
import { habitNeed } from './habit-need.ts';
import { habitTally } from './habit-tally.ts';

const counts = (doneCount: number, chanceCount: number) => ({ doneCount, chanceCount });

describe('the tally of a habit', () => {
  it('leaves out what could not be seen', () => {
    const verdicts = ['done', 'missed', 'cannotSee', 'done', 'done', 'cannotSee'] as const;
    const tally = habitTally(verdicts.map(verdict => ({ verdict })));
    expect(tally).toMatchObject({ doneCount: 3, missedCount: 1, cannotSeeCount: 2, chanceCount: 4 });
    expect(tally.rate).toMatchObject({ rateRatio: 0.75 });
  });

  it('has no rate without a chance', () => {
    expect(habitTally([{ verdict: 'cannotSee' }]).rate).toEqual({ kind: 'none', reason: 'noTrials' });
  });
});

describe('the word for a change', () => {
  it('is cannot tell without chances on both sides', () => {
    expect(habitChange(counts(0, 0), counts(3, 5))).toMatchObject({ word: 'cannot tell', why: 'noChances' });
  });

  it('is moved when the interval leaves zero out, either way', () => {
    expect(habitChange(counts(40, 100), counts(65, 100)).word).toBe('moved up');
    expect(habitChange(counts(65, 100), counts(40, 100)).word).toBe('moved down');
  });

  it('tells no sign from too few chances', () => {
    expect(habitChange(counts(60, 120), counts(62, 120))).toMatchObject({
      word: 'no sign yet',
      moreChances: 0,
    });
    expect(habitChange(counts(6, 12), counts(7, 12))).toMatchObject({
      word: 'cannot tell',
      why: 'tooFewChances',
    });
  });

  it('asks for 94 chances a side to see 50 against 70 % with 80 % power', () => {
    // Printed figure for 5 %: 93 to 94 a side (Fleiss 1981); here the level of one look is 4.5 %.
    const wanted = (count: number) =>
      habitChange(counts(count * 0.6, count), counts(count * 0.6, count)).moreChances;
    expect(wanted(90)).toBeGreaterThan(0);
    expect(wanted(100)).toBe(0);
  });

  it('says that no number of chances will do when there were too few before', () => {
    expect(habitChange(counts(10, 20), counts(10, 20)).moreChances).toBeNull();
  });

  it('names no change that one chance a side would have shown', () => {
    // Fisher's exact test of 1 of 1 against 0 of 1, the most that two chances can differ: p = 1.
    expect(habitChange(counts(0, 1), counts(1, 1)).smallestShownRatio).toEqual({
      kind: 'none',
      reason: 'tooFewForAny',
    });
    expect(habitChange(counts(0, 0), counts(1, 1)).smallestShownRatio).toMatchObject({ kind: 'none' });
    expect(habitChange(counts(60, 120), counts(62, 120)).smallestShownRatio).toBeLessThan(0.2);
  });

  it('is cannot tell when two judges agree too little, whatever the figures', () => {
    const change = habitChange(counts(40, 100), counts(70, 100), { judgesKappa: 0.31 });
    expect(change).toMatchObject({ word: 'cannot tell', why: 'judgesDiffer' });
    expect(habitChange(counts(40, 100), counts(70, 100), { judgesKappa: 0.7 }).word).toBe('moved up');
  });

  it('asks for exactly the further chances that are enough, and not for one more', () => {
    const seen = fc.record({
      beforeCount: fc.integer({ min: 5, max: 300 }),
      afterCount: fc.integer({ min: 1, max: 300 }),
      overallRatio: evenly(0, 1),
    });
    fc.assert(
      fc.property(seen, fc.double({ min: 0.05, max: 0.5, noNaN: true }), (chances, change) => {
        const more = moreChancesToShow(chances, change, 0.05);
        const shows = (count: number) => wouldShow({ ...chances, afterCount: count }, change, 0.05);
        if (more === null) expect(shows(1e9)).toBe(false);
        else expect(shows(chances.afterCount + more)).toBe(true);
        if (more !== null && more > 0) expect(shows(chances.afterCount + more - 1)).toBe(false);
        const least = smallestShown(chances, 0.05);
        if (typeof least === 'number') expect(wouldShow(chances, least, 0.05)).toBe(true);
        else expect(wouldShow(chances, 1, 0.05)).toBe(false);
      }),
      { numRuns: 500, seed: 7 },
    );
  });

  it('turns with the sides', () => {
    const side = fc
      .integer({ min: 1, max: 80 })
      .chain(chanceCount =>
        fc.integer({ min: 0, max: chanceCount }).map(doneCount => ({ doneCount, chanceCount })),
      );
    const turned = { 'moved up': 'moved down', 'moved down': 'moved up' } as Record<string, string>;
    fc.assert(
      fc.property(side, side, (a, b) => {
        const [forward, back] = [habitChange(a, b), habitChange(b, a)];
        expect(back.word).toBe(turned[forward.word] ?? forward.word);
      }),
    );
  });
});

describe('the need of a habit', () => {
  const seen = counts(30, 60);
  const base = { seen, wantedRatio: 0.75, costGoals: 0.4, daysSincePractised: 14 };

  it('is shortfall × cost × time, term by term', () => {
    expect(habitNeed(base)).toEqual({
      need: 0.25 * 0.4 * 0.5,
      shortfallRatio: 0.25,
      costGoals: 0.4,
      timeRatio: 0.5,
    });
  });

  it('is nothing when it is done as often as wanted, and full when it never was practised', () => {
    expect(habitNeed({ ...base, wantedRatio: 0.4 })).toMatchObject({ need: 0 });
    expect(habitNeed({ ...base, daysSincePractised: null })).toMatchObject({ timeRatio: 1 });
    expect(habitNeed({ ...base, daysSincePractised: 0 })).toMatchObject({ need: 0 });
  });

  it('is not known without a chance', () => {
    expect(habitNeed({ ...base, seen: counts(0, 0) })).toEqual({ kind: 'none', reason: 'noChances' });
  });
});
