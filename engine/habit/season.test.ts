import { describe, expect, it } from 'vitest';
import { type Random, randomOf } from '../random/random.ts';
import { habitChange } from './habit-change.ts';

const SEASONS = 4000;

/** A game's chances of one habit and how many were done, at a rate. */
const game = (random: Random, rate: number) => {
  const chanceCount = 6 + random.below(15);
  let doneCount = 0;
  for (let i = 0; i < chanceCount; i++) if (random.uniform() < rate) doneCount++;
  return { doneCount, chanceCount };
};

const add = (a: ReturnType<typeof game>, b: ReturnType<typeof game>) => ({
  doneCount: a.doneCount + b.doneCount,
  chanceCount: a.chanceCount + b.chanceCount,
});

/** Share of seasons of 20 games, first practised after the 8th, in which "moved" is said at any of the looks. */
const shareMoved = (seed: number, options: { everyGame: boolean; looks: number; change: number }): number => {
  const random = randomOf(seed);
  let moved = 0;
  for (let season = 0; season < SEASONS; season++) {
    const rate = 0.3 + 0.5 * random.uniform();
    let before = game(random, rate);
    for (let i = 1; i < 8; i++) before = add(before, game(random, rate));
    let after = { doneCount: 0, chanceCount: 0 };
    let isMoved = false;
    for (let i = 0; i < 12; i++) {
      after = add(after, game(random, rate + options.change));
      if (!options.everyGame && i < 11) continue;
      isMoved ||= habitChange(before, after, { looks: options.looks }).word.startsWith('moved');
    }
    if (isMoved) moved++;
  }
  return moved / SEASONS;
};

// Bar: "moved" said of a habit that did not move in at most 5 % of seeded seasons.
describe('a habit that did not move', () => {
  it('is said to have moved in at most 5 % of seasons, looked at once at the end', () => {
    expect(shareMoved(1, { everyGame: false, looks: 1, change: 0 })).toBeLessThanOrEqual(0.05);
  });

  it('and in at most 5 % of seasons looked at after every game, when the looks are counted', () => {
    expect(shareMoved(2, { everyGame: true, looks: 12, change: 0 })).toBeLessThanOrEqual(0.05);
  });

  it('but in far more when they are not: why looks are asked for', () => {
    expect(shareMoved(3, { everyGame: true, looks: 1, change: 0 })).toBeGreaterThan(0.1);
  });
});

describe('a habit that did move', () => {
  it('by 20 points is found in most seasons, at the end and on the way', () => {
    expect(shareMoved(4, { everyGame: false, looks: 1, change: 0.2 })).toBeGreaterThan(0.8);
    expect(shareMoved(5, { everyGame: true, looks: 12, change: 0.2 })).toBeGreaterThan(0.75);
  });
});
