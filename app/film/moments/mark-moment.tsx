import { inOrder, type Moment, type Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useEffect, useRef, useState } from 'react';
import { makeHabit } from '../../habits/make-habit.ts';
import { Act } from '../../parts/act.tsx';
import { named } from '../../parts/named.ts';
import { type KeyLine, useKeys } from '../../shell/keys.ts';
import { useTeams } from '../../shell/teams.ts';
import { clockText } from '../film-clock.ts';
import { SkaterOptions } from '../skater-options.tsx';
import type { MarkedMoment } from './new-moment.ts';

/** What is being marked, from the moment the key was pressed: the film may run on meanwhile. */
export interface MarkDraft {
  readonly frameIndex: number;
  readonly filmTimeS: number;
  /** Chosen with the press already. */
  readonly habit?: Id<'habit'>;
}

/**
 * Marking in three presses: M, a number for the habit, and what was seen. Who and why can follow in the list. M again changes
 * nothing: pressed twice in haste it must not say of anybody that he missed.
 */
export function MarkMoment({
  draft,
  team,
  habitAtFirst,
  isLive = false,
  onMark,
  onLeave,
}: {
  /** Undefined: marked is what is now, as it is pressed. */
  readonly draft: MarkDraft | undefined;
  readonly team: Team;
  readonly habitAtFirst: keyof Team['habits'] | undefined;
  /** There are no frames to name, and what marks stands ready all the time: nothing may open or close beside keys that are pressed blind. */
  readonly isLive?: boolean;
  readonly onMark: (marked: MarkedMoment) => void;
  readonly onLeave: () => void;
}) {
  const habits = inOrder(team.habits)
    .filter(([, habit]) => habit.kept)
    .slice(0, 9);
  const [habit, setHabit] = useState(
    [draft?.habit, habitAtFirst].find(one => habits.some(([id]) => id === one)) ?? habits[0]?.[0],
  );
  const teamId = useTeams(teams => teams.teamId) ?? '';
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
    setSkater('');
  };
  const nothing = habit === undefined ? 'name first what you look for' : undefined;
  const keys: KeyLine[] = [
    ...habits.map(([id, one], i) => ({
      keys: `${i + 1}`,
      says: `mark: ${named(one.title, 'habit')}`,
      act: () => setHabit(id),
    })),
    { keys: 'd', says: 'mark as done', act: () => mark('done') },
    { keys: 'x', says: 'mark as missed', act: () => mark('missed') },
    { keys: 'c', says: 'mark as: cannot see', act: () => mark('cannotSee') },
    { keys: 'Escape', says: 'leave marking', act: onLeave },
  ];
  useKeys(draft ? keys : []);
  const panel = useRef<HTMLElement>(null);
  useEffect(() => {
    if (draft) panel.current?.scrollIntoView({ block: 'nearest' });
  }, [draft]);
  return (
    <section
      ref={panel}
      className="marking"
      aria-label={draft ? `Mark the moment at ${clockText(draft.filmTimeS)}` : 'Mark what is now'}
    >
      <p className="b">
        {draft ? `At ${clockText(draft.filmTimeS, isLive ? 0 : 2)} ` : 'Now '}
        {!isLive && draft && <span className="q3">frame {draft.frameIndex}</span>}
        {isLive && !draft && <span className="q3">“Mark a moment” keeps the second first</span>}
      </p>
      {habits.length === 0 ? (
        <FirstHabit
          isAsked={draft !== undefined}
          onName={title => setHabit(makeHabit(team, teamId, title, { byEye: true }))}
        />
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
        <Act onPress={() => mark('done')} notNow={nothing}>
          Done <kbd>D</kbd>
        </Act>
        <Act onPress={() => mark('missed')} notNow={nothing}>
          Missed <kbd>X</kbd>
        </Act>
        <Act onPress={() => mark('cannotSee')} notNow={nothing}>
          Cannot see <kbd>C</kbd>
        </Act>
        <label>
          <span className="q2">Who</span>{' '}
          <select value={skater} onChange={event => setSkater(event.target.value)}>
            <SkaterOptions team={team} />
          </select>
        </label>
        <span className={draft ? undefined : 'not-begun'}>
          <Act bare onPress={onLeave}>
            Cancel
          </Act>
        </span>
      </p>
    </section>
  );
}

/** A team that has no habit yet names one where it is first seen; its standard can wait. */
function FirstHabit({
  isAsked,
  onName,
}: {
  /** A moment waits for it. */
  readonly isAsked: boolean;
  readonly onName: (title: string) => void;
}) {
  const [title, setTitle] = useState('');
  const entry = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (isAsked) entry.current?.focus({ preventScroll: true });
  }, [isAsked]);
  return (
    <form
      className="first-habit"
      onSubmit={event => {
        event.preventDefault();
        if (title.trim() !== '') onName(title.trim());
      }}
    >
      <label>
        <span className="q2">What do you look for? It becomes your first habit.</span>
        <input
          ref={entry}
          className="entry w"
          value={title}
          maxLength={120}
          placeholder="The nearest hunts the lost puck"
          onChange={event => setTitle(event.target.value)}
        />
      </label>{' '}
      <button type="submit" className="act">
        Name it
      </button>
    </form>
  );
}
