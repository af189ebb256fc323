import { rosterFromCsv, type TakenRoster, type Team } from '@icewright/book';
import { useState } from 'react';
import { Act } from '../parts/act.tsx';
import { countSaid } from '../parts/figures.ts';
import { FileAct } from '../parts/file-act.tsx';
import { Slip } from '../parts/slip.tsx';
import { edit, endStep } from './book.ts';
import { skatersToPut } from './put-roster.ts';

/** The door a roster file comes in by. What does not fit is refused in one sentence, and nothing is changed. */
export function RosterDoor(props: {
  readonly team: Team;
  readonly teamId: string;
  readonly onClose: () => void;
}) {
  const { team, teamId } = props;
  const [said, setSaid] = useState<{ readonly ok: boolean; readonly words: string } | null>(null);
  /** Of a file with columns that would be left out: that is said first. */
  const [waiting, setWaiting] = useState<{ readonly name: string; readonly roster: TakenRoster } | null>(
    null,
  );
  const look = async (file: File) => {
    const roster = rosterFromCsv(await file.text());
    setWaiting(null);
    if (roster.kind === 'refused') {
      setSaid({ ok: false, words: `${file.name}: ${roster.sentence} Nothing was changed.` });
    } else if (roster.leftOut.length > 0) {
      setSaid(null);
      setWaiting({ name: file.name, roster });
    } else take(roster);
  };
  const take = (roster: TakenRoster) => {
    const { puts, added } = skatersToPut(roster, team);
    endStep(teamId);
    edit(teamId).transact(() => {
      for (const [id, skater] of puts) edit(teamId).set(['skaters', id], skater);
    });
    setWaiting(null);
    setSaid({
      ok: true,
      words: `${countSaid(added, 'skater')} added, ${puts.length - added} brought up to date. Undo takes it back.`,
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
          onFile={file => void look(file)}
        />
        <Act bare onPress={props.onClose}>
          Close
        </Act>
      </span>
      {waiting !== null && (
        <span className="door-said" role="status">
          {waiting.name}: {countSaid(waiting.roster.skaters.length, 'skater')}.{' '}
          {waiting.roster.leftOut.map(head => `“${head}”`).join(', ')}{' '}
          {waiting.roster.leftOut.length === 1 ? 'is' : 'are'} left out: a skater’s line has no such place
          here.{' '}
          {!waiting.roster.saysNoContact &&
            'It does not speak of contact, so nobody’s “no contact” changes. '}
          <Act onPress={() => take(waiting.roster)}>Take the rest in</Act>
        </span>
      )}
      {said !== null && (
        <span className={said.ok ? 'door-said' : 'door-said warm'} role={said.ok ? 'status' : 'alert'}>
          {said.words}
        </span>
      )}
    </Slip>
  );
}
