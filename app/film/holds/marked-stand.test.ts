import type { Game } from '@icewright/book';
import { describe, expect, it } from 'vitest';
import { standWithFirstMark } from './marked-stand.ts';

const stand = (marks: object, holdS?: number) =>
  standWithFirstMark(
    { marks, freezes: { a: holdS === undefined ? {} : { holdS }, b: {} } } as unknown as Game,
    'a' as never,
  );

describe('a freeze that gets a mark', () => {
  it('stands some seconds with its first', () => {
    expect(stand({})).toBe(3);
    expect(stand({ m: { freeze: 'b' }, n: {} })).toBe(3);
    expect(stand({ m: { freeze: 'a' } })).toBeUndefined();
  });

  it('stays as a hand has set it, at nought too', () => {
    expect(stand({}, 0)).toBeUndefined();
    expect(stand({}, 7)).toBeUndefined();
  });

  it('is none for a mark of no freeze', () => {
    expect(standWithFirstMark({ marks: {}, freezes: {} }, undefined)).toBeUndefined();
    expect(standWithFirstMark({ marks: {}, freezes: {} }, 'gone' as never)).toBeUndefined();
  });
});
