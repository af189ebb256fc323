import type { Mark } from '@icewright/book';
import { describe, expect, it } from 'vitest';
import { placeNow } from './mark-places.ts';
import { marksGoingAlong } from './marks-going-along.ts';

const on = (placed: string) => ({ atM: { xM: 0, yM: 0 }, placed: { freeze: 'z', placed } });
const mark = (at: unknown[], change: Partial<Mark> = {}): Mark =>
  ({ film: 'f', kind: 'ring', at, text: '', fromS: 2, toS: 2, freeze: 'z', madeAt: '', ...change }) as Mark;
const along = (one: Mark, begun: Record<string, string>, endS = 60) =>
  marksGoingAlong(
    { m: one } as never,
    'z',
    { filmTimeS: 2 },
    new Map(Object.entries(begun)) as never,
    endS,
  )[0]?.[1];

describe('a mark on a placed skater who begins to be followed', () => {
  it('hangs on his track and is seen from the freeze on for three seconds, or to the end of the film', () => {
    expect(along(mark([on('a')]), { a: 't' })).toEqual(
      expect.objectContaining({ at: [{ ...on('a'), track: 't' }], fromS: 2, toS: 5 }),
    );
    expect(along(mark([on('a')]), { a: 't' })).not.toHaveProperty('freeze');
    expect(along(mark([on('a')]), { a: 't' }, 4)).toMatchObject({ toS: 4 });
  });

  it('stays with its freeze while another of its skaters is known there alone, or when somebody wanted it so', () => {
    expect(along(mark([on('a'), on('b')]), { a: 't' })).toMatchObject({ freeze: 'z', toS: 2 });
    expect(along(mark([{ ...on('a'), track: 't' }, on('b')]), { b: 'u' })).not.toHaveProperty('freeze');
    expect(along(mark([on('a')], { fromS: 1, toS: 4 }), { a: 't' })).toMatchObject({ freeze: 'z', toS: 4 });
  });

  it('is left alone on others and on the ice', () => {
    expect(along(mark([on('b')]), { a: 't' })).toBeUndefined();
    expect(along(mark([{ atM: { xM: 1, yM: 1 } }]), { a: 't' })).toBeUndefined();
  });

  it('is where he is followed; before he is found, where he stands in the freeze, and nowhere else', () => {
    const place = { ...on('a'), track: 't' } as never;
    const tie = { fitAt: () => undefined, fitOf: () => undefined };
    const followed = { filmTimeS: [2, 3], xM: [10, 20], yM: [1, 1], sdM: [0.1, 0.1] };
    const freezes = { z: { filmTimeS: 2, skaters: { a: { feet: { xPx: 3, yPx: 4 } } } } };
    expect(placeNow(place, { tracks: { t: { followed } }, freezes } as never, 2.5, tie)?.atM.xM).toBe(15);
    const asked: string[] = [];
    const asking = { ...tie, fitOf: (id: string) => void asked.push(id) };
    for (const atS of [2, 2.5])
      placeNow(place, { tracks: { t: {} }, freezes } as never, atS, asking as never);
    expect(asked).toEqual(['z']);
  });
});
