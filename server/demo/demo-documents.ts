import { type DocumentKind, newDocument, newId } from '@icewright/book';
import type * as Y from 'yjs';
import { demoValues } from './demo-values.ts';
import type { DemoFilm } from './games.ts';

/** The demo's films: the file they are made from and the name they get in the film folder. */
export const demoFilms = {
  hunt: { from: 'A.mp4', fileName: 'quillback-home.mp4' },
  join: { from: 'B.mp4', fileName: 'quillback-away.mp4' },
} as const;

/** A film that was put into the folder for the demo team: no other team's. */
export const isDemoFilm = (fileName: string): boolean =>
  Object.values(demoFilms).some(film => film.fileName === fileName);

export interface DemoDocument {
  readonly id: string;
  readonly kind: DocumentKind;
  readonly ydoc: Y.Doc;
}

/**
 * The documents of the demo team, the team first. Ids are those of the demo, or fresh ones when `isTaken` says that
 * one of them was erased before: an erased id never comes back.
 */
export function demoDocuments(
  films: { readonly hunt: DemoFilm; readonly join: DemoFilm },
  now: { readonly today: string; readonly at: string },
  isTaken: (id: string) => boolean = () => false,
): DemoDocument[] {
  const values = demoValues(films, now);
  const ids = new Map(values.map(({ id }) => [id, id]));
  if (values.some(({ id }) => isTaken(id))) for (const id of ids.keys()) ids.set(id, newId());
  return values.map(({ id, value }) => {
    const own = ids.get(id)!;
    return { id: own, kind: value.kind, ydoc: newDocument(value.kind, own, renamed(value, ids) as never) };
  });
}

/** A copy of a value in which every id of `ids` has its new name, as a value or as a key. */
function renamed(value: unknown, ids: ReadonlyMap<string, string>): unknown {
  if (typeof value === 'string') return ids.get(value) ?? value;
  if (Array.isArray(value)) return value.map(each => renamed(each, ids));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, each]) => [ids.get(key) ?? key, renamed(each, ids)]),
  );
}
