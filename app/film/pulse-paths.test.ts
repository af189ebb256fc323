import type { Moment, Team } from '@icewright/book';
import { describe, expect, it } from 'vitest';
import { BASE, markPath, pulsePaths } from './pulse-paths.ts';

const moment = (habit: string, verdict: Moment['verdict'], filmTimeS: number, costGoals = 0): Moment =>
  ({ habit, verdict, filmTimeS, costGoals }) as Moment;
const team = { habits: { a: { costGoals: 0.12 }, b: { costGoals: 0 } } } as unknown as Team;
const place = { team, habit: undefined, xOf: (timeS: number) => 10 * timeS };

describe('the marks of the pulse', () => {
  it('done stands on the line and missed hangs from it, as high as the cost', () => {
    expect(markPath(moment('a', 'done', 2), place)).toBe(`M17.5 ${BASE - 30}h5v30h-5z`);
    expect(markPath(moment('a', 'missed', 2, 0.06), place)).toBe(`M17.5 ${BASE}h5v19h-5z`);
    expect(markPath(moment('b', 'missed', 2, 9), place)).toBe(`M17.5 ${BASE}h5v30h-5z`);
    expect(markPath(moment('a', 'cannotSee', 2), place)).toMatch(/^M16.4 40a3.6 3.6 /);
  });

  it('are one path a look, each mark once, those of another habit behind', () => {
    const all = Array.from(
      { length: 1500 },
      (_, i) =>
        [`m${i}`, moment(i % 3 ? 'a' : 'b', (['done', 'missed', 'cannotSee'] as const)[i % 3]!, i)] as const,
    );
    expect(pulsePaths(all, place).map(([look]) => look)).toEqual(['done', 'missed', 'none']);
    const ofOne = pulsePaths(all, { ...place, habit: 'a' });
    expect(ofOne.map(([look]) => look)).toEqual(['other done', 'missed', 'none']);
    expect(ofOne.map(([, d]) => d.split('M').length - 1)).toEqual([500, 500, 500]);
    expect(pulsePaths([], place)).toEqual([]);
  });
});
