import { useState } from 'react';
import { Act } from '../parts/act.tsx';
import { StartOwnTeam } from './start-own-team.tsx';
import { lookRound, useTeams } from './teams.ts';

/** The very first page: what this is, what comes before it, and two ways in. */
export function FirstStart() {
  const failed = useTeams(teams => teams.failed);
  const [isNaming, setNaming] = useState(false);
  const [isWorking, setWorking] = useState(false);
  return (
    <main className="first-start">
      <h1 className="w">Icewright</h1>
      <p className="w first-says">
        Film, ice, drill, practice, next game: one bench for the staff of one team.
      </p>
      <ul className="w cautions">
        <li>What it says is an estimate, and each figure can be asked why.</li>
        <li>Collisions, boards and shots hurt people: look at a drill's findings before you run it.</li>
        <li>Coaching and rules come first: rink, federation, medical, safeguarding.</li>
        <li>Nothing leaves this machine unless you share it. Film of minors stays where it lies.</li>
      </ul>
      {isNaming ? (
        <StartOwnTeam />
      ) : (
        <p className="first-acts">
          <Act lead onPress={() => setNaming(true)}>
            Name your team
          </Act>
          <Act
            working={isWorking}
            onPress={async () => {
              setWorking(true);
              await lookRound();
              setWorking(false);
            }}
          >
            Look round with the Lanterns
          </Act>
        </p>
      )}
      <p className="cap">The Lanterns are made up, and so is everyone they play.</p>
      {failed !== null && (
        <p className="warm" role="alert">
          {failed}
        </p>
      )}
    </main>
  );
}
