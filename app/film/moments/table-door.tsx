import {
  type ClockTie,
  type EventReading,
  type EventTable,
  inOrder,
  type Moment,
  readEventTable,
  wordsIn,
} from '@icewright/book';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { named } from '../../parts/named.ts';
import { clockText } from '../film-clock.ts';
import { rinkOfSheet, sheetOfGame } from '../fit-of-freeze.ts';
import { verdictSaid } from './moment-glyph.tsx';
import { readingFor, rememberReading } from './remembered-reading.ts';
import { TableWhose } from './table-whose.tsx';
import { type TakeInto, type Took, takeTable } from './take-moments.ts';
import { oursAmong } from './whose-lines.ts';

const MOST_WORDS = 24;
const MOST_LINES = 200;

/** How a table of events is read: which column is what, what its words mean here, and how its clock meets the film. */
export function TableDoor({
  table,
  by,
  into,
  hereS,
  onTook,
  onRefuse,
  onLeave,
}: {
  readonly table: EventTable;
  /** Signs the moments: a table's own file. */
  readonly by: string;
  readonly into: TakeInto;
  readonly hereS: () => number;
  readonly onTook: (took: Took) => void;
  readonly onRefuse: (sentence: string) => void;
  readonly onLeave: () => void;
}) {
  const { game, team } = into;
  const [how, setHow] = useState(() => readingFor(table, game, team));
  const [ties, setTies] = useState<readonly ClockTie[]>([]);
  const [line, setLine] = useState(0);
  const set = (field: keyof EventReading, value: unknown) => {
    const { [field]: _, ...rest } = how;
    setHow((value === undefined ? rest : { ...rest, [field]: value }) as EventReading);
  };
  const words = wordsIn(table, how.what).slice(0, MOST_WORDS);
  const take = () => {
    const read = readEventTable(table, how, ties);
    if (read.kind === 'refused') return onRefuse(read.sentence);
    rememberReading(table, how);
    onTook(takeTable(into, read.moments, by));
  };
  const column = (
    label: string,
    field: 'time' | 'what' | 'period' | 'skater' | 'team' | 'note' | 'x' | 'y',
  ) => (
    <label>
      <span className="q2">{label}</span>
      <select
        value={how[field] ?? ''}
        onChange={event => {
          const value = event.target.value === '' ? undefined : Number(event.target.value);
          set(field, value);
          if (field === 'team' && value !== undefined)
            setHow(now => ({ ...now, ours: oursAmong(table, value, undefined, game, team) }));
        }}
      >
        {field !== 'time' && field !== 'what' && <option value="">not there</option>}
        {table.heads.map((head, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a column of a file is its place
          <option key={`${i} ${head}`} value={i}>
            {head || `column ${i + 1}`}
          </option>
        ))}
      </select>
    </label>
  );
  const waits =
    Object.keys(how.means).length === 0
      ? 'say first what one of its words means'
      : how.team !== undefined && !how.ours?.length
        ? 'say first which team is ours'
        : ties.length === 0
          ? 'say first which line happens at the picture shown'
          : undefined;
  const sheet = rinkOfSheet(sheetOfGame(game, team)).boards;
  const lineWords = (i: number) =>
    `${i + 2}: ${[table.lines[i]?.[how.period ?? -1], table.lines[i]?.[how.time], table.lines[i]?.[how.what]].filter(Boolean).join(' ')}`;
  return (
    <div className="table-door">
      <div className="moment-fields">
        {column('Time', 'time')}
        <label>
          <span className="q2">Its clock</span>
          <select value={how.clock} onChange={event => set('clock', event.target.value)}>
            <option value="whole">runs through</option>
            <option value="periodUp">counts each period up</option>
            <option value="periodDown">counts each period down</option>
          </select>
        </label>
        {column('Period', 'period')}
        {column('What happened', 'what')}
        {column('Number of the skater', 'skater')}
        {column('Team', 'team')}
        {column('Note', 'note')}
        {column('x', 'x')}
        {column('y', 'y')}
        <label>
          <span className="q2">x and y in</span>
          <select value={how.unit} onChange={event => set('unit', event.target.value)}>
            <option value="feet">feet</option>
            <option value="metres">metres</option>
          </select>
        </label>
        <label>
          <span className="q2">counted from</span>
          <select
            value={how.origin === 'centre' ? 'centre' : 'corner'}
            onChange={event =>
              set(
                'origin',
                event.target.value === 'centre' ? 'centre' : { lengthM: sheet.lengthM, widthM: sheet.widthM },
              )
            }
          >
            <option value="centre">centre ice</option>
            <option value="corner">a corner of the sheet</option>
          </select>
        </label>
        <label>
          <span className="q2">and lie</span>
          <select
            value={how.turned ?? ''}
            onChange={event => set('turned', event.target.value === '' ? undefined : event.target.value)}
          >
            <option value="">on the sheet as they stand</option>
            <option value="even">turned round in even periods</option>
            <option value="odd">turned round in odd periods</option>
          </select>
        </label>
      </div>
      <TableWhose table={table} how={how} onChange={change => setHow({ ...how, ...change })} />
      <p className="q2">What its words mean here; what means nothing is left out.</p>
      <ul className="table-words">
        {words.map(([word, count]) => (
          <li key={word}>
            <span className="w">{word}</span> <span className="q3">{count} ×</span>{' '}
            <MeaningSelect
              word={word}
              into={into}
              meaning={how.means[word]}
              onMeaning={meaning => {
                const { [word]: _, ...rest } = how.means;
                set('means', meaning ? { ...rest, [word]: meaning } : rest);
              }}
            />
          </li>
        ))}
      </ul>
      <p className="table-tie">
        <label>
          <span className="q2">Line</span>{' '}
          <select value={line} onChange={event => setLine(Number(event.target.value))}>
            {table.lines.slice(0, MOST_LINES).map((_, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a line of a file is nothing but its place
              <option key={i} value={i}>
                {lineWords(i)}
              </option>
            ))}
          </select>
        </label>{' '}
        <Act
          onPress={() => setTies([...ties.filter(tie => tie.line !== line), { line, filmTimeS: hereS() }])}
        >
          happens at the picture shown
        </Act>{' '}
        {ties.map(tie => (
          <span key={tie.line} className="q2">
            Line {tie.line + 2} at {clockText(tie.filmTimeS)}.{' '}
          </span>
        ))}
        <span className="q3">
          A clock that stands at whistles is right up to the next one: say one line after each.
        </span>
      </p>
      <p className="table-acts">
        <Act onPress={take} notNow={waits}>
          Take the moments
        </Act>{' '}
        <Act bare onPress={onLeave}>
          Cancel
        </Act>
        {waits && (
          <span className="q2" aria-hidden="true">
            {' '}
            {waits}
          </span>
        )}
      </p>
    </div>
  );
}

function MeaningSelect({
  word,
  into,
  meaning,
  onMeaning,
}: {
  readonly word: string;
  readonly into: TakeInto;
  readonly meaning: Pick<Moment, 'habit' | 'verdict'> | undefined;
  readonly onMeaning: (meaning: Pick<Moment, 'habit' | 'verdict'> | undefined) => void;
}) {
  return (
    <select
      aria-label={`What ${word} means`}
      value={meaning === undefined ? '' : `${meaning.habit} ${meaning.verdict}`}
      onChange={event => {
        const [habit, verdict] = event.target.value.split(' ');
        onMeaning(
          habit && verdict
            ? { habit: habit as Moment['habit'], verdict: verdict as Moment['verdict'] }
            : undefined,
        );
      }}
    >
      <option value="">left out</option>
      {inOrder(into.team.habits).flatMap(([id, one]) =>
        (['done', 'missed'] as const).map(verdict => (
          <option key={`${id} ${verdict}`} value={`${id} ${verdict}`}>
            {named(one.title, 'habit')}: {verdictSaid(verdict)}
          </option>
        )),
      )}
    </select>
  );
}
