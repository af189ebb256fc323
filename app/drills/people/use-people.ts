import type { Drill, Team } from '@icewright/book';
import { useMemo } from 'react';
import { type People, peopleOf, timedSkatersOf } from './people-of.ts';

/** Who skates the drill; the same value while who they are and where they stand is the same, whatever a hand moves. */
export function usePeople(drill: Drill, team: Team): People {
  const { people, level, spots } = drill;
  const timed = useMemo(() => timedSkatersOf(team, level), [team, level]);
  // Of a name its first letter alone says who may stand there.
  const stands = Object.entries(spots)
    .map(([id, { role, side, kind }]) => `${id} ${role.slice(0, 1).toUpperCase()} ${side} ${kind}`)
    .join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: `stands` is all that matters of the spots
  return useMemo(
    () => peopleOf({ spots, level, ...(people && { people }) }, timed),
    [people, level, stands, timed],
  );
}
