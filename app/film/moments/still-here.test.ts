import type { Game } from '@icewright/book';
import { expect, it } from 'vitest';
import { areStillHere } from './still-here.ts';

it('is over when the last of them is gone, or back with the live clock', () => {
  const game = { moments: { a: { film: 'f' }, b: { film: 'live' } } } as unknown as Game;
  expect(areStillHere(['a', 'gone'], game)).toBe(true);
  expect(areStillHere(['gone'], game)).toBe(false);
  expect(areStillHere(['a', 'b'], game, 'f')).toBe(true);
  expect(areStillHere(['b'], game, 'f')).toBe(false);
});
