import type { Follow, Game, Moment } from '@icewright/book';

export type ListedMoment = readonly [id: string, moment: Moment];

/** What the list shows; what is absent hides nothing. */
export interface MomentFilter {
  readonly habit?: string;
  readonly verdict?: Moment['verdict'];
  readonly skater?: string;
  readonly unit?: string;
  readonly strength?: string;
  readonly period?: number;
  readonly by?: string;
  /** Moments of which this came. */
  readonly came?: Follow['step'];
}

export function filterMoments(
  moments: readonly ListedMoment[],
  filter: MomentFilter,
  follows: Game['follows'],
): readonly ListedMoment[] {
  const { came, ...same } = filter;
  const wanted = Object.entries(same).filter(([, value]) => value !== undefined);
  if (wanted.length === 0 && came === undefined) return moments;
  const ofThatCame = new Set<string>(
    Object.values(follows)
      .filter(({ step }) => step === came)
      .map(({ moment }) => moment),
  );
  return moments.filter(
    ([id, moment]) =>
      wanted.every(([field, value]) => moment[field as keyof Moment] === value) &&
      (came === undefined || ofThatCame.has(id)),
  );
}

/** The values of a field that occur, in order; menus offer no others. */
export function seenValues<Field extends 'skater' | 'unit' | 'strength' | 'period' | 'by'>(
  moments: readonly ListedMoment[],
  field: Field,
): NonNullable<Moment[Field]>[] {
  const seen = new Set(moments.map(([, moment]) => moment[field]).filter(value => value && value !== ''));
  return [...seen].sort() as NonNullable<Moment[Field]>[];
}
