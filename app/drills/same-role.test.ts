import type { SpotId } from '@icewright/engine';
import { expect, it } from 'vitest';
import { drillWith } from './edit/drill-of-tests.reference.ts';
import { sharesRole } from './same-role.tsx';
import { afterWrites } from './write.ts';

const named = (roles: Readonly<Record<string, string>>, kind = 'skater') =>
  afterWrites(
    drillWith({ spots: Object.keys(roles) }),
    Object.entries(roles).flatMap(([id, role]) => [
      { path: ['spots', id, 'role'], value: role },
      { path: ['spots', id, 'kind'], value: kind },
    ]),
  );
const a = 'a' as SpotId;

it('two skaters of one name are told, in whatever letters; two goalies and two coaches are not', () => {
  expect(sharesRole(named({ a: 'X1', b: 'X2' }), a)).toBe(false);
  expect(sharesRole(named({ a: 'X1', b: 'X1' }), a)).toBe(true);
  expect(sharesRole(named({ a: 'x1 ', b: 'X1' }), a)).toBe(true);
  expect(sharesRole(named({ a: '🏒', b: '🏒' }), a)).toBe(true);
  expect(sharesRole(named({ a: '', b: '' }), a)).toBe(false);
  expect(sharesRole(named({ a: 'G', b: 'G' }, 'goalie'), a)).toBe(false);
  expect(sharesRole(named({ a: 'Co', b: 'Co' }, 'coach'), a)).toBe(false);
});
