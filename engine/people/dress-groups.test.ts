import { describe, expect, it } from 'vitest';
import { randomOf } from '../random/random.ts';
import { type Dress, dressGroupsOf, dressMiddles } from './dress-groups.ts';

// As measured in a drawn film at 0:03: navy, white over teal, the officials' black, a goalie in gold pads, and two of whom nothing is seen.
const NAVY: Dress = [0.16, 0.24, 0.43, 0.08];
const TEAL: Dress = [0.12, 0.37, 0.4, 0.15];
const BLACK: Dress = [0.26, 0.27, 0.25, 0.1];
const GOLD: Dress = [0.48, 0.34, 0.12, 0.15];

const like = (dress: Dress, count: number, seed = 1): Dress[] => {
  const random = randomOf(seed);
  return Array.from(
    { length: count },
    () => dress.map(value => value + 0.01 * random.normal()) as unknown as Dress,
  );
};

describe('people parted by what they wear', () => {
  it('keeps two teams apart though a goalie and two unseen are like nobody, and letters only who is clear', () => {
    const dresses = [...like(TEAL, 3), null, ...like(NAVY, 4), GOLD, null, ...like(BLACK, 2)];
    expect(dressGroupsOf(dresses)).toEqual([2, 2, 2, null, 0, 0, 0, 0, null, null, 1, 1]);
  });

  it('does not make two dresses of one, and letters nobody between two', () => {
    expect(dressGroupsOf(like(NAVY, 6))).toEqual([0, 0, 0, 0, 0, 0]);
    const between = NAVY.map((value, k) => (value + TEAL[k]!) / 2) as unknown as Dress;
    const groups = dressGroupsOf([...like(NAVY, 4), between, ...like(TEAL, 4)]);
    expect(groups.filter((_, i) => i !== 4)).toEqual([0, 0, 0, 0, 1, 1, 1, 1]);
    expect(groups[4]).toBeNull();
  });

  it('a dress keeps its number when others come and go, in whatever order they were found', () => {
    const first = dressGroupsOf([...like(NAVY, 3), ...like(TEAL, 3)]);
    expect(first).toEqual([0, 0, 0, 1, 1, 1]);
    const people = [...like(NAVY, 3), ...like(TEAL, 3)].map((dress, i) => ({ dress, group: first[i]! }));
    const known = dressMiddles(people);
    expect(known.map(one => one !== undefined)).toEqual([true, true, false, false]);
    // The officials come into view, between the two by their light, and our five go out of it.
    expect(dressGroupsOf([...like(TEAL, 2, 2), ...like(BLACK, 2, 3)], known)).toEqual([1, 1, 2, 2]);
    expect(dressGroupsOf([...like(BLACK, 2, 3), ...like(NAVY, 2, 4)], known)).toEqual([2, 2, 0, 0]);
  });

  it('has no answer for nobody, and for one alone', () => {
    expect(dressGroupsOf([])).toEqual([]);
    expect(dressGroupsOf([NAVY])).toEqual([null]);
    expect(dressGroupsOf([null, null])).toEqual([null, null]);
  });
});
