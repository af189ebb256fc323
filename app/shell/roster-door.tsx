import { newId, rankAtEnd, rosterFromCsv, type Skater, type Team } from '@icewright/book';
import { useState } from 'react';
import { Act } from '../parts/act.tsx';
import { countSaid } from '../parts/figures.ts';
import { FileAct } from '../parts/file-act.tsx';
import { Slip } from '../parts/slip.tsx';
import { edit, endStep } from './book.ts';

/** The door a roster file comes in by. What does not fit is refused in one sentence, and nothing is changed. */
export function RosterDoor(props: {
  readonly team: Team;
  readonly teamId: string;
  readonly onClose: () => void;
}) {
  const { team, teamId } = props;
  const [said, setSaid] = useState<{ readonly ok: boolean; readonly words: string } | null>(null);
  const take = async (file: File) => {
    const roster = rosterFromCsv(await file.text());
    if (roster.kind === 'refused') {
      setSaid({ ok: false, words: `${file.name}: ${roster.sentence} Nothing was changed.` });
      return;
    }
    const { added, changed } = put(roster.skaters, team, teamId);
    setSaid({
      ok: true,
      words: `${countSaid(added, 'skater')} added, ${changed} brought up to date. Undo takes it back.`,
    });
  };
  return (
    <Slip label="Roster from a file" attention={said?.ok === false} onClose={props.onClose}>
      A CSV file whose first line names the columns: number, name, position (F, D or G), and if you like group
      and no contact. A skater with a number that is there already is brought up to date; nobody is taken out.
      <span className="door-example">
        number,name,position,group,no contact
        <br />
        14,Mirembe Okal,F,white,no
      </span>
      <span className="slip-acts">
        <FileAct
          says="Choose the file"
          label="A roster file"
          accept=".csv,text/csv"
          onFile={file => void take(file)}
        />
        <Act bare onPress={props.onClose}>
          Close
        </Act>
      </span>
      {said !== null && (
        <span className={said.ok ? 'door-said' : 'door-said warm'} role={said.ok ? 'status' : 'alert'}>
          {said.words}
        </span>
      )}
    </Slip>
  );
}

function put(skaters: readonly Skater[], team: Team, teamId: string): { added: number; changed: number } {
  const byNumber = new Map(Object.entries(team.skaters).map(([id, skater]) => [skater.number, id]));
  let rank = rankAtEnd(team.skaters);
  let added = 0;
  endStep(teamId);
  edit(teamId).transact(() => {
    for (const skater of skaters) {
      const known = byNumber.get(skater.number);
      const kept = known === undefined ? undefined : team.skaters[known as keyof typeof team.skaters];
      edit(teamId).set(['skaters', known ?? newId<'skater'>()], { ...skater, rank: kept?.rank ?? rank });
      if (kept === undefined) {
        added += 1;
        rank += 1;
      }
    }
  });
  return { added, changed: skaters.length - added };
}
