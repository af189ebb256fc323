import { create } from 'zustand';
import { useTeams } from '../../shell/teams.ts';
import { ANY, type LibraryQuery } from './library-query.ts';

/** What was asked of each team's drills: opening one of them and coming back asks the same again, until the page is loaded anew. */
const useAsked = create<{ readonly byTeam: Readonly<Record<string, LibraryQuery>> }>(() => ({ byTeam: {} }));

export function useAskedLast(): readonly [LibraryQuery, (query: LibraryQuery) => void] {
  const teamId = useTeams(teams => teams.teamId) ?? '';
  const query = useAsked(({ byTeam }) => byTeam[teamId]) ?? ANY;
  return [query, next => useAsked.setState(({ byTeam }) => ({ byTeam: { ...byTeam, [teamId]: next } }))];
}
