import { create } from 'zustand';
import { type Answer, findTeams, makeTeam, openDemo, type TeamLine } from './server.ts';

/** Which teams there are, and which one this window works for. Remembered, so that a reload without network finds its team. */

const KEPT_AS = 'icewright.teams';

interface Teams {
  readonly state: 'loading' | 'ready';
  readonly teams: readonly TeamLine[];
  readonly teamId: string | null;
  /** A sentence to show when the last step failed. */
  readonly failed: string | null;
}

export const useTeams = create<Teams>(() => ({ state: 'loading', failed: null, ...remembered() }));

export async function loadTeams(): Promise<void> {
  const answer = await findTeams();
  if (answer.kind === 'none') {
    useTeams.setState({ state: 'ready', failed: answer.said });
    return;
  }
  const { teamId } = useTeams.getState();
  const stillThere = answer.value.some(team => team.id === teamId);
  keep({ teams: answer.value, teamId: stillThere ? teamId : (answer.value[0]?.id ?? null) });
}

export const startOwnTeam = (name: string) => open(makeTeam(name));

export const lookRound = () => open(openDemo());

export function changeTeam(teamId: string): void {
  keep({ teams: useTeams.getState().teams, teamId });
}

/** The list speaks of a team by the name it was made with; the document may know a newer one. */
export function renameTeam(teamId: string, name: string): void {
  const { teams } = useTeams.getState();
  if (teams.some(team => team.id === teamId && team.name !== name)) {
    keep({ teams: teams.map(team => (team.id === teamId ? { ...team, name } : team)), teamId });
  }
}

async function open(asked: Promise<Answer<TeamLine>>): Promise<boolean> {
  const answer = await asked;
  if (answer.kind === 'none') {
    useTeams.setState({ failed: answer.said });
    return false;
  }
  const team = answer.value;
  const others = useTeams.getState().teams.filter(other => other.id !== team.id);
  keep({ teams: [...others, team], teamId: team.id });
  return true;
}

function keep(kept: { teams: readonly TeamLine[]; teamId: string | null }): void {
  useTeams.setState({ ...kept, state: 'ready', failed: null });
  localStorage.setItem(KEPT_AS, JSON.stringify(kept));
}

function remembered(): { teams: readonly TeamLine[]; teamId: string | null } {
  try {
    const kept = JSON.parse(localStorage.getItem(KEPT_AS) ?? 'null') as {
      teams: TeamLine[];
      teamId: string | null;
    } | null;
    return kept ?? { teams: [], teamId: null };
  } catch {
    return { teams: [], teamId: null };
  }
}
