import type { MomentKey, Team } from '@icewright/book';
import { named } from '../../parts/named.ts';
import { skaterWords } from '../people-words.ts';
import { verdictSaid } from './moment-glyph.tsx';

/** A key that marks a moment names a habit; one without says only how the game stands from then on. */
export type MarkingKey = MomentKey & { readonly habit: NonNullable<MomentKey['habit']> };

export const isMarking = (key: MomentKey): key is MarkingKey => key.habit !== undefined;

/** What a key says besides: who, how many are on the ice, which unit. */
export const saysBesides = ({ skater, strength, unit }: MomentKey, team: Team): string[] =>
  [
    skater ? skaterWords(skater, team) : '',
    strength ?? '',
    unit ? named(team.units[unit]?.title ?? 'a unit no longer here', 'unit') : '',
  ].filter(one => one !== '');

export const keyWords = (one: MomentKey, team: Team): string => {
  const besides = saysBesides(one, team);
  if (!isMarking(one)) return besides.length > 0 ? `from now on ${besides.join(', ')}` : 'says nothing yet';
  const habit = named(team.habits[one.habit]?.title ?? 'a habit no longer here', 'habit');
  return [`${habit}: ${verdictSaid(one.verdict)}`, ...besides].join(', ');
};
