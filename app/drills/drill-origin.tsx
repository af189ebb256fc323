import type { Drill, Team } from '@icewright/book';
import { Link } from 'wouter';
import { named } from '../parts/named.ts';
import { addressOfFreeze } from '../shell/addresses.ts';

/** What the drill is for, and the freeze it was made of. */
export function DrillOrigin({ drill, team }: { readonly drill: Drill; readonly team: Team }) {
  const habit = drill.habits.map(each => team.habits[each]?.title).find(title => title !== undefined);
  return (
    <>
      {habit !== undefined && (
        <>
          for <i className="w">{named(habit, 'habit')}</i>
        </>
      )}
      {habit !== undefined && drill.from !== undefined && ', '}
      {drill.from !== undefined && (
        <>
          from the freeze{' '}
          <Link href={addressOfFreeze(drill.from.game, drill.from.freeze)}>
            {drill.from.said || 'it was made of'}
          </Link>
        </>
      )}
    </>
  );
}
