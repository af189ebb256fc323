import type { Drill, Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { NOT_WRITTEN_SAID } from '../habits/written-standard.ts';
import { Act, ActLink } from '../parts/act.tsx';
import { ChoiceField, ValueField, WordsField } from '../parts/field.tsx';
import { named } from '../parts/named.ts';
import { addressOfHabit } from '../shell/addresses.ts';
import { edit } from '../shell/book.ts';
import { LEVELS, RINKS } from '../shell/rinks.ts';

/** What the skaters hear, what it is for, and for whom it is computed. */
export function DrillWords({
  id,
  drill,
  team,
}: {
  readonly id: string;
  readonly drill: Drill;
  readonly team: Team;
}) {
  const habits = Object.entries(team.habits)
    .filter(([key, habit]) => habit.kept || (drill.habits as readonly string[]).includes(key))
    .sort(([, a], [, b]) => a.rank - b.rank);
  const toggle = (habit: Id<'habit'>) =>
    edit(id).set(
      ['habits'],
      drill.habits.includes(habit) ? drill.habits.filter(each => each !== habit) : [...drill.habits, habit],
    );
  return (
    <section className="sec drill-words">
      <h2>What the skaters hear</h2>
      <WordsField
        label="says"
        voice="words"
        value={drill.says}
        onChange={words => edit(id).text(['says'], words)}
      />
      <WordsField
        label="key points, one a line"
        rows={4}
        value={drill.keyPoints}
        onChange={words => edit(id).text(['keyPoints'], words)}
      />
      <fieldset className="habit-filter">
        <legend className="label">habits served</legend>
        {habits.map(([key, habit]) => (
          <Act
            key={key}
            isOn={drill.habits.includes(key as Id<'habit'>)}
            onPress={() => toggle(key as Id<'habit'>)}
          >
            {named(habit.title, 'habit')}
          </Act>
        ))}
        {habits
          .filter(([key, habit]) => habit.byEye && (drill.habits as readonly string[]).includes(key))
          .map(([key, habit]) => (
            <p key={key} className="q2">
              “{named(habit.title, 'habit')}” is judged {NOT_WRITTEN_SAID}, so no rep is judged by it.{' '}
              <ActLink bare to={addressOfHabit(key)}>
                Write it
              </ActLink>
            </p>
          ))}
        {habits.length === 0 && <span className="q2">The team has no habits yet.</span>}
      </fieldset>
      <div className="fields-row">
        <ValueField
          label="minutes"
          type="number"
          min={1}
          max={60}
          step={1}
          value={String(drill.minutes)}
          onChange={minutes => edit(id).set(['minutes'], Number(minutes))}
        />
        <ChoiceField
          label="computed for"
          value={drill.level}
          choices={LEVELS}
          onChange={level => edit(id).set(['level'], level)}
        />
        <ChoiceField
          label="sheet"
          value={drill.rink.preset}
          choices={RINKS.filter(rink => rink.value !== 'own' || drill.rink.preset === 'own')}
          onChange={preset => preset !== 'own' && edit(id).set(['rink'], { preset })}
        />
      </div>
    </section>
  );
}
