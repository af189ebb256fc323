import { expect, it } from 'vitest';
import { findTaken } from './taken-ideas.ts';

const kept = (freeze: string, title: string, more: object = {}) => ({
  title,
  from: { kind: 'freeze', game: 'g', freeze, said: '' } as never,
  ...more,
});

it('an idea is taken once: the drill made of it is found again by its freeze and its title', () => {
  const drills = [
    ['a', kept('other', 'Gap: a pass starts it')],
    ['b', kept('this', 'Gap: a pass starts it', { variantOf: { drill: 'c', as: 'harder' } })],
    ['c', kept('this', 'Gap: a pass starts it')],
  ] as const;
  expect(findTaken(drills, 'this', 'Gap: a pass starts it')).toBe('c');
  expect(findTaken(drills, 'this', 'Gap: only the two it is about')).toBeUndefined();
  expect(findTaken([], 'this', 'Gap: a pass starts it')).toBeUndefined();
});
