import { type EventReading, type EventTable, isLineOurs, wordsIn } from '@icewright/book';
import { countSaid } from '../../parts/figures.ts';
import './table-whose.css';

const MOST_TEAMS = 12;

/** Whose the lines of a table are: which words of its column are us, and what becomes of the others. */
export function TableWhose({
  table,
  how,
  onChange,
}: {
  readonly table: EventTable;
  readonly how: EventReading;
  readonly onChange: (change: Pick<EventReading, 'ours' | 'others'>) => void;
}) {
  if (how.team === undefined)
    return (
      <p className="q2">No column says whose a line is: all {table.lines.length} lines are taken as ours.</p>
    );
  const { ours = [] } = how;
  const ofOthers = table.lines.filter(line => !isLineOurs(line, how)).length;
  return (
    <div className="table-whose">
      <fieldset>
        <legend className="q2">Ours is</legend>
        {wordsIn(table, how.team)
          .slice(0, MOST_TEAMS)
          .map(([word, count]) => (
            <label key={word}>
              <input
                type="checkbox"
                checked={ours.includes(word)}
                onChange={event =>
                  onChange({
                    ours: event.target.checked ? [...ours, word] : ours.filter(one => one !== word),
                  })
                }
              />{' '}
              <span className="w">{word}</span> <span className="q3">{count} ×</span>
            </label>
          ))}
      </fieldset>
      {ofOthers > 0 && (
        <label>
          <span className="q2">{countSaid(ofOthers, 'line')} not ours</span>{' '}
          <select
            value={how.others ?? 'come'}
            onChange={event => onChange({ others: event.target.value as 'come' | 'leftOut' })}
          >
            <option value="come">in as theirs, counted for nobody until judged</option>
            <option value="leftOut">left out</option>
          </select>
        </label>
      )}
    </div>
  );
}
