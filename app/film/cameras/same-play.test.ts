import { expect, it } from 'vitest';
import { maySamePlay } from './same-play.ts';

it('parts of a game that follow each other are not tied, whatever they are called; a camera is, to any of them', () => {
  const [first, second] = [
    { as: 'part', label: 'first period' },
    { as: 'part', label: 'second' },
  ] as const;
  const camera = { as: 'camera', label: 'behind the net' } as const;
  expect(maySamePlay(first, second)).toBe(false);
  expect([maySamePlay(first, camera), maySamePlay(camera, second)]).toEqual([true, true]);
  // Added before it was kept what they are.
  expect(maySamePlay({ label: 'whole game' }, { label: 'part 2' })).toBe(false);
  expect(maySamePlay({ label: 'whole game' }, { label: 'from the bench' })).toBe(true);
});
