import { type Habit, inOrder, type Team } from '@icewright/book';
import { rinkOf } from '@icewright/engine';
import { useMemo } from 'react';
import { Link, useLocation } from 'wouter';
import { practisedOf } from '../ledger/practised.ts';
import { Act } from '../parts/act.tsx';
import { Empty } from '../parts/empty.tsx';
import { countSaid, dayInMonth, lengthSaid, percentSaid, today } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { addressOfHabit } from '../shell/addresses.ts';
import { edit } from '../shell/book.ts';
import { useKeys } from '../shell/keys.ts';
import { RunningHead } from '../shell/running-head.tsx';
import { entriesOf, type Season, useSeason } from '../shell/season.ts';
import { UndoActs } from '../shell/undo-acts.tsx';
import { chancesOf, differCountOf } from './chance.ts';
import { makeHabit } from './make-habit.ts';
import { RateReading } from './rate-reading.tsx';
import { standardSaid } from './standard-words.ts';
import { measuredCountOf, tallyOf } from './tally-of.ts';
import { NOT_WRITTEN_SAID, writtenStandardOf } from './written-standard.ts';

export function HabitList({ team, teamId }: { readonly team: Team; readonly teamId: string }) {
  const [, go] = useLocation();
  const season = useSeason(team);
  const habits = inOrder(team.habits);
  const kept = habits.filter(([, habit]) => habit.kept);
  const takenOut = habits.filter(([, habit]) => !habit.kept);
  const make = () => go(addressOfHabit(makeHabit(team, teamId, '')));
  useKeys([{ keys: 'n', says: 'write a habit', act: make }]);
  const practised = useMemo(() => practisedOf(season.practices, season.drills, today()), [season]);
  const write = (
    <Act lead onPress={make}>
      Write a habit
    </Act>
  );
  return (
    <>
      <RunningHead
        title="Habits"
        titleWords="Habits"
        meta={
          kept.length === 0 ? undefined : `How we play, so plainly that two people would judge it the same`
        }
        acts={
          <>
            <UndoActs />
            {kept.length > 0 && write}
          </>
        }
      />
      {kept.length === 0 && (
        <Empty says="Say one thing your team does without the puck, so plainly that two people would judge it the same.">
          {write}
        </Empty>
      )}
      <main className="place">
        {kept.length > 0 && (
          <ul className="habit-list">
            {kept.map(([id, habit]) => (
              <HabitRow
                key={id}
                id={id}
                habit={habit}
                team={team}
                season={season}
                last={practised.get(id)?.at(-1)}
              />
            ))}
          </ul>
        )}
        {takenOut.length > 0 && (
          <section className="put-away">
            <h2 className="q2">Taken out</h2>
            {takenOut.map(([id, habit]) => (
              <p key={id}>
                <Link href={addressOfHabit(id)} className="w">
                  {named(habit.title, 'habit')}
                </Link>{' '}
                <Act bare onPress={() => edit(teamId).set(['habits', id, 'kept'], true)}>
                  Take up again
                </Act>
              </p>
            ))}
          </section>
        )}
      </main>
    </>
  );
}

function HabitRow(props: {
  readonly id: string;
  readonly habit: Habit;
  readonly team: Team;
  readonly season: Season;
  readonly last: { readonly day: string; readonly minutes: number } | undefined;
}) {
  const { id, habit, team, season, last } = props;
  const rink = useMemo(() => rinkOf(team.rink), [team.rink]);
  const chances = useMemo(() => chancesOf(id, habit, season.games, rink), [id, habit, season.games, rink]);
  const standard = writtenStandardOf(habit);
  const drillCount = entriesOf(team, 'drill').filter(([drill]) =>
    season.drills.get(drill)?.habits.some(one => one === id),
  ).length;
  return (
    <li>
      <div>
        <Link href={addressOfHabit(id)} className="habit-title w">
          {named(habit.title, 'habit')}
        </Link>
        {habit.says !== '' && <p className="w habit-says">“{habit.says}”</p>}
        <p className="q2">
          {standard === undefined
            ? `Judged ${NOT_WRITTEN_SAID}.`
            : standardSaid(standard, limitM => lengthSaid(limitM, team.lengths))}
        </p>
      </div>
      <div className="habit-rate">
        <p>
          <RateReading
            tally={tallyOf(chances)}
            measuredCount={measuredCountOf(chances)}
            differCount={differCountOf(chances)}
          />
        </p>
        <p className="q3">wanted {percentSaid(habit.wantedRatio)}</p>
      </div>
      <div className="q2">
        <p>{countSaid(drillCount, 'drill')} for it</p>
        <p className="q3">
          {last === undefined
            ? 'in no practice yet'
            : `last planned for ${dayInMonth(last.day)}, ${last.minutes} min`}
        </p>
      </div>
    </li>
  );
}
