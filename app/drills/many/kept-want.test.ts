import type { Drill } from '@icewright/book';
import { type ActId, type Id, type Outcome, outcomesOf, type SpotId } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { MIDDLE_FIRST } from '../../../picture/scenes/middle-first.plan.ts';
import { keptOutcome, wantToKeep } from './kept-want.ts';

const standard = {
  kind: 'numbers',
  zone: 'house',
  atLeastCount: 2,
  when: { at: 'theyShoot' },
} as const;
const habit = 'habit-1' as Id<'habit'>;
const held: Outcome = { kind: 'standardHeld', standard };
const wants = [{ habit, title: 'Two in the house', outcome: held }];
const drill = (wanted?: Drill['wanted']) =>
  ({ spots: MIDDLE_FIRST.spots, ...(wanted && { wanted }) }) as unknown as Drill;

describe('what is wanted of a drill, as its document keeps it', () => {
  it('comes back as it was chosen, whatever of the drill it is', () => {
    const all = outcomesOf(MIDDLE_FIRST);
    expect(all.length).toBeGreaterThan(3);
    for (const outcome of [...all, held])
      expect(keptOutcome(drill(wantToKeep(outcome, wants)!), wants)).toEqual(outcome);
  });

  it('names a habit, which is held by its standard of today', () => {
    expect(wantToKeep(held, wants)).toEqual({ kind: 'habitHeld', habit });
    const today: Outcome = { kind: 'standardHeld', standard: { ...standard, atLeastCount: 3 } };
    expect(keptOutcome(drill({ kind: 'habitHeld', habit }), [{ ...wants[0]!, outcome: today }])).toEqual(
      today,
    );
    expect(wantToKeep(held, [])).toBeNull();
  });

  it('is nothing once the drill has lost whom or what it speaks of', () => {
    const nobody = 'nobody' as SpotId;
    const [spot] = Object.keys(MIDDLE_FIRST.spots) as SpotId[];
    expect(keptOutcome(drill(), wants)).toBeNull();
    expect(keptOutcome(drill({ kind: 'habitHeld', habit }), [])).toBeNull();
    for (const wanted of [
      { kind: 'levelWithPuck', spot: nobody, atLine: 'centreLine', withinM: 1 },
      { kind: 'caughtBefore', spot: spot!, by: nobody, line: 'centreLine' },
      { kind: 'passArrives', spot: spot!, act: 'none' as ActId },
    ] as const)
      expect(keptOutcome(drill(wanted), wants)).toBeNull();
  });
});
