import { inOrder, type Moment, type Team } from '@icewright/book';
import { Act } from '../parts/act.tsx';
import { named } from '../parts/named.ts';
import { Reading } from '../parts/reading.tsx';
import { edit } from '../shell/book.ts';
import { clockText } from './film-clock.ts';
import { MomentGlyph, verdictSaid } from './moment-glyph.tsx';
import { skaterWords } from './people-words.ts';
import type { ListedMoment } from './pulse-strip.tsx';

/** The moments as a timetable; the chosen one opens below itself to be changed. */
export function MomentList({
  gameId,
  moments,
  team,
  chosen,
  onChoose,
  onFreeze,
  onRemove,
  onBy,
}: {
  readonly gameId: string;
  readonly moments: readonly ListedMoment[];
  readonly team: Team;
  readonly chosen: string | undefined;
  readonly onChoose: (id: string) => void;
  /** Absent where there is no picture to freeze. */
  readonly onFreeze?: (freezeId: string, momentId: string) => void;
  readonly onRemove: (id: string) => void;
  /** The initials that were written: they stand at the next moment too. */
  readonly onBy: (by: string) => void;
}) {
  if (moments.length === 0) {
    return (
      <p className="q2 no-moments">
        No moment is marked in this film yet. <span className="by-key">Press M</span>
        <span className="by-finger">Press “Mark a moment”</span> when you see one.
      </p>
    );
  }
  return (
    <table className="tt moments">
      <thead>
        <tr>
          <th>Clock</th>
          <th>Habit</th>
          <th>
            <span className="vh">Verdict</span>
          </th>
          <th>Who</th>
          <th>What was seen</th>
          <th className="r">Cost</th>
          <th>By</th>
        </tr>
      </thead>
      <tbody>
        {moments.map(([id, moment]) => (
          <MomentRows
            key={id}
            gameId={gameId}
            id={id}
            moment={moment}
            team={team}
            isChosen={chosen === id}
            onChoose={onChoose}
            onFreeze={onFreeze}
            onRemove={onRemove}
            onBy={onBy}
          />
        ))}
      </tbody>
    </table>
  );
}

function MomentRows(props: {
  readonly gameId: string;
  readonly id: string;
  readonly moment: Moment;
  readonly team: Team;
  readonly isChosen: boolean;
  readonly onChoose: (id: string) => void;
  readonly onFreeze?: ((freezeId: string, momentId: string) => void) | undefined;
  readonly onRemove: (id: string) => void;
  /** The initials that were written: they stand at the next moment too. */
  readonly onBy: (by: string) => void;
}) {
  const { id, moment, team, isChosen, onChoose, onFreeze } = props;
  const { freeze } = moment;
  return (
    <>
      <tr aria-selected={isChosen} onClick={() => onChoose(id)}>
        <td>
          <button type="button" className="row-handle" aria-expanded={isChosen} onClick={() => onChoose(id)}>
            {clockText(moment.filmTimeS, 1)}
          </button>
        </td>
        <td className="w">{team.habits[moment.habit]?.title ?? 'a habit no longer here'}</td>
        <td className="nw">
          <MomentGlyph verdict={moment.verdict} />{' '}
          <span className={moment.verdict === 'missed' ? 'warm' : ''}>{verdictSaid(moment.verdict)}</span>
        </td>
        <td>{skaterWords(moment.skater, team)}</td>
        <td className="q2">
          {moment.note}{' '}
          {freeze !== undefined && onFreeze && (
            <button
              type="button"
              className="frz"
              onClick={event => {
                event.stopPropagation();
                onFreeze(freeze, id);
              }}
            >
              freeze
            </button>
          )}
        </td>
        <td className="r">
          {moment.costGoals > 0 && (
            <Reading
              value={moment.costGoals.toFixed(2)}
              estimate
              why="Goals this miss is thought to cost: the coach's own estimate, from the habit, or written here."
            />
          )}
        </td>
        <td className="q3">{moment.by}</td>
      </tr>
      {isChosen && (
        <tr className="moment-edit">
          <td colSpan={7}>
            <MomentEdit {...props} />
          </td>
        </tr>
      )}
    </>
  );
}

function MomentEdit({
  gameId,
  id,
  moment,
  team,
  onRemove,
  onBy,
}: {
  readonly gameId: string;
  readonly id: string;
  readonly moment: Moment;
  readonly team: Team;
  readonly onRemove: (id: string) => void;
  /** The initials that were written: they stand at the next moment too. */
  readonly onBy: (by: string) => void;
}) {
  const game = edit(gameId);
  const at = (field: string) => ['moments', id, field];
  return (
    <div className="moment-fields">
      <label>
        <span className="q2">Habit</span>
        <select value={moment.habit} onChange={event => game.set(at('habit'), event.target.value)}>
          {inOrder(team.habits).map(([habitId, one]) => (
            <option key={habitId} value={habitId}>
              {named(one.title, 'habit')}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span className="q2">Seen</span>
        <select value={moment.verdict} onChange={event => game.set(at('verdict'), event.target.value)}>
          <option value="done">done</option>
          <option value="missed">missed</option>
          <option value="cannotSee">cannot see</option>
        </select>
      </label>
      <label>
        <span className="q2">Who</span>
        <select
          value={moment.skater ?? ''}
          onChange={event =>
            event.target.value === '' ? game.remove(at('skater')) : game.set(at('skater'), event.target.value)
          }
        >
          <option value="">not said</option>
          {inOrder(team.skaters).map(([skaterId, one]) => (
            <option key={skaterId} value={skaterId}>
              {one.number} {one.name}
            </option>
          ))}
        </select>
      </label>
      <label className="grow">
        <span className="q2">What was seen</span>
        <input
          data-book="words"
          value={moment.note}
          maxLength={400}
          onChange={event => game.text(at('note'), event.target.value)}
        />
      </label>
      <label>
        <span className="q2">Cost, goals</span>
        <input
          type="number"
          min={0}
          max={5}
          step={0.01}
          value={moment.costGoals}
          onChange={event =>
            event.target.validity.valid && game.set(at('costGoals'), Number(event.target.value))
          }
        />
      </label>
      <label>
        <span className="q2">By</span>
        <input
          className="by-entry"
          data-book="words"
          value={moment.by}
          maxLength={40}
          onChange={event => {
            game.text(at('by'), event.target.value);
            onBy(event.target.value);
          }}
        />
      </label>
      <Act onPress={() => onRemove(id)}>Take out</Act>
    </div>
  );
}
