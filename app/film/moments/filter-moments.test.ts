import type { Follow, Game, Moment } from '@icewright/book';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filterMoments, type ListedMoment, type MomentFilter, seenValues } from './filter-moments.ts';

const moment = (fields: Partial<Moment>): Moment => ({
  habit: 'hunt' as Moment['habit'],
  verdict: 'done',
  film: 'film' as Moment['film'],
  filmTimeS: 1,
  frameIndex: 30,
  costGoals: 0,
  note: '',
  by: '',
  taggedAt: '2026-11-02T10:00:00Z',
  ...fields,
});
const follow = (of: string, step: Follow['step']): Follow => ({
  moment: of as Follow['moment'],
  step,
  filmTimeS: 2,
  frameIndex: 60,
});
const some = fc.record(
  {
    habit: fc.constantFrom('hunt', 'gap'),
    verdict: fc.constantFrom('done', 'missed', 'cannotSee'),
    strength: fc.constantFrom('5v5', '5v4'),
    period: fc.constantFrom(1, 2),
  },
  { requiredKeys: ['habit', 'verdict'] },
);

describe('the filter of moments', () => {
  it('shows those that agree in everything asked, in their order', () => {
    const wanted = fc.record(
      {
        habit: fc.constantFrom('hunt', 'gap'),
        verdict: fc.constantFrom('done', 'missed', 'cannotSee'),
        strength: fc.constantFrom('5v5', '5v4'),
        period: fc.constantFrom(1, 2),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(fc.array(some, { maxLength: 20 }), wanted, (fields, filter) => {
        const all = fields.map((each, i): ListedMoment => [`m${i}`, moment(each as Partial<Moment>)]);
        const shown = filterMoments(all, filter as MomentFilter, {} as Game['follows']);
        const agrees = (one: Moment) =>
          (filter.habit === undefined || one.habit === filter.habit) &&
          (filter.verdict === undefined || one.verdict === filter.verdict) &&
          (filter.strength === undefined || one.strength === filter.strength) &&
          (filter.period === undefined || one.period === filter.period);
        expect(shown).toEqual(all.filter(([, one]) => agrees(one)));
      }),
    );
  });

  it('asks what came of a moment', () => {
    const all: ListedMoment[] = [
      ['m1', moment({})],
      ['m2', moment({})],
    ];
    const follows = { f1: follow('m2', 'regained'), f2: follow('m1', 'lost') } as unknown as Game['follows'];
    expect(filterMoments(all, { came: 'regained' }, follows).map(([id]) => id)).toEqual(['m2']);
  });

  it('offers only values that occur', () => {
    const all: ListedMoment[] = [
      ['m1', moment({ strength: '5v4', by: 'Falk' })],
      ['m2', moment({ by: 'Ashdown' })],
      ['m3', moment({ by: 'Falk' })],
    ];
    expect(seenValues(all, 'by')).toEqual(['Ashdown', 'Falk']);
    expect(seenValues(all, 'strength')).toEqual(['5v4']);
    expect(seenValues(all, 'unit')).toEqual([]);
  });
});
