import type { Drill, Team } from '@icewright/book';
import { inOrder } from '@icewright/book';
import { named } from '../parts/named.ts';
import type { Schedule } from './schedule.ts';

/** Which habits the blocks serve, on the same scale of minutes as the plan above. */
export function HabitsServed(props: {
  readonly team: Team;
  readonly schedule: Schedule;
  readonly drills: ReadonlyMap<string, Drill>;
}) {
  const { team, schedule, drills } = props;
  const habits = inOrder(team.habits).filter(([, habit]) => habit.kept);
  if (schedule.blocks.length === 0 || habits.length === 0) return null;
  const span = Math.max(schedule.iceMinutes, schedule.usedMinutes);
  return (
    <section className="served" aria-label="Habits served">
      <h2 className="b">Habits served</h2>
      <ul>
        {habits.map(([id, habit]) => {
          const serving = schedule.blocks.filter(
            ({ block }) => block.drill !== undefined && drills.get(block.drill)?.habits.includes(id),
          );
          const minutes = serving.reduce((sum, { block }) => sum + block.minutes, 0);
          return (
            <li key={id}>
              <span className="w served-name">{named(habit.title, 'habit')}</span>
              <span className="served-line" aria-hidden="true">
                {serving.map(({ id: blockId, startMinute, block }) => (
                  <i
                    key={blockId}
                    style={{
                      left: `${(startMinute / span) * 100}%`,
                      width: `${(block.minutes / span) * 100}%`,
                    }}
                  />
                ))}
              </span>
              <span className="served-total q2">{minutes === 0 ? 'not today' : `${minutes} min`}</span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
