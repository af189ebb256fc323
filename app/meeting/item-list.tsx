import type { Team } from '@icewright/book';
import type { ReactNode } from 'react';
import { handClasses, useReorder } from '../practices/use-reorder.ts';
import { ItemStill } from './item-still.tsx';
import { filmSecondsOf, type MeetingTimes, meetingClock, spanSaid } from './meeting-times.ts';
import { lineOf, type ShownItem, whichOf } from './shown-item.ts';
import type { MeetingFilms } from './use-films.ts';

/** The meeting in its order: when, the picture, what is said. Dragged by its head, or moved with Alt and the arrows. */
export function ItemList(props: {
  readonly team: Team;
  readonly items: readonly ShownItem[];
  readonly times: MeetingTimes;
  readonly films: MeetingFilms;
  readonly chosen: string | undefined;
  readonly onChoose: (id: string) => void;
  readonly onMove: (id: string, toIndex: number) => void;
  /** Stands below the chosen one where there is no margin. */
  readonly below?: ReactNode;
}) {
  const { team, items, times, films, chosen } = props;
  const ids = items.map(({ id }) => id);
  const { hand, handle, onKeyDown } = useReorder(ids, 'down', props.onMove);
  return (
    <>
      <ol className="items" data-list>
        {items.map(shown => (
          <li
            key={shown.id}
            data-item={shown.id}
            className={classOf(shown, chosen, hand, ids)}
            style={hand?.id === shown.id ? { transform: `translateY(${hand.byPx}px)` } : undefined}
          >
            <button
              type="button"
              className="item-head"
              aria-pressed={chosen === shown.id}
              aria-describedby="item-keys"
              onClick={() => props.onChoose(shown.id)}
              onKeyDown={onKeyDown(shown.id)}
              {...handle(shown.id)}
            >
              <span className="item-clock">{clockOf(shown, times)}</span>
              <ItemStill shown={shown} films={films} />
              <span className="item-words">
                <span className="w item-says">{lineOf(shown, team)}</span>
                <span className="q2">{whichOf(shown, team)}</span>
                {shown.state === 'there' && shown.seen !== '' && <span className="q3">{shown.seen}</span>}
                <Trouble shown={shown} films={films} />
              </span>
              <span className="item-lengths q2">{lengthsSaid(shown)}</span>
            </button>
            {chosen === shown.id && props.below}
          </li>
        ))}
      </ol>
      <p className="cap" id="item-keys">
        Drag to change the order (a finger holds first), or <kbd>Alt</kbd> with the arrows.
      </p>
    </>
  );
}

/** What is missing is said where it is missing; the rest goes on. */
function Trouble({ shown, films }: { readonly shown: ShownItem; readonly films: MeetingFilms }) {
  if (shown.state === 'gone')
    return (
      <span className="warm">It is no longer there, or its game cannot be read here. The words stay.</span>
    );
  if (shown.state !== 'there') return null;
  const film = films.get(shown.part.hash);
  if (film?.kind === 'missing')
    return <span className="warm">This browser has no way to the film {shown.part.fileName} now.</span>;
  if (film?.kind === 'refused')
    return <span className="warm">The film {shown.part.fileName} cannot be shown here.</span>;
  return null;
}

const clockOf = ({ id, item }: ShownItem, times: MeetingTimes): string => {
  const time = times.of.get(id);
  return time === undefined || item.hidden ? 'hidden' : meetingClock(time.startS);
};

const lengthsSaid = (shown: ShownItem): string => {
  const { stop, talkMinutes } = shown.item;
  return [
    `film ${filmSecondsOf(shown).toFixed(1)} s`,
    stop === undefined ? '' : stop.seconds === undefined ? 'stands' : `stands ${stop.seconds} s`,
    talkMinutes > 0 ? `talk ${spanSaid(talkMinutes * 60)}` : '',
  ]
    .filter(Boolean)
    .join(', ');
};

function classOf(
  { id, item }: ShownItem,
  chosen: string | undefined,
  hand: { readonly id: string; readonly toIndex: number } | null,
  ids: readonly string[],
): string {
  const names = ['item', ...handClasses(id, hand, ids)];
  if (id === chosen) names.push('chosen');
  if (item.hidden) names.push('hidden-item');
  return names.join(' ');
}
