import { useState } from 'react';
import { FileAct } from '../parts/file-act.tsx';
import { saveFile } from '../parts/save-file.ts';
import { findTeamFile, takeInTeam, teamFileAddressOf } from './server.ts';
import { changeTeam, loadTeams } from './teams.ts';

/** The whole team out as one open file, and a team in from one. Films stay where they lie. */
export function TeamFile({ teamId }: { readonly teamId: string }) {
  const [refused, setRefused] = useState<string | null>(null);
  const take = async (file: File) => {
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
      <FileAct
        says="Bring a team in from a file"
        label="A team file"
        accept=".json,application/json"
        onFile={file => void take(file)}
      />
      {refused !== null && (
        <span className="warm b" role="alert">
          {refused}
        </span>
      )}
    </>
  );
}
