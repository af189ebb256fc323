import { describe, expect, it } from 'vitest';
import { rankPutIn } from './rank-put-in.ts';

const drill = 'drill-a' as never;
const after = (blocks: Parameters<typeof rankPutIn>[0]): readonly string[] =>
  Object.entries({ ...blocks, new: { rank: rankPutIn(blocks), drill } })
    .sort(([, a], [, b]) => a.rank - b.rank)
    .map(([id]) => id);

describe('where a drill is put into a practice', () => {
  it('is before the talk that closes it', () => {
    expect(after({ a: { rank: 1, drill }, b: { rank: 2, drill }, talk: { rank: 3 } })).toEqual([
      'a',
      'b',
      'new',
      'talk',
    ]);
  });

  it('is its end without such a talk, and in an empty one', () => {
    expect(after({ talk: { rank: 0 }, a: { rank: 1, drill } })).toEqual(['talk', 'a', 'new']);
    expect(after({})).toEqual(['new']);
  });

  it('is after a talk with which it begins', () => {
    expect(after({ talk: { rank: 1 } })).toEqual(['talk', 'new']);
  });

  it('is the end where no number fits between', () => {
    expect(after({ a: { rank: 1, drill }, talk: { rank: 1 } }).at(-1)).toBe('new');
  });
});
