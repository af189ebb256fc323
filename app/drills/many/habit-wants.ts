import type { Drill, Team } from '@icewright/book';
import {
  findLineOf,
  type Id,
  lineWords,
  type Outcome,
  type OutcomeWords,
  outcomeWords,
  wantKeyOf,
} from '@icewright/engine';
import { writtenStandardOf } from '../../habits/written-standard.ts';
import { named } from '../../parts/named.ts';

/** That a habit is held, by its own standard. */
export interface HabitWant {
  readonly habit: Id<'habit'>;
  readonly title: string;
  readonly outcome: Outcome;
}

/** What the habits that the drill serves want of it, in the order in which the drill has them; each standard once. */
export const habitWantsOf = (served: Drill['habits'], habits: Team['habits']): readonly HabitWant[] => {
  const wants = new Map<string, HabitWant>();
  for (const id of served) {
    const habit = habits[id];
    if (habit === undefined || !habit.kept) continue;
    const standard = writtenStandardOf(habit);
    if (standard === undefined) continue;
    const outcome: Outcome = { kind: 'standardHeld', standard };
    const key = wantKeyOf(outcome);
    if (!wants.has(key)) wants.set(key, { habit: id, title: named(habit.title, 'habit'), outcome });
  }
  return [...wants.values()];
};

/** The words of what is wanted; a habit is called by its title. */
export const wantWords = (outcome: Outcome, drill: Drill, wants: readonly HabitWant[]): OutcomeWords => {
  const words = outcomeWords(outcome, drill);
  const key = wantKeyOf(outcome);
  const habit = wants.find(want => wantKeyOf(want.outcome) === key);
  if (habit === undefined) return words;
  return { ...words, want: `${habit.title} is held`, where: `Where who decides “${habit.title}” was` };
};

/** What is wanted as one clause, with the line before which it is. */
export const wantClause = (outcome: Outcome, drill: Drill, wants: readonly HabitWant[]): string => {
  const { want, beforeLine } = wantWords(outcome, drill, wants);
  const line = findLineOf(outcome);
  return line === undefined ? want : `${want} ${beforeLine} ${lineWords(line, drill)}`;
};
