import type { Team } from '@icewright/book';
import { useEffect, useMemo, useState } from 'react';
import { ReelDesk } from '../../film/reel/reel-desk.tsx';
import type { ReelFilms } from '../../film/reel/reel-films.ts';
import { countSaid } from '../../parts/figures.ts';
import { named } from '../../parts/named.ts';
import type { ShownItem } from '../shown-item.ts';
import type { Stills } from '../stills.ts';
import type { MeetingFilms } from '../use-films.ts';
import { meetingEntriesOf } from './meeting-entries.ts';
import { reelFilmOf } from './reel-film-of.ts';
import { reelKeyOf } from './reel-key.ts';

/** The meeting as one film for others, out of all the games and parts its moments are from. */
export function MeetingReel({
  team,
  title,
  items,
  films,
}: {
  readonly team: Team;
  readonly title: string;
  readonly items: readonly ShownItem[];
  readonly films: MeetingFilms;
}) {
  const there = useReelFilms(team, items, films);
  const entries = useMemo(() => there && meetingEntriesOf(items, there, team), [items, there, team]);
  const stills = useMemo(() => stillsOf(items, films), [items, films]);
  if (!there || !entries) return <p className="q2">The films are being opened.</p>;
  const missing = items.filter(({ item }) => !item.hidden).length - entries.length;
  return (
    <>
      {missing > 0 && (
        <p className="warm">The film of {countSaid(missing, 'moment')} is not here and is left out.</p>
      )}
      {entries.length > 0 && (
        <ReelDesk
          entries={entries}
          films={there}
          stills={stills}
          title={count => `${named(title, 'meeting')}, ${countSaid(count, 'moment')}`}
        />
      )}
    </>
  );
}

/** Small pictures of the films that are open, as the list of the meeting shows them. */
const stillsOf = (items: readonly ShownItem[], films: MeetingFilms): ReadonlyMap<string, Stills> =>
  new Map(
    items.flatMap(shown => {
      const film = shown.state === 'there' ? films.get(shown.part.hash) : undefined;
      return shown.state === 'there' && film?.kind === 'open' ? [[reelKeyOf(shown), film.stills]] : [];
    }),
  );

/** The films of the items that are open, each with its marks; undefined until they are there. */
const useReelFilms = (
  team: Team,
  items: readonly ShownItem[],
  films: MeetingFilms,
): ReelFilms | undefined => {
  const [there, setThere] = useState<ReelFilms>();
  useEffect(() => {
    let isOver = false;
    const shown = items.filter(one => one.state === 'there');
    const isOpening = shown.some(({ part }) => (films.get(part.hash)?.kind ?? 'looking') === 'looking');
    if (isOpening) return;
    const one = new Map(shown.map(item => [reelKeyOf(item), item]));
    void Promise.all(
      [...one].flatMap(([key, item]) => {
        const open = films.get(item.part.hash);
        if (open?.kind !== 'open') return [];
        return [reelFilmOf(item, open.player.film, team).then(film => [key, film] as const)];
      }),
    ).then(found => isOver || setThere(new Map(found)));
    return () => {
      isOver = true;
    };
  }, [team, items, films]);
  return there;
};
