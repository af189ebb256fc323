import type { Team } from '@icewright/book';
import { Link } from 'wouter';
import { named } from '../parts/named.ts';
import { addressOfDrill } from '../shell/addresses.ts';
import { entriesOf, type Season } from '../shell/season.ts';

export function DrillsForIt(props: {
  readonly habitId: string;
  readonly team: Team;
  readonly season: Season;
}) {
  const drills = entriesOf(props.team, 'drill').filter(([id]) =>
    props.season.drills.get(id)?.habits.some(habit => habit === props.habitId),
  );
  return (
    <p className="line-of-margin">
      <span className="q3">drills for it</span>
      <span>
        {drills.length === 0
          ? 'none yet'
          : drills.map(([id, entry], index) => (
              <span key={id}>
                {index > 0 && ', '}
                <Link href={addressOfDrill(id)}>{named(entry.title, 'drill')}</Link>
              </span>
            ))}
      </span>
    </p>
  );
}
