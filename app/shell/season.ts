import type { DocumentKind, DocumentOf, Drill, Entry, Game, Practice, Team } from '@icewright/book';
import { useMemo } from 'react';
import { useDocuments, type View } from './book.ts';

/** Everything the team has, opened: for what is counted over many games and practices. By day, the oldest first. */
export interface Season {
  readonly games: readonly (readonly [string, Game])[];
  readonly practices: readonly (readonly [string, Practice])[];
  /** Those taken out of the library too: what was practised with them was practised, and their cautions stand. */
  readonly drills: ReadonlyMap<string, Drill>;
  /** Some are still being opened; counts are not final. */
  readonly isOpening: boolean;
  /** Documents that could not be read; they are left out of every count, and a page says so. */
  readonly unreadCount: number;
}

export function useSeason(team: Team): Season {
  const ids = useMemo(() => idsOf(team), [team]);
  const games = useDocuments('game', ids.game);
  const practices = useDocuments('practice', ids.practice);
  const drills = useDocuments('drill', ids.drill);
  return useMemo(() => {
    const all = [...games.values(), ...practices.values(), ...drills.values()];
    return {
      games: byDay(readyOf('game', games)),
      practices: byDay(readyOf('practice', practices)),
      drills: new Map(readyOf('drill', drills)),
      isOpening: all.some(view => view.state === 'loading'),
      unreadCount: all.filter(view => view.state === 'refused' || view.state === 'missing').length,
    };
  }, [games, practices, drills]);
}

/** Of one kind, those not taken out of the list: the newest day first. */
export const entriesOf = (team: Team, kind: Entry['kind']): [string, Entry][] =>
  entriesWhere(team, kind, entry => !entry.removed);

/** Of one kind, those taken out of the list: the newest day first. */
export const entriesTakenOut = (team: Team, kind: Entry['kind']): [string, Entry][] =>
  entriesWhere(team, kind, entry => entry.removed);

function entriesWhere(
  { contents }: Team,
  kind: Entry['kind'],
  holds: (entry: Entry) => boolean,
): [string, Entry][] {
  return Object.entries(contents)
    .filter(([, entry]) => entry.kind === kind && holds(entry))
    .sort(([idA, a], [idB, b]) => b.day.localeCompare(a.day) || idA.localeCompare(idB));
}

function idsOf(team: Team): Record<'game' | 'practice' | 'drill', readonly string[]> {
  const of = (entries: readonly [string, Entry][]) => entries.map(([id]) => id);
  return {
    game: of(entriesOf(team, 'game')),
    practice: of(entriesOf(team, 'practice')),
    drill: of(entriesWhere(team, 'drill', () => true)),
  };
}

function readyOf<Kind extends DocumentKind>(
  kind: Kind,
  views: ReadonlyMap<string, View<Kind>>,
): [string, DocumentOf<Kind>][] {
  return [...views].flatMap(([id, view]) =>
    view.state === 'ready' && view.value.kind === kind
      ? [[id, view.value] as [string, DocumentOf<Kind>]]
      : [],
  );
}

const byDay = <Value extends { readonly day: string }>(list: [string, Value][]): [string, Value][] =>
  list.sort(([, a], [, b]) => a.day.localeCompare(b.day));
