import type { Team } from '@icewright/book';
import { expect, it } from 'vitest';
import { rosterOf } from './who-is-here.ts';

const rosterFrom = (...positions: readonly string[]) =>
  rosterOf({
    skaters: Object.fromEntries(positions.map((position, at) => [`skater-${at}`, { position }])),
  } as unknown as Team);

it('counts a block for whom the roster has, and for a full team while it has nobody', () => {
  expect(rosterFrom('F', 'D', 'G', 'F')).toMatchObject({ skaters: 3, goalies: 1 });
  expect(rosterFrom()).toMatchObject({ skaters: 20, goalies: 2 });
  // Three goalies are no team without a roster: a drill for skaters has nobody then.
  expect(rosterFrom('G', 'G', 'G')).toMatchObject({ skaters: 0, goalies: 3 });
});
