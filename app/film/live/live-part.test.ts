import { expect, it } from 'vitest';
import { partAtFirst } from './live-part.ts';

it('opens a game at its first film, and at its live clock only while there is no film', () => {
  const live = { rank: 'a', hash: 'live:2026-11-28T18:00:00.000Z' };
  const [one, two] = [
    { rank: 'b', hash: 'sampled-sha256:1' },
    { rank: 'c', hash: 'sampled-sha256:2' },
  ];
  expect(partAtFirst({ two, live, one } as never)).toBe('one');
  expect(partAtFirst({ live } as never)).toBe('live');
  expect(partAtFirst({})).toBeUndefined();
});
