import type { Meeting, Team } from '@icewright/book';
import { Act } from '../../parts/act.tsx';
import { ItemStill } from '../item-still.tsx';
import { type MeetingTimes, meetingClock, spanSaid } from '../meeting-times.ts';
import { lineOf, type ShownItem, whichOf } from '../shown-item.ts';
import type { MeetingFilms } from '../use-films.ts';
import type { Speaker } from './use-speaker.ts';

/** The clock, the notes of this moment, and what comes next. */
export function SpeakerSide(props: {
  readonly team: Team;
  readonly meeting: Meeting;
  readonly items: readonly ShownItem[];
  readonly times: MeetingTimes;
  readonly films: MeetingFilms;
  readonly speaker: Speaker;
  readonly elapsedS: number;
  readonly onClockAgain: () => void;
}) {
  const { team, meeting, times, films, speaker, elapsedS } = props;
  const { shown, next, run } = speaker;
  const leftS = meeting.budgetMinutes * 60 - elapsedS;
  const planned = shown && times.of.get(shown.id);
  const behindS = planned === undefined ? 0 : elapsedS - planned.endS;
  return (
    <aside className="speak-side">
      <section className="speak-clock" aria-label="Clock">
        <b data-testid="elapsed">{meetingClock(elapsedS)}</b>
        <p>
          <span className={leftS < 0 ? 'warm b' : ''}>
            {meetingClock(leftS)} left of {meeting.budgetMinutes} min
          </span>{' '}
          <Act bare onPress={props.onClockAgain}>
            Clock from 0:00
          </Act>
          <br />
          <span className={behindS > 15 ? 'warm' : 'q2'}>
            {planned !== undefined &&
              `this moment to ${meetingClock(planned.endS)}${behindS > 15 ? `: ${spanSaid(behindS)} over its time` : ''}`}
          </span>
        </p>
      </section>
      {shown !== undefined && run.phase !== 'over' && (
        <section className="sec" aria-label="Notes">
          <h2>{lineOf(shown, team)}</h2>
          <p className="q2">{whichOf(shown, team)}</p>
          {shown.item.notes !== '' && <p className="speak-notes">{shown.item.notes}</p>}
          {shown.item.asks !== '' && <p className="w speak-asks">{shown.item.asks}</p>}
        </section>
      )}
      <section className="sec speak-next" aria-label="Next">
        <h2>Next</h2>
        {next === undefined ? (
          <p className="q2">{run.phase === 'over' ? 'That was all.' : 'This is the last.'}</p>
        ) : (
          <>
            {next.state === 'there' && (
              <ItemStill shown={next} films={films} label={`Next: ${lineOf(next, team)}`} />
            )}
            <p className="w speak-next-line">{lineOf(next, team)}</p>
            <p className="q2">{whichOf(next, team)}</p>
          </>
        )}
      </section>
      <ol className="speak-list" aria-label="All moments">
        {props.items.map((one, index) => (
          <li key={one.id}>
            <button
              type="button"
              className="quiet"
              aria-current={index === run.index ? 'step' : undefined}
              onClick={() => speaker.goTo(index)}
            >
              <span className="num q2">{meetingClock(times.of.get(one.id)?.startS ?? 0)}</span>{' '}
              <ItemStill shown={one} films={films} />{' '}
              <span>
                {lineOf(one, team)}
                <span className="speak-which q3">{whichOf(one, team)}</span>
              </span>
            </button>
          </li>
        ))}
      </ol>
    </aside>
  );
}
