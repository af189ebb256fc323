import type { Drill, Team } from '@icewright/book';
import { useEffect, useRef, useState } from 'react';
import type { MeetingFilms } from '../use-films.ts';
import type { HisItem } from './his-items.ts';
import { withoutOthers } from './without-others.ts';

export interface MakingWish {
  readonly team: Team;
  readonly skaterId: keyof Team['skaters'];
  readonly items: readonly HisItem[];
  readonly films: MeetingFilms;
  readonly drill: Drill | undefined;
  readonly withFilm: boolean;
  readonly withNames: boolean;
}

/** Makes a player's page: the film is cut item by item, with its progress and a way to stop. */
export function useMaking() {
  /** Share of the film that is cut; null when nothing is being made. */
  const [share, setShare] = useState<number | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  const stop = useRef<AbortController | null>(null);
  useEffect(() => () => stop.current?.abort(), []);
  const make = async (wish: MakingWish): Promise<Blob | undefined> => {
    const controller = new AbortController();
    stop.current = controller;
    setFailed(null);
    setShare(0);
    try {
      const { cutStretch } = await import('./cut-stretch.ts');
      const { playerPage } = await import('./player-page.ts');
      const said = (words: string) =>
        wish.withNames ? words : withoutOthers(words, wish.team, wish.skaterId);
      const clips = new Map<string, Blob>();
      for (const [index, item] of wish.items.entries()) {
        const film = wish.withFilm ? wish.films.get(item.part.hash) : undefined;
        if (film?.kind !== 'open') continue;
        const clip = await cutStretch(film.player.film, item, {
          team: wish.team,
          said,
          signal: controller.signal,
          onShare: done => setShare((index + done) / wish.items.length),
        });
        if (clip === undefined) return undefined;
        clips.set(item.id, clip);
      }
      return new Blob([await playerPage({ ...wish, clips })], { type: 'text/html' });
    } catch (error) {
      setFailed(`The page could not be made: ${(error as Error).message}. Nothing was changed.`);
      return undefined;
    } finally {
      setShare(null);
    }
  };
  return { share, failed, make, stop: () => stop.current?.abort() };
}
