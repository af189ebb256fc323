import type { Team } from '@icewright/book';
import { rinkOf } from '@icewright/engine';
import { useMemo } from 'react';
import { useLocation } from 'wouter';
import { practisedOf } from '../ledger/practised.ts';
import { Act, ActLink } from '../parts/act.tsx';
import { Failure } from '../parts/empty.tsx';
import { ValueField, WordsField } from '../parts/field.tsx';
import { dayInMonth, today } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { edit, endStep } from '../shell/book.ts';
import { RunningHead } from '../shell/running-head.tsx';
import { useSeason } from '../shell/season.ts';
import { UndoActs } from '../shell/undo-acts.tsx';
import { chancesOf } from './chance.ts';
import { ChancesSection } from './chances-section.tsx';
import { withLimit } from './changed-standard.ts';
import { DrillsForIt } from './drills-for-it.tsx';
import { LimitSection } from './limit-section.tsx';
import { PointsOnIce } from './points-on-ice.tsx';
import { StandardOfHabit } from './standard-of-habit.tsx';
import { writtenStandardOf } from './written-standard.ts';

export function HabitPage(props: { readonly team: Team; readonly teamId: string; readonly habitId: string }) {
  const { team, teamId, habitId } = props;
  const [, go] = useLocation();
  const season = useSeason(team);
  const habit = team.habits[habitId as keyof typeof team.habits];
  const rink = useMemo(() => rinkOf(team.rink), [team.rink]);
  const chances = useMemo(
    () => (habit === undefined ? [] : chancesOf(habitId, habit, season.games, rink)),
    [habitId, habit, season.games, rink],
  );
  const practised = useMemo(() => practisedOf(season.practices, season.drills, today()), [season]);
  if (habit === undefined) return <NoHabit />;
  const editing = edit(teamId);
  const at = (key: string) => ['habits', habitId, key];
  const last = practised.get(habitId)?.at(-1);
  return (
    <>
      <RunningHead
        back={{ to: '/habits', said: 'Habits' }}
        titleWords={named(habit.title, 'habit')}
        title={
          <input
            aria-label="The habit in a few words"
            data-book="words"
            placeholder="The habit in a few words"
            maxLength={200}
            value={habit.title}
            onChange={event => editing.text(at('title'), event.target.value)}
          />
        }
        meta={habit.kept ? undefined : 'taken out'}
        acts={
          <>
            <UndoActs />
            <Act
              onPress={() => {
                endStep(teamId);
                editing.set(at('kept'), !habit.kept);
                if (habit.kept) go('/habits');
              }}
            >
              {habit.kept ? 'Take out' : 'Take up again'}
            </Act>
          </>
        }
      />
      <main className="place two">
        <div>
          <StandardOfHabit habit={habit} habitId={habitId} team={team} teamId={teamId} />
          {writtenStandardOf(habit) && (
            <PointsOnIce rink={rink} standard={habit.standard} chances={chances} lengths={team.lengths} />
          )}
        </div>
        <aside className="margin">
          <ChancesSection
            chances={chances}
            wantedRatio={habit.wantedRatio}
            lengths={team.lengths}
            skaters={team.skaters}
            isOpening={season.isOpening}
          />
          <LimitSection
            chances={chances}
            standard={habit.standard}
            lengths={team.lengths}
            onChange={limitM => editing.set(at('standard'), withLimit(habit.standard, limitM))}
          />
          <section className="sec hear">
            <h2>What the skaters hear</h2>
            <WordsField
              label="In a few words"
              voice="words"
              value={habit.says}
              onChange={words => editing.text(at('says'), words)}
            />
            <WordsField
              label="The reason"
              voice="words"
              rows={4}
              value={habit.reason}
              onChange={words => editing.text(at('reason'), words)}
            />
          </section>
          <section className="sec">
            <h2>What it is worth</h2>
            <ValueField
              type="number"
              label="Wanted"
              unit="% of chances"
              min={0}
              max={100}
              value={String(Math.round(habit.wantedRatio * 100))}
              onChange={value => editing.set(at('wantedRatio'), Number(value) / 100)}
            />
            <ValueField
              type="number"
              label="Cost of a miss"
              unit={habit.costGoals === 0 ? 'goals: not estimated' : 'goals, your estimate'}
              min={0}
              max={5}
              value={String(habit.costGoals)}
              onChange={value => editing.set(at('costGoals'), Number(value))}
            />
            <DrillsForIt habitId={habitId} team={team} season={season} />
            <p className="line-of-margin">
              <span className="q3">last planned for</span>
              <span>{last === undefined ? 'not yet' : `${dayInMonth(last.day)}, ${last.minutes} min`}</span>
            </p>
          </section>
        </aside>
      </main>
    </>
  );
}

function NoHabit() {
  return (
    <>
      <RunningHead back={{ to: '/habits', said: 'Habits' }} title="No habit" titleWords="No habit" />
      <Failure
        where="Habit"
        what="This habit is not here."
        lost="It may have been undone where it was written."
      >
        <ActLink to="/habits">To the habits</ActLink>
      </Failure>
    </>
  );
}
