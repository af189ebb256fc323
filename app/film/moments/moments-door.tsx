import {
  cuesOfVtt,
  type EventTable,
  eventTableOf,
  type Game,
  inOrder,
  type Moment,
  momentsCsv,
  momentsJson,
  momentsVtt,
  readMomentsJson,
  type Team,
  type VttCue,
} from '@icewright/book';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { countSaid } from '../../parts/figures.ts';
import { FileAct } from '../../parts/file-act.tsx';
import { named } from '../../parts/named.ts';
import { saveFile } from '../../parts/save-file.ts';
import { Slip } from '../../parts/slip.tsx';
import type { ListedMoment } from './filter-moments.ts';
import { verdictSaid } from './moment-glyph.tsx';
import { TableDoor } from './table-door.tsx';
import { type TakeInto, type Took, takeCues, takeFile } from './take-moments.ts';

type Chosen =
  | { readonly kind: 'table'; readonly table: EventTable }
  | { readonly kind: 'cues'; readonly cues: readonly VttCue[] };

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
  const [said, setSaid] = useState<{ readonly ok: boolean; readonly words: string }>();
  const refuse = (words: string) => setSaid({ ok: false, words: `${words} Nothing was changed.` });
  const took = (done: Took) => {
    setChosen(undefined);
    setSaid({ ok: true, words: tookWords(done) });
  };
  const take = async (file: File) => {
    setSaid(undefined);
    setChosen(undefined);
    const text = await file.text();
    if (/\.vtt$/i.test(file.name)) {
      const cues = cuesOfVtt(text);
      if ('sentence' in cues) return refuse(`${file.name}: ${cues.sentence}`);
      return setChosen({ kind: 'cues', cues });
    }
    if (/\.json$/i.test(file.name)) {
      const read = readMomentsJson(text, game, team.habits);
      if (read.kind === 'refused') return refuse(`${file.name}: ${read.sentence}`);
      return took(takeFile(into, read.taken));
    }
    const table = eventTableOf(text);
    if ('sentence' in table) return refuse(`${file.name}: ${table.sentence}`);
    setChosen({ kind: 'table', table });
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
          <Act onPress={() => save(momentsVtt(out), 'text/vtt', 'vtt')}>Words for a player (WebVTT)</Act>{' '}
          <Act onPress={() => save(momentsJson(out), 'application/json', 'json')}>
            For another Icewright (JSON)
          </Act>
        </span>
        <span className="slip-acts">
          <span className="q2">In:</span>{' '}
          <FileAct
            says="Choose a file"
            label="A file of moments"
            accept=".csv,.vtt,.json,text/csv,text/vtt,application/json"
            onFile={file => void take(file)}
          />{' '}
          <span className="q3">
            A table of events (CSV), WebVTT, or JSON from here. What is here already stays as it is.
          </span>
        </span>
        {chosen?.kind === 'cues' && (
          <CuesDoor
            cues={chosen.cues}
            team={team}
            onTake={meaning => took(takeCues(into, chosen.cues, meaning))}
          />
        )}
        {said && (
          <span className={said.ok ? 'door-said' : 'door-said warm'} role={said.ok ? 'status' : 'alert'}>
            {said.words}
          </span>
        )}
      </Slip>
      {chosen?.kind === 'table' && (
        <TableDoor table={chosen.table} into={into} hereS={hereS} onTook={took} onRefuse={refuse} />
      )}
    </div>
  );
}

function CuesDoor({
  cues,
  team,
  onTake,
}: {
  readonly cues: readonly VttCue[];
  readonly team: Team;
  readonly onTake: (meaning: Pick<Moment, 'habit' | 'verdict'>) => void;
}) {
  const habits = inOrder(team.habits);
  const [habit, setHabit] = useState(habits[0]?.[0]);
  const [verdict, setVerdict] = useState<Moment['verdict']>('done');
  return (
    <span className="slip-acts">
      <MeaningFields team={team} habit={habit} verdict={verdict} onHabit={setHabit} onVerdict={setVerdict} />{' '}
      <Act
        onPress={() => habit && onTake({ habit, verdict })}
        notNow={habit === undefined ? 'there is no habit yet: write one first, under Habits' : undefined}
      >
        Take {countSaid(cues.length, 'cue')}
      </Act>
    </span>
  );
}

function MeaningFields(props: {
  readonly team: Team;
  readonly habit: Moment['habit'] | undefined;
  readonly verdict: Moment['verdict'];
  readonly onHabit: (habit: Moment['habit']) => void;
  readonly onVerdict: (verdict: Moment['verdict']) => void;
}) {
  return (
    <>
      <select
        aria-label="Habit of all of them"
        value={props.habit ?? ''}
        onChange={event => props.onHabit(event.target.value as Moment['habit'])}
      >
        {inOrder(props.team.habits).map(([id, one]) => (
          <option key={id} value={id}>
            {named(one.title, 'habit')}
          </option>
        ))}
      </select>{' '}
      <select
        aria-label="What was seen in all of them"
        value={props.verdict}
        onChange={event => props.onVerdict(event.target.value as Moment['verdict'])}
      >
        {(['done', 'missed', 'cannotSee'] as const).map(one => (
          <option key={one} value={one}>
            {verdictSaid(one)}
          </option>
        ))}
      </select>
    </>
  );
}

const tookWords = ({ newCount, alreadyCount, outsideCount }: Took): string =>
  [
    `${countSaid(newCount, 'moment')} came in.`,
    alreadyCount > 0 && `${alreadyCount} were here already and stay as they are.`,
    outsideCount > 0 && `${outsideCount} lie after the end of the film and are left out.`,
    newCount > 0 && 'Undo takes them back.',
  ]
    .filter(Boolean)
    .join(' ');

const fileWords = (game: Game): string => [game.day, game.opponent].filter(Boolean).join(' ');
