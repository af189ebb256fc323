import { emptyDrill, type Team } from '@icewright/book';
import { useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import { focusNext } from '../film/focus-next.ts';
import { GoneFromList } from '../film/gone-from-list.tsx';
import { Act } from '../parts/act.tsx';
import { Empty } from '../parts/empty.tsx';
import { countSaid, daySaid, today } from '../parts/figures.ts';
import { createDocument, endStep, setRemoved, useDocuments } from '../shell/book.ts';
import { RunningHead } from '../shell/running-head.tsx';
import { entriesOf } from '../shell/season.ts';
import { UndoActs } from '../shell/undo-acts.tsx';
import { useAskedLast } from './library/asked-last.ts';
import { ANY, shelvesOf } from './library/library-query.ts';
import { LibrarySentence } from './library/library-sentence.tsx';
import { Postcard } from './library/postcard.tsx';
import { TakenOut } from './library/taken-out.tsx';
import { staysSaid, usesOf } from './library/uses-of.ts';
import './library/library.css';
import { DropDrills, TakeInAct, TakenIn, useTakeIn } from './out/take-in.tsx';

/** All drills as postcards, by the habit they serve. */
export function DrillList({ team, teamId }: { readonly team: Team; readonly teamId: string }) {
  const [, go] = useLocation();
  const [query, setQuery] = useAskedLast();
  const ids = useMemo(
    () =>
      Object.entries(team.contents)
        .filter(([, entry]) => entry.kind === 'drill' && !entry.removed)
        .sort(([, a], [, b]) => a.title.localeCompare(b.title))
        .map(([id]) => id),
    [team.contents],
  );
  const views = useDocuments('drill', ids);
  const takeIn = useTakeIn(team, views);
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
  const ready = ids.flatMap(id => {
    const view = views.get(id);
    return view?.state === 'ready' ? [[id, view.value] as const] : [];
  });
  const shelves = shelvesOf(ready, query, habit => team.habits[habit as never]?.title ?? '');
  const practiceIds = useMemo(() => entriesOf(team, 'practice').map(([id]) => id), [team]);
  const practices = useDocuments('practice', practiceIds);
  const uses = useMemo(
    () =>
      usesOf(
        [...practices].flatMap(([id, view]) => (view.state === 'ready' ? [[id, view.value] as const] : [])),
        today(),
      ),
    [practices],
  );
  const [gone, setGone] = useState<string>();
  const takeOut = (id: string) => {
    focusNext('.place .undone .act');
    endStep(teamId);
    setRemoved(id, true);
    setGone(id);
  };
  const shownCount = shelves.reduce((sum, shelf) => sum + 1 + shelf.versions.length, 0);
  // A version counts with its drill, as long as that is here.
  const versionCount = ready.filter(([, { variantOf }]) => views.has(variantOf?.drill as never)).length;
  const unreadCount = ids.filter(id => views.get(id)?.state === 'refused').length;
  const head = (
    <RunningHead
      title="Drills"
      titleWords="Drills"
      meta={
        <>
          <b>{countSaid(ids.length - versionCount, 'drill')}</b>
          {versionCount > 0 && ` and ${countSaid(versionCount, 'version')} of them`}
        </>
      }
      acts={
        <>
          <UndoActs />
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
        <div className="place">
          <GoneFromList team={team} what="drill" id={gone} onBack={() => setGone(undefined)} />
          <TakenOut team={team} />
        </div>
      </DropDrills>
    );
  return (
    <DropDrills take={takeIn.take}>
      {head}
      <TakenIn {...takeIn} />
      <div className="place">
        <div className="library-ask">
          <LibrarySentence team={team} query={query} onQuery={setQuery} />
          <label className="library-words">
            <span className="q3">words</span>
            <input
              type="search"
              className="entry"
              value={query.words}
              maxLength={80}
              onChange={event => setQuery({ ...query, words: event.target.value })}
            />
          </label>
          {shownCount < ready.length && (
            <p className="q3" role="status">
              {shownCount} of {countSaid(ready.length, 'drill and version', 'drills and versions')}.{' '}
              <Act bare onPress={() => setQuery(ANY)}>
                Show all
              </Act>
            </p>
          )}
        </div>
        <GoneFromList
          team={team}
          what="drill"
          id={gone}
          says={gone === undefined ? '' : staysSaid(uses(gone), daySaid)}
          onBack={() => setGone(undefined)}
        />
        <ul className="postcards">
          {shelves.map(shelf => (
            <li key={shelf.id}>
              <Postcard shelf={shelf} team={team} uses={uses(shelf.id)} onTakeOut={() => takeOut(shelf.id)} />
            </li>
          ))}
        </ul>
        {unreadCount > 0 && (
          <p className="warm">
            {countSaid(unreadCount, 'drill')} cannot be read by this Icewright: written by a newer one, or
            damaged.
          </p>
        )}
        {shelves.length === 0 && <p className="q2">No drill answers this. Ask for less, or draw one.</p>}
        <TakenOut team={team} />
      </div>
    </DropDrills>
  );
}
