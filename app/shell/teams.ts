import type { Team } from '@icewright/book';
import { create } from 'zustand';
import { findKeptTeams, type KeptTeams, keepTeams } from './kept-teams.ts';
import { type Answer, findTeams, makeTeam, openDemo, type TeamLine } from './server.ts';

/** Which teams there are, and which one this window works for. Remembered, so that a reload without network finds its team. */

const KEPT_AS = 'icewright.teams';

interface Teams {
  readonly state: 'loading' | 'ready';
  readonly teams: readonly TeamLine[];
  readonly teamId: string | null;
  /** A sentence to show when the last step failed. */
  readonly failed: string | null;
  /** The last change of team was made for the page that is open: it belongs to the team that is now. */
  readonly isForPage: boolean;
}

export const useTeams = create<Teams>(() => ({
  state: 'loading',
  failed: null,
  isForPage: false,
  ...remembered(),
}));

export async function loadTeams(): Promise<void> {
  const answer = await findTeams();
  if (answer.kind === 'none') {
    const kept = useTeams.getState().teamId === null ? await findKeptTeams() : null;
    useTeams.setState({ ...kept, state: 'ready', failed: answer.said });
    return;
  }
  const { teamId } = useTeams.getState();
  const stillThere = answer.value.some(team => team.id === teamId);
  keep({ teams: answer.value, teamId: stillThere ? teamId : findFirst(answer.value) });
}

/**
 * The team to open in a browser that has not chosen yet: the first own one. The invented team is opened by itself only
 * by an address that leads into it; at the front door the first page asks.
 */
function findFirst(teams: readonly TeamLine[]): string | null {
  const own = teams.find(team => !team.demo);
  const demo = location.pathname === '/' ? undefined : teams.find(team => team.demo);
  return (own ?? demo)?.id ?? null;
}

export const startOwnTeam = (start: Pick<Team, 'name' | 'level' | 'rink'>) =>
  open(makeTeam(start), { name: start.name, demo: false });

export const lookRound = () => open(openDemo(), { name: 'Tern Harbour Lanterns', demo: true });

export function changeTeam(teamId: string): void {
  keep({ teams: useTeams.getState().teams, teamId });
}

/** To the team whose page is open, and the page stays open. */
export function goToTeamOfPage(teamId: string): void {
  keep({ teams: useTeams.getState().teams, teamId }, true);
}

/** The list speaks of a team by the name it was made with; the document may know a newer one. */
export function renameTeam(teamId: string, name: string): void {
  const { teams } = useTeams.getState();
  if (teams.some(team => team.id === teamId && team.name !== name)) {
    keep({ teams: teams.map(team => (team.id === teamId ? { ...team, name } : team)), teamId });
  }
}

async function open(asked: Promise<Answer<{ id: string }>>, named: Omit<TeamLine, 'id'>): Promise<boolean> {
  const answer = await asked;
  if (answer.kind === 'none') {
    useTeams.setState({ failed: answer.said });
    return false;
  }
  const team = { ...named, id: answer.value.id };
  const others = useTeams.getState().teams.filter(other => other.id !== team.id);
  keep({ teams: [...others, team], teamId: team.id });
  return true;
}

function keep(kept: KeptTeams, isForPage = false): void {
  useTeams.setState({ ...kept, state: 'ready', failed: null, isForPage });
  localStorage.setItem(KEPT_AS, JSON.stringify(kept));
  void keepTeams(kept);
}

function remembered(): KeptTeams {
  try {
    const kept = JSON.parse(localStorage.getItem(KEPT_AS) ?? 'null') as KeptTeams | null;
    return kept ?? { teams: [], teamId: null };
  } catch {
    return { teams: [], teamId: null };
  }
}
