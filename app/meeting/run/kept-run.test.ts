import { expect, it } from 'vitest';
import { keptOf, runFrom } from './kept-run.ts';
import { FIRST_RUN, type Run } from './meeting-run.ts';

const ITEMS = [{ id: 'a' }, { id: 'b' }, { id: 'c' }];
const NOW = 1_000_000_000;
const STANDS: Run = { index: 1, phase: 'stands', from: 40, isBlack: false, turn: 7 };
const kept = (run: Run, beganMs?: number, filmAt?: number) =>
  JSON.stringify(keptOf(run, ITEMS, beganMs, filmAt));

it('a meeting goes on at the item and by the clock where it was', () => {
  const on = runFrom(kept(STANDS, NOW - 90_000), ITEMS, NOW);
  expect(on).toEqual({ run: { ...STANDS, turn: 8 }, beganMs: NOW - 90_000 });
});

it('its item is known by name: one that was put before it does not change where it stands', () => {
  expect(runFrom(kept(STANDS), [{ id: 'new' }, ...ITEMS], NOW).run.index).toBe(2);
  expect(runFrom(kept(STANDS), [{ id: 'a' }], NOW).run).toBe(FIRST_RUN);
});

it('a film that ran is held where it was, or where it was held', () => {
  const running: Run = { ...STANDS, phase: 'toEnd' };
  expect(runFrom(kept(running), ITEMS, NOW).run).toMatchObject({ phase: 'toEnd', heldAt: 40 });
  expect(runFrom(kept(running, NOW, 52), ITEMS, NOW).run).toMatchObject({ phase: 'toEnd', heldAt: 52 });
  expect(runFrom(kept({ ...running, heldAt: 55 }, NOW, 55), ITEMS, NOW).run).toMatchObject({ heldAt: 55 });
  expect(runFrom(kept(STANDS, NOW, 52), ITEMS, NOW).run).toEqual({ ...STANDS, turn: 8 });
  expect(runFrom(kept({ ...running, heldAt: 55 }), ITEMS, NOW).run).toMatchObject({ heldAt: 55 });
});

it('begins anew with nothing kept, with what cannot be read, and on another day', () => {
  const broken = ['', 'null', '[]', '{"item":"b"}', JSON.stringify({ ...STANDS, item: 'b', phase: 'later' })];
  for (const text of [null, ...broken]) expect(runFrom(text, ITEMS, NOW)).toEqual({ run: FIRST_RUN });
  expect(runFrom(kept(STANDS, NOW - 5 * 3_600_000), ITEMS, NOW)).toEqual({ run: FIRST_RUN });
});
