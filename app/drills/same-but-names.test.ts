import type { Drill } from '@icewright/book';
import { expect, it } from 'vitest';
import { isSameButNames } from './same-but-names.ts';

const atM = { xM: 1, yM: 2 };
const acts = {};
const spot = (role: string, more: object = {}) =>
  ({ rank: 0, side: 'us', kind: 'skater', role, atM, facingRad: 0, waitingCount: 0, acts, ...more }) as never;
const spots = (...of: readonly [string, never][]): Drill['spots'] => Object.fromEntries(of) as Drill['spots'];

it('a new name plays nothing anew', () => {
  expect(isSameButNames(spots(['a', spot('F1')]), spots(['a', spot('F2')]))).toBe(true);
  expect(isSameButNames(spots(['a', spot('X1')]), spots(['a', spot('Nine')]))).toBe(true);
  // A document that is read again may give equal parts that are other objects.
  expect(
    isSameButNames(spots(['a', spot('F1')]), spots(['a', spot('F2', structuredClone({ atM, acts }))])),
  ).toBe(true);
});

it('a name by which a standard knows her differently does', () => {
  expect(isSameButNames(spots(['a', spot('F1')]), spots(['a', spot('D1')]))).toBe(false);
  expect(isSameButNames(spots(['a', spot('F1')]), spots(['a', spot('Nine')]))).toBe(false);
});

it('so does all else: a place, an act, somebody more or another', () => {
  const one = spots(['a', spot('F1')]);
  expect(isSameButNames(one, spots(['a', spot('F1', { atM: { xM: 1, yM: 2.1 } })]))).toBe(false);
  expect(isSameButNames(one, spots(['a', spot('F1', { acts: { x: {} } })]))).toBe(false);
  expect(isSameButNames(one, spots(['a', spot('F1', { who: 'somebody' })]))).toBe(false);
  expect(isSameButNames(one, spots(['a', spot('F1')], ['b', spot('F2')]))).toBe(false);
  expect(isSameButNames(one, spots(['b', spot('F1')]))).toBe(false);
});
