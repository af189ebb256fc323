import { emptyGame } from '@icewright/book';
import { expect, it } from 'vitest';
import { filesOfUnnamed } from './game-words.ts';

it('a game without a name is told from others by the files of its films, in their order; one with a name is not', () => {
  const films = {
    b: { rank: 1, fileName: 'second.mp4' },
    a: { rank: 0, fileName: 'first.mov' },
    l: { rank: 2, fileName: '' },
  };
  const game = { ...emptyGame({ opponent: '', day: '2026-11-02' }), films: films as never };
  expect(filesOfUnnamed(game)).toBe('first.mov, second.mp4');
  expect(filesOfUnnamed({ ...game, opponent: 'Upper Sedge' })).toBe('');
});
