import type { FilmPart } from '@icewright/book';
import { useEffect, useState } from 'react';
import { filmAddressOf, isFilmThere } from '../shell/server.ts';
import { findRemembered } from './film-hand.ts';
import type { Refusal } from './film-refusal.ts';
import { takeOpened } from './just-opened.ts';
import { findIndex, keepIndex } from './kept-index.ts';
import { type FilmSource, type OpenFilm, openFilm } from './open-film.ts';

export type FilmState =
  | { readonly kind: 'looking' }
  /** Neither this browser nor the server has the bytes. */
  | { readonly kind: 'missing' }
  | Refusal
  | { readonly kind: 'open'; readonly film: OpenFilm; readonly lies: 'hand' | 'server' };

/** Finds the bytes of a film by its hash and opens it: first what this browser holds, then the server's film folder. */
export const useFilm = (
  part: FilmPart | undefined,
): { readonly state: FilmState; readonly again: () => void } => {
  const [state, setState] = useState<FilmState>({ kind: 'looking' });
  const [tries, setTries] = useState(0);
  const hash = part?.hash;
  // biome-ignore lint/correctness/useExhaustiveDependencies: `tries` asks to look again
  useEffect(() => {
    let isOver = false;
    let opened: OpenFilm | undefined;
    setState({ kind: 'looking' });
    if (hash === undefined) return;
    void findFilm(hash).then(found => {
      if (found.kind === 'open') opened = found.film;
      if (isOver) opened?.close();
      else setState(found);
    });
    return () => {
      isOver = true;
      opened?.close();
    };
  }, [hash, tries]);
  return { state, again: () => setTries(count => count + 1) };
};

/** The film of this hash, opened, or why it cannot be. Whoever asked for it closes it. */
export const findFilm = async (hash: string): Promise<Exclude<FilmState, { kind: 'looking' }>> => {
  const found = await findBytes(hash);
  if (!found) return { kind: 'missing' };
  const film =
    takeOpened(hash) ??
    (await openFilm(found.source, undefined, await findIndex(hash)).catch(() => undefined));
  if (!film) return { kind: 'missing' };
  if (film.kind !== 'film') return film;
  if (!film.isWhole()) void film.whole.then(() => keepIndex(hash, film.index)).catch(() => undefined);
  return { kind: 'open', film, lies: found.lies };
};

const findBytes = async (
  hash: string,
): Promise<{ readonly source: FilmSource; readonly lies: 'hand' | 'server' } | undefined> => {
  const file = await findRemembered(hash);
  if (file) return { source: { file }, lies: 'hand' };
  if (await isFilmThere(hash))
    return { source: { url: new URL(filmAddressOf(hash), location.href).href }, lies: 'server' };
  return undefined;
};
