import {
  type EventTable,
  type Game,
  momentsCsv,
  momentsJson,
  momentsVtt,
  type VttCue,
} from '@icewright/book';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { countSaid } from '../../parts/figures.ts';
import { FileAct } from '../../parts/file-act.tsx';
import { saveFile } from '../../parts/save-file.ts';
import { Slip } from '../../parts/slip.tsx';
import { clockText } from '../film-clock.ts';
import { CuesDoor } from './cues-door.tsx';
import type { ListedMoment } from './filter-moments.ts';
import { readMomentsFile, signed } from './read-moments-file.ts';
import { areStillHere } from './still-here.ts';
import { TableDoor } from './table-door.tsx';
import { type TakeInto, type Took, takeCues, takeFile } from './take-moments.ts';

type Chosen = { readonly by: string } & (
  | { readonly kind: 'table'; readonly table: EventTable }
  | { readonly kind: 'cues'; readonly cues: readonly VttCue[] }
);

interface Said {
  readonly ok: boolean;
  readonly words: string;
  /** The moments that came in, where any did. */
  readonly came?: readonly string[];
}

/** The door for moments: out as a table, as cues of the film or for another Icewright; in from the same. */
export function MomentsDoor({
  into,
  shown,
  hereS,
  onClose,
}: {
  readonly into: TakeInto;
  readonly shown: readonly ListedMoment[];
  /** Time of the picture that is shown. */
  readonly hereS: () => number;
  readonly onClose: () => void;
}) {
  const { game, team } = into;
  const [chosen, setChosen] = useState<Chosen>();
  const [told, setSaid] = useState<Said>();
  // Undo takes the moments back, and with them what was said of their coming.
  const said = told?.came && !areStillHere(told.came, game) ? undefined : told;
  const refuse = (words: string) => setSaid({ ok: false, words: `${words} Nothing was changed.` });
  const took = (done: Took) => {
    setChosen(undefined);
    const { newIds } = done;
    setSaid({ ok: true, words: tookWords(done), ...(newIds.length > 0 ? { came: newIds } : {}) });
  };
  const take = async (file: File) => {
    setSaid(undefined);
    setChosen(undefined);
    const read = readMomentsFile(file.name, await file.text(), into);
    if (read.kind === 'refused') return refuse(`${file.name}: ${read.sentence}`);
    if (read.kind === 'moments') return took(takeFile(into, read.taken));
    setChosen({ ...read, by: signed(file.name) });
  };
  const out = { game, team, ids: shown.map(([id]) => id) };
  const save = (words: string, type: string, ending: string) =>
    saveFile(new Blob([words], { type }), `${fileWords(game)} moments.${ending}`);
  return (
    <div className="moments-door">
      <Slip label="Moments in and out" attention={said?.ok === false} onClose={onClose}>
        <span className="slip-acts">
          <span className="q2">Out, the {countSaid(shown.length, 'moment')} shown:</span>{' '}
          <Act onPress={() => save(momentsCsv(out), 'text/csv', 'csv')}>A table (CSV)</Act>{' '}
          <Act onPress={() => save(momentsVtt(out), 'text/vtt', 'vtt')}>Words for the film (WebVTT)</Act>{' '}
          <Act onPress={() => save(momentsJson(out), 'application/json', 'json')}>
            For another Icewright (JSON)
          </Act>
        </span>
        <span className="slip-acts">
          <span className="q2">In:</span>{' '}
          {into.knownToS === undefined ? (
            <FileAct
              says="Choose a file"
              label="A file of moments"
              accept=".csv,.vtt,.json,text/csv,text/vtt,application/json"
              onFile={file => void take(file)}
            />
          ) : (
            <span className="q2" role="status">
              once the film is looked through, so that each has its frame: so far to{' '}
              {clockText(into.knownToS, 0)}.
            </span>
          )}{' '}
          <span className="q3">
            What went out here comes in again as it was; a table of events from elsewhere (CSV) and WebVTT are
            asked about. What is here already stays as it is.
          </span>
        </span>
        {chosen?.kind === 'cues' && (
          <CuesDoor
            cues={chosen.cues}
            team={team}
            onTake={meaning => took(takeCues(into, chosen.cues, meaning, chosen.by))}
            onLeave={() => setChosen(undefined)}
          />
        )}
        {said && (
          <span className={said.ok ? 'door-said' : 'door-said warm'} role={said.ok ? 'status' : 'alert'}>
            {said.words}
          </span>
        )}
      </Slip>
      {chosen?.kind === 'table' && (
        <TableDoor
          table={chosen.table}
          by={chosen.by}
          into={into}
          hereS={hereS}
          onTook={took}
          onRefuse={refuse}
          onLeave={() => setChosen(undefined)}
        />
      )}
    </div>
  );
}

const tookWords = ({ newIds, alreadyCount, outsideCount, unknown }: Took): string =>
  [
    `${countSaid(newIds.length, 'moment')} came in.`,
    alreadyCount > 0 && `${alreadyCount} were here already and stay as they are.`,
    outsideCount > 0 && `${outsideCount} lie after the end of the film and are left out.`,
    unknown.length > 0 && `Not on this team, and left unsaid: ${unknown.join(', ')}.`,
    newIds.length > 0 && 'Undo takes them back.',
  ]
    .filter(Boolean)
    .join(' ');

const fileWords = (game: Game): string => [game.day, game.opponent].filter(Boolean).join(' ');
