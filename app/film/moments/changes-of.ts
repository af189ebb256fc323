import { inOrder, SEEN, type Team } from '@icewright/book';
import { named } from '../../parts/named.ts';
import { STRENGTHS } from './situation-fields.tsx';

/** What can be said of many moments at once. */
export const CHANGES = {
  habit: 'habit',
  verdict: 'what was seen',
  skater: 'who',
  unit: 'our unit',
  strength: 'strength',
  period: 'period',
  score: 'score then',
  costGoals: 'cost, goals',
  by: 'marked by',
} as const;

export type ChangeField = keyof typeof CHANGES;

/** Takes back what was said. */
export const NOT_SAID = '-';

/** What the list of choices offers; undefined where it is typed. */
export function choicesOf(field: ChangeField, team: Team): (readonly [string, string])[] | undefined {
  const notSaid = [NOT_SAID, 'not said'] as const;
  switch (field) {
    case 'habit':
      return inOrder(team.habits).map(([id, one]) => [id, named(one.title, 'habit')]);
    case 'verdict':
      return Object.entries(SEEN);
    case 'skater':
      return [
        ...inOrder(team.skaters).map(([id, one]) => [id, `${one.number} ${one.name}`] as const),
        notSaid,
      ];
    case 'unit':
      return [...inOrder(team.units).map(([id, one]) => [id, named(one.title, 'unit')] as const), notSaid];
    case 'strength':
      return [...STRENGTHS.map(one => [one, one] as const), notSaid];
    case 'period':
      return [...['1', '2', '3', '4'].map(one => [one, one === '4' ? 'overtime' : one] as const), notSaid];
    default:
      return undefined;
  }
}

/** The figures that are typed, and how far they go; undefined where words are typed or chosen. */
export const numberRange = (
  field: ChangeField,
): { readonly says: readonly string[]; readonly max: number; readonly step: number } | undefined =>
  field === 'score'
    ? { says: ['Goals of ours then', 'Goals of theirs then'], max: 99, step: 1 }
    : field === 'costGoals'
      ? { says: ['Goals it cost'], max: 5, step: 0.01 }
      : undefined;

/** The value that is written, undefined for none any more; undefined altogether while it stays as it is. */
export function changesOf(
  field: ChangeField,
  typed: readonly (string | undefined)[],
): { readonly value: unknown } | undefined {
  const [first = '', second = ''] = typed;
  if (first === '') return undefined;
  if (field === 'score')
    return second === '' ? undefined : { value: { us: Number(first), them: Number(second) } };
  if (first === NOT_SAID && field !== 'by') return { value: undefined };
  return { value: field === 'period' || field === 'costGoals' ? Number(first) : first };
}
