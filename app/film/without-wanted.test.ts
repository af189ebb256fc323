import type { Freeze } from '@icewright/book';
import { expect, it } from 'vitest';
import { withoutWanted } from './without-wanted.ts';

it('leaves everybody where he stood, and says of nobody where he should have been', () => {
  const c = { side: 'us', kind: 'skater', role: 'C', feet: { xPx: 1, yPx: 2 } };
  const x = { side: 'them', kind: 'skater', role: 'X1', feet: { xPx: 3, yPx: 4 } };
  const freeze = { title: 'late', skaters: { c: { ...c, ghostM: { xM: 1, yM: 1 } }, x } };
  expect(withoutWanted(freeze as unknown as Freeze)).toEqual({ title: 'late', skaters: { c, x } });
});
