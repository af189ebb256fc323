import type { Freeze } from '@icewright/book';
import { expect, it } from 'vitest';
import { isDefenderRole, isForwardRole } from '../../engine/habit/who.ts';
import { foundRole, namesApart, nextRole, roleOnceKnown } from './people-words.ts';

const freezeOf = (...roles: readonly (readonly ['us' | 'them', string])[]) =>
  ({
    skaters: Object.fromEntries(roles.map(([side, role], i) => [`p${i}`, { side, role }])),
  }) as unknown as Freeze;

it('of somebody found says no more than is known: that he is ours, and of theirs the next X', () => {
  const some = freezeOf(['us', 'U1'], ['us', 'F1'], ['them', 'X1']);
  expect(foundRole(some, 'us', 'skater')).toBe('U2');
  expect(foundRole(some, 'them', 'skater')).toBe('X2');
  expect(foundRole(some, 'us', 'goalie')).toBe('G');
  // No standard that speaks of forwards or defenders takes him for one.
  expect(isForwardRole('U2') || isDefenderRole('U2')).toBe(false);
  // Whom a hand places is named in the order of placing, and seen as he is named.
  expect(nextRole(some, 'us', 'skater')).toBe('F2');
});

it('of whom it is said who he is takes the role of his position, unless his role was said', () => {
  const some = freezeOf(['us', 'U1'], ['us', 'D1'], ['us', 'F1'], ['us', 'F2'], ['us', 'F3'], ['them', 'D2']);
  const unknown = { side: 'us', kind: 'skater', role: 'U1' } as const;
  expect(roleOnceKnown(some, unknown, 'D')).toBe('D2');
  expect(roleOnceKnown(some, unknown, 'F')).toBe('F');
  expect(roleOnceKnown(some, unknown, undefined)).toBeUndefined();
  expect(roleOnceKnown(some, { ...unknown, role: 'LW' }, 'D')).toBeUndefined();
});

it('names of followed skaters differ, by when each was first seen', () => {
  const all = [
    ['F1', '0:02.8'],
    ['X1', '0:02.8'],
    ['F1', '0:06.0'],
  ] as const;
  expect(
    namesApart(
      all,
      ([name]) => name,
      ([, since]) => since,
    ),
  ).toEqual(['F1 from 0:02.8', 'X1', 'F1 from 0:06.0']);
});
