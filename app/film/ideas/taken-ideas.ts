import type { Drill, Team } from '@icewright/book';
import { useMemo } from 'react';
import { useDocuments } from '../../shell/book.ts';
import { entriesOf } from '../../shell/season.ts';

/** Whether an idea of this freeze with this title was kept before: the drill that was made of it, while it is in the library. */
export function findTaken(
  drills: readonly (readonly [string, Pick<Drill, 'from' | 'title' | 'variantOf'>])[],
  freezeId: string,
  title: string,
): string | undefined {
  return drills.find(
    ([, drill]) => drill.from?.freeze === freezeId && drill.title === title && drill.variantOf === undefined,
  )?.[0];
}

/** Asks by title for the drill that an idea of this freeze has become. */
export function useTaken(team: Team, freezeId: string, titles: readonly string[]) {
  const key = titles.join('\n');
  const ids = useMemo(
    () =>
      entriesOf(team, 'drill')
        .filter(([, entry]) => key.split('\n').includes(entry.title))
        .map(([id]) => id),
    [team, key],
  );
  const views = useDocuments('drill', ids);
  const drills = [...views].flatMap(([id, view]) =>
    view.state === 'ready' ? [[id, view.value] as const] : [],
  );
  return (title: string) => findTaken(drills, freezeId, title);
}
