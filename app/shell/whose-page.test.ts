import { emptyTeam, type Team } from '@icewright/book';
import { describe, expect, it } from 'vitest';
import type { View } from './open-document.ts';
import { findThing, whoseOf } from './whose-page.ts';

describe('what an address speaks of', () => {
  it.each([
    ['/practices/p1', { word: 'practice', id: 'p1' }],
    ['/practices/p1/card', { word: 'practice', id: 'p1' }],
    ['/drills/d1', { word: 'drill', id: 'd1' }],
    ['/film/g1', { word: 'game', id: 'g1' }],
    ['/film/meeting/m1/speak', { word: 'meeting', id: 'm1' }],
    ['/habits/h1', { word: 'habit', id: 'h1' }],
  ])('%s is one thing', (path, thing) => {
    expect(findThing(path)).toEqual(thing);
  });

  it.each(['/', '/film', '/habits', '/drills', '/practices', '/ledger', '/team', '/film/meeting'])(
    '%s is of the team that is open',
    path => {
      expect(findThing(path)).toBeNull();
    },
  );
});

describe('whose a page is that is not ours', () => {
  const [one, two] = [
    { id: 'one', name: 'Lower Inlet Herons', demo: false },
    { id: 'two', name: 'Old name', demo: false },
  ];
  const holding = (part: Partial<Team>): View<'team'> => ({
    state: 'ready',
    value: {
      ...emptyTeam({
        name: 'Upper Fen',
        level: 'u18',
        rink: { preset: '60x30m' },
        madeAt: '2026-11-01T10:00:00Z',
      }),
      ...part,
    },
    issues: [],
  });
  const entry = { kind: 'drill', title: 'Two nets', day: '2026-11-03', removed: true } as const;
  const drill = { word: 'drill', id: 'd1' } as const;
  const contents = { d1: entry } as unknown as Team['contents'];

  it('is the team’s that has it in its contents, even taken out, by the name that team has now', () => {
    const views = new Map([
      ['one', holding({})],
      ['two', holding({ contents })],
    ]);
    expect(whoseOf(drill, [one, two], views)).toEqual({
      kind: 'theirs',
      thing: drill,
      team: { ...two, name: 'Upper Fen' },
    });
  });

  it('is found by its habits for a habit, and not by its contents', () => {
    const habits = { d1: {} } as unknown as Team['habits'];
    const habit = { word: 'habit', id: 'd1' } as const;
    expect(whoseOf(habit, [two], new Map([['two', holding({ habits })]])).kind).toBe('theirs');
    expect(whoseOf(habit, [two], new Map([['two', holding({ contents })]])).kind).toBe('nobodys');
  });

  it('waits for teams that are being opened, and says which cannot be read', () => {
    const of = (state: 'loading' | 'missing') =>
      whoseOf(
        drill,
        [one, two],
        new Map([
          ['one', { state, issues: [] }],
          ['two', holding({})],
        ]),
      );
    expect(of('loading').kind).toBe('looking');
    expect(of('missing')).toEqual({ kind: 'untold', thing: drill, unread: [one] });
  });
});
