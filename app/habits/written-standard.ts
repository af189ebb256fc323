import type { Habit } from '@icewright/book';
import type { Standard } from '@icewright/engine';

/** The standard that somebody wrote for a habit; none while it is judged by eye alone. What its document holds then is where writing begins. */
export const writtenStandardOf = (habit: Pick<Habit, 'standard' | 'byEye'>): Standard | undefined =>
  habit.byEye === true ? undefined : habit.standard;

export const NOT_WRITTEN_SAID = 'by eye: its standard is not written yet';
