import type { Practice, Team } from '@icewright/book';
import { Link, useLocation } from 'wouter';
import { minutesByHabit } from '../ledger/practised.ts';
import { Act } from '../parts/act.tsx';
import { Empty } from '../parts/empty.tsx';
import { clockSaid, countSaid, daySaid, fromToday } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { setRemoved } from '../shell/book.ts';
import { useKeys } from '../shell/keys.ts';
import { RunningHead } from '../shell/running-head.tsx';
import { entriesOf, type Season, useSeason } from '../shell/season.ts';
import { UndoActs } from '../shell/undo-acts.tsx';
import { makePractice } from './make-practice.ts';
import { type Schedule, scheduleOf } from './schedule.ts';

export function PracticeList({ team }: { readonly team: Team }) {
  const [, go] = useLocation();
  const season = useSeason(team);
  const entries = entriesOf(team, 'practice');
  const make = () => go(`/practices/${makePractice(team)}`);
  useKeys([{ keys: 'n', says: 'new practice', act: make }]);
  if (entries.length === 0) {
    return (
      <>
        <RunningHead title="Practices" titleWords="Practices" acts={<UndoActs />} />
        <Empty says="Put what failed on Saturday on Tuesday’s ice, minute by minute, and print the card.">
          <Act lead onPress={make}>
            Plan a practice
          </Act>
        </Empty>
      </>
    );
  }
  const practices = new Map(season.practices);
  return (
    <>
      <RunningHead
        title="Practices"
        titleWords="Practices"
        meta={countSaid(entries.length, 'practice')}
        acts={
          <>
            <UndoActs />
            <Act lead onPress={make}>
              Plan a practice
            </Act>
          </>
        }
      />
      <main className="place">
        <ul className="practice-list">
          {entries.map(([id, entry]) => (
            <li key={id}>
              <p className="practice-day">
                <b className="b">{daySaid(entry.day)}</b>
                <span className="q3">{fromToday(entry.day)}</span>
              </p>
              <PracticeWords
                id={id}
                title={entry.title}
                practice={practices.get(id)}
                team={team}
                season={season}
              />
              <Act
                bare
                label={`Take out ${named(entry.title, 'practice')}, ${daySaid(entry.day)}`}
                onPress={() => setRemoved(id, true)}
              >
                Take out
              </Act>
            </li>
          ))}
        </ul>
      </main>
    </>
  );
}

function PracticeWords(props: {
  readonly id: string;
  readonly title: string;
  readonly practice: Practice | undefined;
  readonly team: Team;
  readonly season: Season;
}) {
  const { practice, team, season } = props;
  const served = practice === undefined ? [] : [...minutesByHabit(practice, season.drills)];
  const schedule = practice === undefined ? undefined : scheduleOf(practice);
  return (
    <div>
      <Link href={`/practices/${props.id}`} className="practice-title w">
        {named(props.title, 'practice')}
      </Link>
      {practice !== undefined && schedule !== undefined && (
        <>
          <p className="q2">
            {clockSaid(practice.starts, team.clockFace)} to {clockSaid(schedule.iceEndsClock, team.clockFace)}
            {practice.place !== '' && `, ${practice.place}`}. {countSaid(schedule.blocks.length, 'block')},{' '}
            {schedule.usedMinutes} of {practice.iceMinutes} min
          </p>
          {schedule.blocks.length > 0 && <MiniPlan schedule={schedule} />}
          {practice.today !== '' && <p className="w practice-today">{practice.today}</p>}
          {served.length > 0 && (
            <p className="q3">
              {served
                .map(
                  ([habit, minutes]) =>
                    `${named(team.habits[habit as keyof typeof team.habits]?.title ?? 'a habit taken out', 'habit')} ${minutes} min`,
                )
                .join(' · ')}
            </p>
          )}
        </>
      )}
    </div>
  );
}

/** The blocks on their minutes, as one line: by name where there is room for one, else by minutes. */
function MiniPlan({ schedule }: { readonly schedule: Schedule }) {
  const span = Math.max(schedule.iceMinutes, schedule.usedMinutes);
  return (
    <div className="mini-plan" aria-hidden="true">
      {schedule.blocks.map(({ id, block, startMinute }) => (
        <span
          key={id}
          style={{ left: `${(startMinute / span) * 100}%`, width: `${(block.minutes / span) * 100}%` }}
        >
          <i className="mini-title">{named(block.title, 'block')}</i>
          <i className="mini-minutes">{block.minutes}</i>
        </span>
      ))}
    </div>
  );
}
