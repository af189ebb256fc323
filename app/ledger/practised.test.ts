import { type Drill, emptyDrill, emptyPractice, type Practice } from '@icewright/book';
import { describe, expect, it } from 'vitest';
import { minutesByHabit, practisedOf } from './practised.ts';

const rink = { preset: '60x30m' } as const;
const drillFor = (...habits: string[]): Drill => ({
  ...emptyDrill({ title: 'Two nets', level: 'u18', rink, madeAt: '2026-11-01T10:00:00Z' }),
  habits: habits as unknown as Drill['habits'],
});
const block = (rank: number, drill: string | undefined, minutes: number) => ({
  rank,
  ...(drill === undefined ? {} : { drill }),
  title: 'Two nets',
  minutes,
  changeoverMinutes: 2,
  says: '',
  keyPoints: '',
  leads: '',
  pucks: '',
  ice: '',
  groups: '',
});
const practiceOn = (day: string, ...blocks: ReturnType<typeof block>[]): Practice => ({
  ...emptyPractice({ title: 'Practice', day }),
  blocks: Object.fromEntries(blocks.map((one, index) => [`b${index}`, one])) as unknown as Practice['blocks'],
});

const drills = new Map([
  ['gap', drillFor('gap')],
  ['both', drillFor('gap', 'middle')],
]);

describe('minutes practised', () => {
  it('adds the blocks whose drill serves the habit, and no changeover', () => {
    const practice = practiceOn(
      '2026-11-03',
      block(1, 'gap', 12),
      block(2, 'both', 10),
      block(3, undefined, 5),
    );
    expect([...minutesByHabit(practice, drills)]).toEqual([
      ['gap', 22],
      ['middle', 10],
    ]);
  });

  it('counts a practice once its day is over', () => {
    const practices = [
      ['p1', practiceOn('2026-11-03', block(1, 'gap', 12))],
      ['p2', practiceOn('2026-11-10', block(1, 'gap', 8))],
    ] as const;
    expect(practisedOf(practices, drills, '2026-11-10').get('gap')).toEqual([
      { practiceId: 'p1', day: '2026-11-03', minutes: 12 },
    ]);
  });

  it('a drill that is not there serves nothing', () => {
    expect(minutesByHabit(practiceOn('2026-11-03', block(1, 'lost', 12)), drills).size).toBe(0);
  });
});
