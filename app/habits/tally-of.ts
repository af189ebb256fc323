import { type HabitTally, habitTally } from '@icewright/engine';
import type { Chance } from './chance.ts';

/** How often it was done, of the chances that can be judged. */
export const tallyOf = (chances: readonly Chance[]): HabitTally =>
  habitTally(chances.flatMap(({ verdict }) => (verdict === 'cannotTell' ? [] : [{ verdict }])));

/** How many of the judged ones were judged by the standard on a freeze. */
export const measuredCountOf = (chances: readonly Chance[]): number =>
  chances.filter(({ verdict, isByMeasure }) => isByMeasure && (verdict === 'done' || verdict === 'missed'))
    .length;
