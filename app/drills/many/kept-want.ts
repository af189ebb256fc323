import type { Drill, DrillWant } from '@icewright/book';
import { type Outcome, wantKeyOf } from '@icewright/engine';
import type { HabitWant } from './habit-wants.ts';

/** What was chosen, as the document keeps it: a habit by its name, so that it is held by its standard of today. */
export const wantToKeep = (outcome: Outcome, habitWants: readonly HabitWant[]): DrillWant | null => {
  if (outcome.kind !== 'standardHeld') return outcome;
  const habit = habitWants.find(want => wantKeyOf(want.outcome) === wantKeyOf(outcome))?.habit;
  return habit === undefined ? null : { kind: 'habitHeld', habit };
};

/** What the document keeps, as it can be asked of the drill; null where the drill has lost what it speaks of. */
export const keptOutcome = (
  { wanted, spots }: Pick<Drill, 'wanted' | 'spots'>,
  habitWants: readonly HabitWant[],
): Outcome | null => {
  if (wanted === undefined) return null;
  switch (wanted.kind) {
    case 'habitHeld':
      return habitWants.find(want => want.habit === wanted.habit)?.outcome ?? null;
    case 'passArrives':
    case 'cueInTime':
      return spots[wanted.spot]?.acts[wanted.act] === undefined ? null : wanted;
    case 'caughtBefore':
      return spots[wanted.spot] === undefined || (wanted.by !== undefined && spots[wanted.by] === undefined)
        ? null
        : wanted;
    case 'levelWithPuck':
      return spots[wanted.spot] === undefined ? null : wanted;
    case 'puckRegained':
      return wanted;
  }
};
