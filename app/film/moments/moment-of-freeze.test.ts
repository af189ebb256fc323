import type { Game } from '@icewright/book';
import { expect, it } from 'vitest';
import { momentOfFreeze } from './moment-of-freeze.ts';

const game = {
  moments: {
    late: { filmTimeS: 13, freeze: 'two' },
    later: { filmTimeS: 14, freeze: 'two' },
    early: { filmTimeS: 4.5, freeze: 'one' },
    alone: { filmTimeS: 7 },
  },
} as unknown as Game;

it('the chosen moment is one that the open freeze is of, or none', () => {
  expect(momentOfFreeze(game, 'one', 'late')).toBe('early');
  expect(momentOfFreeze(game, 'two', 'later')).toBe('later');
  expect(momentOfFreeze(game, 'two', 'alone')).toBe('late');
  expect(momentOfFreeze(game, 'of no moment', 'late')).toBeUndefined();
});
