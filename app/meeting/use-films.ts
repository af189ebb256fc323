import { useEffect, useMemo, useRef, useState } from 'react';
import { Player } from '../film/player.ts';
import { type FilmState, findFilm } from '../film/use-film.ts';
import { Stills } from './stills.ts';

/** A film of the meeting as it stands: being looked for, open with its player, or not at hand. */
export type MeetingFilm =
  | { readonly kind: 'open'; readonly player: Player; readonly stills: Stills }
  | Exclude<FilmState, { kind: 'open' }>;

export type MeetingFilms = ReadonlyMap<string, MeetingFilm>;

/** Every film that a meeting needs, each opened once and kept open for as long as the page stands. */
export function useFilms(hashes: readonly string[]): {
  readonly films: MeetingFilms;
  /** Looks again for one that was not at hand. */
  readonly again: (hash: string) => void;
} {
  const [films, setFilms] = useState<MeetingFilms>(new Map());
  const asked = useRef(new Map<string, () => void>());
  const key = [...new Set(hashes)].sort().join(' ');
  const wanted = useMemo(() => (key === '' ? [] : key.split(' ')), [key]);
  const put = useRef((hash: string, film: MeetingFilm) =>
    setFilms(now => new Map([...now].filter(([one]) => one !== hash)).set(hash, film)),
  );
  const open = useRef((hash: string) => {
    let isOver = false;
    let close = () => {};
    asked.current.set(hash, () => {
      isOver = true;
      close();
    });
    put.current(hash, { kind: 'looking' });
    void findFilm(hash).then(found => {
      if (found.kind !== 'open') {
        if (!isOver) put.current(hash, found);
        return;
      }
      const player = new Player(found.film);
      const stills = new Stills(found.film);
      close = () => {
        player.close();
        stills.close();
        found.film.close();
      };
      if (isOver) close();
      else put.current(hash, { kind: 'open', player, stills });
    });
  });
  useEffect(() => {
    for (const hash of wanted) if (!asked.current.has(hash)) open.current(hash);
  }, [wanted]);
  useEffect(() => {
    const all = asked.current;
    return () => {
      for (const end of all.values()) end();
      all.clear();
    };
  }, []);
  return {
    films,
    again: hash => {
      asked.current.get(hash)?.();
      open.current(hash);
    },
  };
}
