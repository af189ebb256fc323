import type { Drill } from '@icewright/book';
import { levelOf } from '@icewright/engine';
import { countSaid } from '../../parts/figures.ts';
import type { People } from './people-of.ts';

/** Who skates, for the head of a figure. */
export const whoSaid = (drill: Drill, people: People): string => {
  if (people.count === 0) return levelOf(drill.level).words.toLowerCase();
  if (drill.people?.as === 'named') return `${countSaid(people.count, 'timed skater')} of ours by name`;
  return `our ${countSaid(people.count, 'timed skater')} in turn`;
};
