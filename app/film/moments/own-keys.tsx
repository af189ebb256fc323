import { inOrder, type MomentKey, newId, type Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { named } from '../../parts/named.ts';
import { edit, endStep } from '../../shell/book.ts';
import { useTeams } from '../../shell/teams.ts';
import { FILM_LETTERS } from '../film-keys.ts';
import { FOLLOW_STEPS } from './follow-words.ts';
import { verdictSaid } from './moment-glyph.tsx';

/** The film's own letters, G with which the places begin, and the figures that say what came of a moment. */
const TAKEN = new Set([...FILM_LETTERS, 'g', ...FOLLOW_STEPS.map((_, i) => `${i + 1}`)]);
const FREE = [...'qwertyuiopasdfghjklzxcvbnm1234567890'].filter(key => !TAKEN.has(key));

/** The coach's own keys: one press keeps the seconds around it. */
export function OwnKeys({
  team,
  onPress,
}: {
  readonly team: Team;
  /** By finger or mouse, as the key does. */
  readonly onPress: (key: MomentKey) => void;
}) {
  const [isChanging, setChanging] = useState(false);
  const keys = inOrder(team.momentKeys);
  return (
    <section className="sec own-keys" aria-label="Keys of your own">
      <h2>
        Keys of your own <span className="q3">one press keeps the seconds around it</span>
      </h2>
      {keys.length === 0 && !isChanging && <p className="q2">None yet: a letter, a habit, what was seen.</p>}
      {isChanging ? (
        <KeysTable team={team} keys={keys} />
      ) : (
        <ul className="key-list">
          {keys.map(([id, one]) => (
            <li key={id}>
              <button type="button" className="key-press" onClick={() => onPress(one)}>
                <kbd>{one.key.toUpperCase()}</kbd> <span className="w">{keyWords(one, team)}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      <Act opens={isChanging} onPress={() => setChanging(!isChanging)}>
        {isChanging ? 'Done' : keys.length === 0 ? 'Make a key' : 'Change keys'}
      </Act>
    </section>
  );
}

export const keyWords = (one: MomentKey, team: Team): string =>
  `${named(team.habits[one.habit]?.title ?? 'a habit no longer here', 'habit')}: ${verdictSaid(one.verdict)}`;

function KeysTable({
  team,
  keys,
}: {
  readonly team: Team;
  readonly keys: readonly (readonly [Id<'momentKey'>, MomentKey])[];
}) {
  const teamId = useTeams(teams => teams.teamId) ?? '';
  const editing = edit(teamId);
  const used = new Set(keys.map(([, one]) => one.key));
  const free = FREE.filter(key => !used.has(key));
  const habits = inOrder(team.habits).filter(([, one]) => one.kept);
  const add = () => {
    const [key] = free;
    const [habit] = habits[0] ?? [];
    if (!key || !habit) return;
    endStep(teamId);
    const rank = Math.max(0, ...keys.map(([, one]) => one.rank)) + 1;
    editing.set(['momentKeys', newId<'momentKey'>()], {
      rank,
      key,
      habit,
      verdict: 'done',
      beforeS: 4,
      afterS: 2,
    } satisfies MomentKey);
  };
  return (
    <>
      <ul className="key-rows">
        {keys.map(([id, one]) => (
          <li key={id} className="key-row">
            <label>
              <span className="q2">Key</span>
              <select
                value={one.key}
                onChange={event => editing.set(['momentKeys', id, 'key'], event.target.value)}
              >
                {[one.key, ...free].map(key => (
                  <option key={key} value={key}>
                    {key.toUpperCase()}
                  </option>
                ))}
              </select>
            </label>
            <label className="grow">
              <span className="q2">Habit</span>
              <select
                value={one.habit}
                onChange={event => editing.set(['momentKeys', id, 'habit'], event.target.value)}
              >
                {habits.map(([habitId, habit]) => (
                  <option key={habitId} value={habitId}>
                    {named(habit.title, 'habit')}
                  </option>
                ))}
              </select>
            </label>
            <label>
              <span className="q2">Seen</span>
              <select
                value={one.verdict}
                onChange={event => editing.set(['momentKeys', id, 'verdict'], event.target.value)}
              >
                {(['done', 'missed', 'cannotSee'] as const).map(verdict => (
                  <option key={verdict} value={verdict}>
                    {verdictSaid(verdict)}
                  </option>
                ))}
              </select>
            </label>
            {(['beforeS', 'afterS'] as const).map(field => (
              <label key={field}>
                <span className="q2">{field === 'beforeS' ? 's before' : 's after'}</span>
                <input
                  type="number"
                  min={0}
                  max={120}
                  step={0.5}
                  value={one[field]}
                  onChange={event =>
                    event.target.value !== '' &&
                    event.target.validity.valid &&
                    editing.set(['momentKeys', id, field], Number(event.target.value))
                  }
                />
              </label>
            ))}
            <Act
              bare
              label={`Take out key ${one.key.toUpperCase()}`}
              onPress={() => editing.remove(['momentKeys', id])}
            >
              Take out
            </Act>
          </li>
        ))}
      </ul>
      <Act
        onPress={add}
        notNow={
          habits.length === 0
            ? 'there is no habit yet: write one first, under Habits'
            : free.length === 0
              ? 'every free key is used'
              : undefined
        }
      >
        Another key
      </Act>
    </>
  );
}
