import { expect, it } from 'vitest';
import { nextPracticeTitle } from './next-practice-title.ts';

it.each([
  [[], 'Practice 1'],
  [['Practice 29', 'Practice 31', 'Practice 30'], 'Practice 32'],
  [['Before the derby', 'Practice 2 '], 'Practice 3'],
  [['Goalies only', 'Skating'], 'Practice 1'],
] as const)('after %j comes %s', (titles, next) => {
  expect(nextPracticeTitle(titles)).toBe(next);
});
