import type { Team } from '@icewright/book';
import { useDocuments } from './book.ts';
import { useTeams } from './teams.ts';
import { findThing, hasThing, type Whose, whoseOf } from './whose-page.ts';

/**
 * Whose the page at `path` is. A page of another team must not open under ours: its drill would be counted by our
 * level, its practice would be called off for our skaters, and the ones who must not be hit would be the wrong ones.
 */
export function useWhosePage(path: string, team: Team | undefined): Whose {
  const { teams, teamId } = useTeams();
  const thing = findThing(path);
  const isOurs = thing === null || team === undefined || hasThing(team, thing);
  const others = isOurs ? [] : teams.filter(({ id }) => id !== teamId);
  const views = useDocuments(
    'team',
    others.map(({ id }) => id),
  );
  return isOurs ? { kind: 'ours' } : whoseOf(thing, others, views);
}
