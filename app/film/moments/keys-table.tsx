import { inOrder, type MomentKey, newId, type Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { Act } from '../../parts/act.tsx';
import { named } from '../../parts/named.ts';
import { edit, endStep } from '../../shell/book.ts';
import { useTeams } from '../../shell/teams.ts';
import { FILM_LETTERS } from '../film-keys.ts';
import { SkaterOptions } from '../skater-options.tsx';
import { FOLLOW_STEPS } from './follow-words.ts';
import { verdictSaid } from './moment-glyph.tsx';
import { STRENGTHS } from './situation-fields.tsx';

/** The film's own letters, G with which the places begin, and the figures that say what came of a moment. */
const TAKEN = new Set([...FILM_LETTERS, 'g', ...FOLLOW_STEPS.map((_, i) => `${i + 1}`)]);
const FREE = [...'qwertyuiopasdfghjklzxcvbnm1234567890'].filter(key => !TAKEN.has(key));

/** What each key marks: a habit with what was seen, who, how many are on the ice, which unit; or, without a habit, how the game stands. */
export function KeysTable({
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
    if (!key) return;
    const [habit] = habits[0] ?? [];
    endStep(teamId);
    const rank = Math.max(0, ...keys.map(([, one]) => one.rank)) + 1;
    editing.set(['momentKeys', newId<'momentKey'>()], {
      ...{ rank, key, verdict: 'done', beforeS: 4, afterS: 2 },
      ...(habit ? { habit } : {}),
    } satisfies MomentKey);
  };
  return (
    <>
      <ul className="key-rows">
        {keys.map(([id, one]) => (
          <KeyRow
            key={id}
            one={one}
            team={team}
            free={free}
            habits={habits}
            onSay={(field, value) =>
              value === ''
                ? editing.remove(['momentKeys', id, field])
                : editing.set(['momentKeys', id, field], value)
            }
            onRemove={() => editing.remove(['momentKeys', id])}
          />
        ))}
      </ul>
      <Act onPress={add} notNow={free.length === 0 ? 'every free key is used' : undefined}>
        Another key
      </Act>
    </>
  );
}

function KeyRow({
  one,
  team,
  free,
  habits,
  onSay,
  onRemove,
}: {
  readonly one: MomentKey;
  readonly team: Team;
  readonly free: readonly string[];
  readonly habits: readonly (readonly [string, Team['habits'][Id<'habit'>]])[];
  /** An empty value is not said any more. */
  readonly onSay: (field: Exclude<keyof MomentKey, 'rank'>, value: string | number) => void;
  readonly onRemove: () => void;
}) {
  const choice = (
    label: string,
    field: 'key' | 'habit' | 'verdict' | 'skater' | 'strength' | 'unit',
    options: React.ReactNode,
    className?: string,
  ) => (
    <label className={className}>
      <span className="q2">{label}</span>
      <select value={one[field] ?? ''} onChange={event => onSay(field, event.target.value)}>
        {options}
      </select>
    </label>
  );
  return (
    <li className="key-row">
      {choice(
        'Key',
        'key',
        [one.key, ...free].map(key => (
          <option key={key} value={key}>
            {key.toUpperCase()}
          </option>
        )),
      )}
      {choice(
        'Habit',
        'habit',
        <>
          <option value="">none: says only how it stands</option>
          {habits.map(([id, { title }]) => (
            <option key={id} value={id}>
              {named(title, 'habit')}
            </option>
          ))}
        </>,
        'grow',
      )}
      {one.habit &&
        choice(
          'Seen',
          'verdict',
          (['done', 'missed', 'cannotSee'] as const).map(verdict => (
            <option key={verdict} value={verdict}>
              {verdictSaid(verdict)}
            </option>
          )),
        )}
      {one.habit &&
        (['beforeS', 'afterS'] as const).map(field => (
          <label key={field}>
            <span className="q2">{field === 'beforeS' ? 's before' : 's after'}</span>
            <input
              type="number"
              min={0}
              max={120}
              step={0.5}
              value={one[field]}
              onChange={({ target }) =>
                target.value !== '' && target.validity.valid && onSay(field, Number(target.value))
              }
            />
          </label>
        ))}
      {one.habit && choice('Who', 'skater', <SkaterOptions team={team} />)}
      {choice(
        'Us v them',
        'strength',
        <>
          <option value="">as it stands</option>
          {STRENGTHS.map(strength => (
            <option key={strength}>{strength}</option>
          ))}
        </>,
      )}
      {Object.keys(team.units).length > 0 &&
        choice(
          'Our unit',
          'unit',
          <>
            <option value="">as it stands</option>
            {inOrder(team.units).map(([id, { title }]) => (
              <option key={id} value={id}>
                {named(title, 'unit')}
              </option>
            ))}
          </>,
        )}
      <Act bare label={`Take out key ${one.key.toUpperCase()}`} onPress={onRemove}>
        Take out
      </Act>
    </li>
  );
}
