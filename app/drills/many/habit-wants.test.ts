import type { Drill, Team } from '@icewright/book';
import { describe, expect, it } from 'vitest';
import { habitWantsOf, wantWords } from './habit-wants.ts';

const standard = { kind: 'zone', zone: 'house', atLeastCount: 1, when: { at: 'theyShoot' }, who: 'anyOfUs' };
const habits = {
  one: { title: 'The middle first', kept: true, standard },
  other: { title: 'Sticks down', kept: true, standard: { ...standard, atLeastCount: 2 } },
  same: { title: 'The middle again', kept: true, standard },
  byEye: { title: 'Named on film', kept: true, byEye: true, standard: { ...standard, atLeastCount: 4 } },
  dropped: { title: 'Let go of', kept: false, standard: { ...standard, atLeastCount: 3 } },
} as unknown as Team['habits'];
const served = (...ids: string[]): Drill['habits'] => ids as unknown as Drill['habits'];
const drill = { spots: {} } as unknown as Drill;

describe('what the habits of a drill want of it', () => {
  it('is each standard once, in the order of the drill, and only of habits the team keeps and has written a standard for', () => {
    const wants = habitWantsOf(served('other', 'one', 'same', 'byEye', 'dropped', 'nobody'), habits);
    expect(wants.map(want => want.title)).toEqual(['Sticks down', 'The middle first']);
    expect(wants.map(({ outcome }) => outcome.kind === 'standardHeld' && outcome.standard)).toEqual([
      habits['other' as never]!['standard' as never],
      standard,
    ]);
  });

  it('is said by the title of the habit, and another want in its own words', () => {
    const wants = habitWantsOf(served('one'), habits);
    expect(wantWords(wants[0]!.outcome, drill, wants).want).toBe('The middle first is held');
    const regained = { kind: 'puckRegained', side: 'us', beforeLine: 'centreLine' } as const;
    expect(wantWords(regained, drill, wants).want).toBe('we win the puck');
  });
});
