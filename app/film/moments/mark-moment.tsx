import { inOrder, type Moment, type Team } from '@icewright/book';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { named } from '../../parts/named.ts';
import { useKeys } from '../../shell/keys.ts';
import { clockText } from '../film-clock.ts';
import { SkaterOptions } from '../skater-options.tsx';
import type { MarkedMoment } from './new-moment.ts';

/** What is being marked, from the moment the key was pressed: the film may run on meanwhile. */
export interface MarkDraft {
  readonly frameIndex: number;
  readonly filmTimeS: number;
}

/** Marking in three presses: M, a number for the habit, and what was seen. Who and why can follow in the list. */
export function MarkMoment({
  draft,
  team,
  habitAtFirst,
  isLive = false,
  onMark,
  onLeave,
}: {
  readonly draft: MarkDraft;
  readonly team: Team;
  readonly habitAtFirst: keyof Team['habits'] | undefined;
  /** There are no frames to name. */
  readonly isLive?: boolean;
  readonly onMark: (marked: MarkedMoment) => void;
  readonly onLeave: () => void;
}) {
  const habits = inOrder(team.habits)
    .filter(([, habit]) => habit.kept)
    .slice(0, 9);
  const [habit, setHabit] = useState(
    habits.some(([id]) => id === habitAtFirst) ? habitAtFirst : habits[0]?.[0],
  );
  const [skater, setSkater] = useState('');
  const mark = (verdict: Moment['verdict']) => {
    if (habit === undefined) return;
    const costGoals = verdict === 'missed' ? (team.habits[habit]?.costGoals ?? 0) : 0;
    onMark({
      habit,
      verdict,
      costGoals,
      ...(skater === '' ? {} : { skater: skater as NonNullable<Moment['skater']> }),
    });
  };
  useKeys([
    ...habits.map(([id, one], i) => ({
      keys: `${i + 1}`,
      says: `mark: ${named(one.title, 'habit')}`,
      act: () => setHabit(id),
    })),
    { keys: 'd', says: 'mark as done', act: () => mark('done') },
    { keys: 'm', says: 'mark as missed', act: () => mark('missed') },
    { keys: 'c', says: 'mark as: cannot see', act: () => mark('cannotSee') },
    { keys: 'Escape', says: 'leave marking', act: onLeave },
  ]);
  return (
    <section className="marking" aria-label={`Mark the moment at ${clockText(draft.filmTimeS)}`}>
      <p className="b">
        At {clockText(draft.filmTimeS, isLive ? 0 : 2)}{' '}
        {!isLive && <span className="q3">frame {draft.frameIndex}</span>}
      </p>
      {habits.length === 0 ? (
        <p>There is no habit to mark yet: write one first, under Habits.</p>
      ) : (
        // Arrows belong to the choice here, not to the film.
        <fieldset
          className="marking-habits"
          onKeyDown={event => event.key.startsWith('Arrow') && event.stopPropagation()}
        >
          <legend className="vh">Habit</legend>
          {habits.map(([id, one], i) => (
            <label key={id} className={id === habit ? 'on' : ''}>
              <input type="radio" name="marking-habit" checked={id === habit} onChange={() => setHabit(id)} />
              <kbd>{i + 1}</kbd> <span className="w">{named(one.title, 'habit')}</span>
            </label>
          ))}
        </fieldset>
      )}
      <p className="marking-acts">
        <Act onPress={() => mark('done')}>
          Done <kbd>D</kbd>
        </Act>
        <Act onPress={() => mark('missed')}>
          Missed <kbd>M</kbd>
        </Act>
        <Act onPress={() => mark('cannotSee')}>
          Cannot see <kbd>C</kbd>
        </Act>
        <label>
          <span className="q2">Who</span>{' '}
          <select value={skater} onChange={event => setSkater(event.target.value)}>
            <SkaterOptions team={team} />
          </select>
        </label>
        <Act bare onPress={onLeave}>
          Cancel
        </Act>
      </p>
    </section>
  );
}
