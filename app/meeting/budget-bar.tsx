import type { Meeting } from '@icewright/book';
import { Reading } from '../parts/reading.tsx';
import { leftSaid, type MeetingTimes, spanSaid } from './meeting-times.ts';
import type { ShownItem } from './shown-item.ts';

/** The meeting on its minutes: film full, talk and stands open, the end of the budget; below it the same in words. */
export function BudgetBar({
  meeting,
  times,
  items,
  chosen,
}: {
  readonly meeting: Meeting;
  readonly times: MeetingTimes;
  readonly items: readonly ShownItem[];
  readonly chosen: string | undefined;
}) {
  const budgetS = meeting.budgetMinutes * 60;
  const spanS = Math.max(budgetS, times.usedS);
  const share = (seconds: number) => `${(seconds / spanS) * 100}%`;
  const stepMinutes = spanS > 90 * 60 ? 15 : spanS > 30 * 60 ? 5 : spanS > 12 * 60 ? 2 : 1;
  const marks = Array.from(
    { length: Math.floor(spanS / 60 / stepMinutes) + 1 },
    (_, index) => index * stepMinutes,
  );
  const hiddenCount = items.filter(({ item }) => item.hidden).length;
  return (
    <div className="budget">
      <div className="budget-rule" aria-hidden="true">
        {marks.map(minute => (
          <span key={minute} style={{ left: share(minute * 60) }}>
            {minute}
          </span>
        ))}
        {items.map(({ id }) => {
          const time = times.of.get(id);
          if (time === undefined) return null;
          return (
            <i
              key={id}
              className={id === chosen ? 'budget-item chosen' : 'budget-item'}
              style={{ left: share(time.startS), width: share(time.endS - time.startS) }}
            >
              <b style={{ width: `${(time.filmS / Math.max(1e-9, time.endS - time.startS)) * 100}%` }} />
            </i>
          );
        })}
        <i className="budget-ends" style={{ left: share(budgetS) }} />
      </div>
      <p className={times.leftS < 0 ? 'budget-said warm b' : 'budget-said'} role="status">
        <Reading
          value={spanSaid(times.usedS)}
          estimate
          warm={times.leftS < 0}
          why={`Film ${spanSaid(times.filmS)}, standing by the clock ${spanSaid(times.standS)}, talk ${spanSaid(times.talkS)} as set at each moment. A stand until somebody presses takes the time of the talk.${hiddenCount > 0 ? ` ${hiddenCount} hidden, not counted.` : ''}`}
        />{' '}
        of {meeting.budgetMinutes} min: <b>{leftSaid(times.leftS)}</b>
      </p>
    </div>
  );
}
