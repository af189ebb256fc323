import type { Drill, Practice } from '@icewright/book';

/** Minutes of one practice that served a habit. */
export interface Practised {
  readonly practiceId: string;
  readonly day: string;
  readonly minutes: number;
}

/**
 * Minutes practised of each habit: those of the blocks whose drill serves it, in practices before `today`, the oldest
 * first. A block serves each of its drill's habits in full: minutes of two habits are not to be added up.
 */
export function practisedOf(
  practices: readonly (readonly [string, Practice])[],
  drills: ReadonlyMap<string, Drill>,
  today: string,
): ReadonlyMap<string, readonly Practised[]> {
  const of = new Map<string, Practised[]>();
  for (const [practiceId, practice] of practices) {
    if (practice.day >= today) continue;
    for (const [habit, minutes] of minutesByHabit(practice, drills)) {
      of.set(habit, [...(of.get(habit) ?? []), { practiceId, day: practice.day, minutes }]);
    }
  }
  return of;
}

/** Minutes of one practice for each habit its drills serve. */
export function minutesByHabit(
  practice: Pick<Practice, 'blocks'>,
  drills: ReadonlyMap<string, Drill>,
): ReadonlyMap<string, number> {
  const minutes = new Map<string, number>();
  for (const block of Object.values(practice.blocks)) {
    const served = block.drill === undefined ? [] : (drills.get(block.drill)?.habits ?? []);
    for (const habit of new Set<string>(served))
      minutes.set(habit, (minutes.get(habit) ?? 0) + block.minutes);
  }
  return minutes;
}
