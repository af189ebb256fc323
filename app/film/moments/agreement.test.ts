import type { Game, Moment } from '@icewright/book';
import { describe, expect, it } from 'vitest';
import { agreementOf, stillToJudge } from './agreement.ts';
import type { ListedMoment } from './filter-moments.ts';

type Verdict = Moment['verdict'];
const moment = (id: string, verdict: Verdict, by = 'A'): ListedMoment => [
  id,
  {
    habit: 'hunt' as Moment['habit'],
    verdict,
    film: 'film' as Moment['film'],
    filmTimeS: Number(id.slice(1)),
    frameIndex: 0,
    costGoals: 0,
    note: '',
    by,
    taggedAt: '2026-11-02T10:00:00Z',
  },
];
const game = (rows: readonly (readonly [Verdict, Verdict, number])[]) => {
  const moments: ListedMoment[] = [];
  const opinions: Record<string, unknown> = {};
  for (const [first, second, count] of rows) {
    for (let i = 0; i < count; i += 1) {
      const id = `m${moments.length}`;
      moments.push(moment(id, first));
      opinions[`o${id}`] = { moment: id, verdict: second, by: 'B', givenAt: '2026-11-02T10:00:00Z' };
    }
  }
  return { moments, opinions: opinions as unknown as Game['opinions'] };
};

describe('agreement of two pairs of eyes', () => {
  // Worked example of Cohen's kappa: 20 yes/yes, 5 yes/no, 10 no/yes, 15 no/no gives 0.4 (from memory; the arithmetic
  // is (0.70 − 0.50) / (1 − 0.50)).
  it('agrees with the worked example of fifty', () => {
    const { moments, opinions } = game([
      ['done', 'done', 20],
      ['done', 'missed', 5],
      ['missed', 'done', 10],
      ['missed', 'missed', 15],
    ]);
    const found = agreementOf(moments, opinions);
    expect(found).toMatchObject({ bothCount: 50, sameCount: 35 });
    expect(found.kappa!.kappa).toBeCloseTo(0.4, 10);
    expect(found.differ).toHaveLength(15);
    expect(found.differ.map(one => one.moment.filmTimeS)).toEqual(
      found.differ.map(one => one.moment.filmTimeS).sort((a, b) => a - b),
    );
  });

  it('is no figure where both only ever said one word, and leaves out moments that are gone', () => {
    const { moments, opinions } = game([['done', 'done', 4]]);
    expect(agreementOf(moments.slice(1), opinions)).toMatchObject({
      bothCount: 3,
      sameCount: 3,
      kappa: null,
    });
  });

  it('asks a person only of what he did not mark himself and has not judged', () => {
    const { moments, opinions } = game([['done', 'missed', 2]]);
    const more = [...moments, moment('m7', 'done'), moment('m8', 'done', 'B')];
    expect(stillToJudge(more, opinions, 'B').map(([id]) => id)).toEqual(['m7']);
    expect(stillToJudge(more, opinions, 'C')).toHaveLength(4);
  });
});
