import { useState } from 'react';
import { Act } from '../parts/act.tsx';
import { FileAct } from '../parts/file-act.tsx';
import { saveFile } from '../parts/save-file.ts';
import { askOfTeamFile, findTeamFile, type TeamFileTold, takeInTeam, teamFileAddressOf } from './server.ts';
import './team-file.css';
import { changeTeam, loadTeams } from './teams.ts';

/** The whole team out as one open file, and a team in from one. Films stay where they lie. */
export function TeamFile({ teamId }: { readonly teamId: string }) {
  const [refused, setRefused] = useState<string | null>(null);
  const [asked, setAsked] = useState<(TeamFileTold & { readonly file: File }) | null>(null);
  const take = async (file: File) => {
    setAsked(null);
    const answer = await takeInTeam(await file.text());
    if (answer.kind === 'none') return setRefused(`${file.name}: ${answer.said}`);
    setRefused(null);
    await loadTeams();
    changeTeam(answer.value.id);
  };
  // A team that is nowhere here comes in at once; where something of it is here, what will happen is said first.
  const ask = async (file: File) => {
    setAsked(null);
    setRefused(null);
    const told = await askOfTeamFile(await file.text());
    if (told.kind === 'none') return setRefused(`${file.name}: ${told.said}`);
    if (!told.value.isHere) return take(file);
    setAsked({ ...told.value, file });
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
        onFile={file => void ask(file)}
      />
      {asked !== null && (
        <span className="team-file-asked" role="status">
          <span>{asked.said}</span>
          {asked.hasNews && <Act onPress={() => void take(asked.file)}>Take it in</Act>}
          <Act bare onPress={() => setAsked(null)}>
            {asked.hasNews ? 'Leave it' : 'Good'}
          </Act>
        </span>
      )}
      {refused !== null && (
        <span className="warm b" role="alert">
          {refused}
        </span>
      )}
    </>
  );
}
