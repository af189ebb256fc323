import type { Meeting, Team } from '@icewright/book';
import { useMemo, useState } from 'react';
import { takeFilm } from '../film/film-door.ts';
import { FilmMissing } from '../film/film-missing.tsx';
import { Act, ActLink } from '../parts/act.tsx';
import { Empty } from '../parts/empty.tsx';
import { countSaid, daySaid } from '../parts/figures.ts';
import { useIsNarrow } from '../parts/use-is-narrow.ts';
import { addressOfMeetingSheet, addressOfSpeaking } from '../shell/addresses.ts';
import { edit, endStep } from '../shell/book.ts';
import { DocumentHead } from '../shell/document-head.tsx';
import { UnfitValues } from '../shell/document-not-here.tsx';
import { useKeys } from '../shell/keys.ts';
import { AddItems } from './add-items.tsx';
import { BudgetBar } from './budget-bar.tsx';
import { HandOutPanel } from './handout/hand-out-panel.tsx';
import { ItemFields } from './item-fields.tsx';
import { ItemList } from './item-list.tsx';
import { ItemPicture } from './item-picture.tsx';
import { MeetingFields } from './meeting-fields.tsx';
import { meetingTimesOf } from './meeting-times.ts';
import { MeetingReel } from './reel/meeting-reel.tsx';
import type { ShownItem } from './shown-item.ts';
import { useFilms } from './use-films.ts';

/** The plan of a meeting: the moments in their order against the time there is; beside them the chosen one. */
export function MeetingPage(props: {
  readonly team: Team;
  readonly meetingId: string;
  readonly meeting: Meeting;
  readonly items: readonly ShownItem[];
  readonly unfitCount: number;
}) {
  const { team, meetingId, meeting, items } = props;
  const editing = edit(meetingId);
  const [selected, setSelected] = useState<string>();
  const [isAdding, setAdding] = useState(false);
  const [isHandingOut, setHandingOut] = useState(false);
  const [isReeling, setReeling] = useState(false);
  const times = useMemo(() => meetingTimesOf(meeting, items), [meeting, items]);
  const { films, again } = useFilms(hashesOf(items));
  const isNarrow = useIsNarrow(1100);
  const ids = items.map(({ id }) => id);
  const chosen = selected !== undefined && ids.includes(selected) ? selected : ids[0];
  const select = (by: number) => {
    const next = ids[Math.max(0, Math.min(ids.length - 1, ids.indexOf(chosen ?? '') + by))];
    if (next !== undefined) setSelected(next);
  };
  const move = (id: string, toIndex: number) => {
    endStep(meetingId);
    editing.move(['items'], id, toIndex);
    setSelected(id);
  };
  useKeys([
    { keys: 'a', says: 'put moments in', act: () => setAdding(true) },
    { keys: 'ArrowUp', says: 'the moment before', act: () => select(-1) },
    { keys: 'ArrowDown', says: 'the next moment', act: () => select(1) },
  ]);
  const one = items.find(({ id }) => id === chosen);
  const film = one?.state === 'there' ? films.get(one.part.hash) : undefined;
  const beside = one && (
    <>
      {one.state === 'there' && film?.kind === 'open' && (
        <ItemPicture shown={one} player={film.player} editing={editing} />
      )}
      {one.state === 'there' && film?.kind === 'missing' && (
        <FilmMissing
          part={one.part}
          onFound={() => again(one.part.hash)}
          onOther={other => void takeFilm(other).then(() => again(one.part.hash))}
        />
      )}
      <ItemFields
        key={one.id}
        shown={one}
        place={{ index: ids.indexOf(one.id), count: ids.length }}
        editing={editing}
        onMove={toIndex => move(one.id, toIndex)}
        onRemove={() => {
          endStep(meetingId);
          editing.remove(['items', one.id]);
        }}
      />
    </>
  );
  return (
    <>
      <DocumentHead
        back={{ to: '/film', said: 'Film' }}
        what="meeting"
        title={meeting.title}
        editing={editing}
        meta={`${daySaid(meeting.day)}, ${countSaid(items.length, 'moment')}`}
        acts={
          <>
            <Act opens={isAdding} onPress={() => setAdding(!isAdding)}>
              Put moments in
            </Act>
            {items.some(({ item }) => !item.hidden) && (
              <>
                <ActLink to={addressOfMeetingSheet(meetingId)}>Sheet</ActLink>
                <ActLink lead to={addressOfSpeaking(meetingId)}>
                  Run the meeting
                </ActLink>
              </>
            )}
          </>
        }
      />
      <main className="place meeting">
        <div className="meeting-side">
          {isAdding && (
            <AddItems
              team={team}
              meetingId={meetingId}
              meeting={meeting}
              onAdded={setSelected}
              onClose={() => setAdding(false)}
            />
          )}
          <UnfitValues what="meeting" count={props.unfitCount} />
          {items.length === 0 ? (
            <Empty says="Three moments that show one thing are worth more than twelve that show everything.">
              <Act lead onPress={() => setAdding(true)}>
                Put moments in
              </Act>
            </Empty>
          ) : (
            <>
              <BudgetBar meeting={meeting} times={times} items={items} chosen={chosen} />
              <ItemList
                team={team}
                items={items}
                times={times}
                films={films}
                chosen={chosen}
                onChoose={setSelected}
                onMove={move}
                below={isNarrow ? <div className="item-below">{beside}</div> : undefined}
              />
            </>
          )}
        </div>
        <aside className="margin">
          {!isNarrow && beside}
          <MeetingFields meeting={meeting} editing={editing} />
          {items.length > 0 && (
            <section className="sec reel">
              <h2>
                Reel <span className="q3">the whole meeting as one film</span>
              </h2>
              <Act opens={isReeling} onPress={() => setReeling(!isReeling)}>
                Make a reel
              </Act>
              {isReeling && <MeetingReel {...{ team, title: meeting.title, items, films }} />}
            </section>
          )}
          {items.length > 0 && (
            <section className="sec">
              <h2>
                Hand out <span className="q3">to one player, own moments alone</span>
              </h2>
              {isHandingOut ? (
                <HandOutPanel team={team} meetingId={meetingId} items={items} films={films} />
              ) : (
                <Act opens={false} onPress={() => setHandingOut(true)}>
                  Hand out to a player
                </Act>
              )}
            </section>
          )}
        </aside>
      </main>
    </>
  );
}

const hashesOf = (items: readonly ShownItem[]): string[] =>
  items.flatMap(shown => (shown.state === 'there' ? [shown.part.hash] : []));
