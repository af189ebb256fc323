import { emptyPractice, type Practice } from '@icewright/book';
import { describe, expect, it } from 'vitest';
import { staysSaid, usesOf } from './uses-of.ts';

const practiceOn = (day: string, drill: string, minutes: number): Practice =>
  ({
    ...emptyPractice({ title: day, day }),
    blocks: { one: { rank: 0, drill, minutes }, talk: { rank: 1, minutes: 2 } },
  }) as unknown as Practice;

describe('where a drill was used', () => {
  const of = usesOf(
    [
      ['p2', practiceOn('2026-11-20', 'd', 8)],
      ['p1', practiceOn('2026-11-10', 'd', 12)],
      ['p3', practiceOn('2026-11-28', 'd', 10)],
    ],
    '2026-11-28',
  );

  it('counts what was practised, and tells it from what is planned', () => {
    const uses = of('d');
    expect(uses.practised.map(use => use.practiceId)).toEqual(['p1', 'p2']);
    expect(uses.planned.map(use => use.practiceId)).toEqual(['p3']);
    expect(uses.minutes).toBe(20);
  });

  it('names the practices it stays in when it is taken out of the library', () => {
    expect(staysSaid(of('d'), day => day.slice(8))).toBe(' It stays in the practice of 10, of 20, of 28.');
    expect(staysSaid(of('other'), day => day)).toBe('');
  });

  it('says never of a drill that stands in no practice', () => {
    expect(of('other')).toEqual({ practised: [], planned: [], minutes: 0 });
  });
});
