import { type Drill, emptyDrill, type Team } from '@icewright/book';
import { useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { Act } from '../parts/act.tsx';
import { DrillPicture } from '../parts/drill-picture.tsx';
import { Empty } from '../parts/empty.tsx';
import { countSaid } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { createDocument, useDocuments } from '../shell/book.ts';
import { RunningHead } from '../shell/running-head.tsx';
import { DropDrills, TakeInAct, TakenIn, useTakeIn } from './out/take-in.tsx';

/** All drills as postcards, by the habit they serve. */
export function DrillList({ team }: { readonly team: Team }) {
  const [, go] = useLocation();
  const [habit, setHabit] = useState<string | null>(null);
  const ids = useMemo(
    () =>
      Object.entries(team.contents)
        .filter(([, entry]) => entry.kind === 'drill' && !entry.removed)
        .sort(([, a], [, b]) => a.title.localeCompare(b.title))
        .map(([id]) => id),
    [team.contents],
  );
  const views = useDocuments('drill', ids);
  const takeIn = useTakeIn(team);
  const make = () =>
    go(
      `/drills/${createDocument(
        'drill',
        emptyDrill({
          title: 'New drill',
          level: team.level,
          rink: team.rink,
          madeAt: new Date().toISOString(),
        }),
      )}`,
    );
  const habits = Object.entries(team.habits)
    .filter(([, each]) => each.kept)
    .sort(([, a], [, b]) => a.rank - b.rank);
  const shown = ids.flatMap(id => {
    const view = views.get(id);
    if (view?.state !== 'ready') return [];
    if (habit !== null && !(view.value.habits as readonly string[]).includes(habit)) return [];
    return [[id, view.value] as const];
  });
  const unreadCount = ids.filter(id => views.get(id)?.state === 'refused').length;
  const head = (
    <RunningHead
      title="Drills"
      titleWords="Drills"
      meta={<b>{countSaid(ids.length, 'drill')}</b>}
      acts={
        <>
          <TakeInAct take={takeIn.take} />
          {ids.length > 0 && (
            <Act lead onPress={make}>
              Draw on bare ice
            </Act>
          )}
        </>
      }
    />
  );
  if (ids.length === 0)
    return (
      <DropDrills take={takeIn.take}>
        {head}
        <TakenIn {...takeIn} />
        <Empty says="A drill starts best from something you saw: freeze a picture, and make one from it.">
          <Act lead onPress={make}>
            Draw on bare ice
          </Act>
        </Empty>
      </DropDrills>
    );
  return (
    <DropDrills take={takeIn.take}>
      {head}
      <TakenIn {...takeIn} />
      <div className="place">
        <fieldset className="habit-filter">
          <legend className="vh">Habit served</legend>
          <Act isOn={habit === null} onPress={() => setHabit(null)}>
            All habits
          </Act>
          {habits.map(([id, each]) => (
            <Act key={id} isOn={habit === id} onPress={() => setHabit(habit === id ? null : id)}>
              {named(each.title, 'habit')}
            </Act>
          ))}
        </fieldset>
        <ul className="postcards">
          {shown.map(([id, drill]) => (
            <li key={id}>
              <Postcard id={id} drill={drill} team={team} />
            </li>
          ))}
        </ul>
        {unreadCount > 0 && (
          <p className="warm">
            {countSaid(unreadCount, 'drill')} cannot be read by this Icewright: written by a newer one, or
            damaged.
          </p>
        )}
        {shown.length === 0 && <p className="q2">No drill serves this habit yet.</p>}
      </div>
    </DropDrills>
  );
}

function Postcard({ id, drill, team }: { readonly id: string; readonly drill: Drill; readonly team: Team }) {
  const skaters = Object.values(drill.spots).filter(spot => spot.kind === 'skater');
  const served = drill.habits.flatMap(habit => {
    const served = team.habits[habit];
    return served === undefined ? [] : [named(served.title, 'habit')];
  });
  return (
    <Link href={`/drills/${id}`} className="postcard">
      <DrillPicture drill={drill} upright={false} idPrefix={id} lengths={team.lengths} postcard />
      <span className="w postcard-title">{drill.title}</span>
      <span className="w postcard-says">{drill.says}</span>
      <span className="q3">
        {countSaid(skaters.length, 'skater')} a rep, {drill.minutes} min
        {served.length > 0 && `. ${served.join(', ')}`}
      </span>
    </Link>
  );
}
