import { useRef, useState } from 'react';
import { Act } from '../parts/act.tsx';
import { saveFile } from '../parts/save-file.ts';
import { findTeamFile, takeInTeam, teamFileAddressOf } from './server.ts';
import { changeTeam, loadTeams } from './teams.ts';

/** The whole team out as one open file, and a team in from one. Films stay where they lie. */
export function TeamFile({ teamId }: { readonly teamId: string }) {
  const input = useRef<HTMLInputElement>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const take = async (file: File | undefined) => {
    if (file === undefined) return;
    const answer = await takeInTeam(await file.text());
    if (answer.kind === 'none') {
      setRefused(`${file.name}: ${answer.said}`);
      return;
    }
    await loadTeams();
    changeTeam(answer.value.id);
  };
  const give = async () => {
    const answer = await findTeamFile(teamId);
    if (answer.kind === 'none') return setRefused(answer.said);
    setRefused(null);
    saveFile(answer.value.bytes, answer.value.fileName);
  };
  return (
    <>
      <a
        className="act"
        href={teamFileAddressOf(teamId)}
        download
        onClick={event => {
          // Fetched, not followed: a refusal is then a sentence here and not a failed download.
          event.preventDefault();
          void give();
        }}
      >
        Take the team out as a file
      </a>
      <input
        ref={input}
        type="file"
        accept=".json,application/json"
        className="vh"
        tabIndex={-1}
        aria-label="A team file"
        onChange={event => {
          void take(event.target.files?.[0]);
          event.target.value = '';
        }}
      />
      <Act onPress={() => input.current?.click()}>Bring a team in from a file</Act>
      {refused !== null && (
        <span className="warm b" role="alert">
          {refused}
        </span>
      )}
    </>
  );
}
