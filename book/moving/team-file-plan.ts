import * as Y from 'yjs';
import type { Entry } from '../documents/team.ts';
import { newDocument } from '../ydoc/new-document.ts';
import { isPlain } from '../ydoc/plain.ts';
import { readDocument } from '../ydoc/snapshot.ts';
import { isOfOneHistory } from './document-history.ts';
import type { ImportedDocument } from './import-team.ts';
import { stableJson } from './stable-json.ts';

/** What taking in a team file will do; nothing is done by planning it. */
export interface TeamFilePlan {
  readonly teamId: string;
  readonly teamName: string;
  /**
   * `fresh`: nothing of it is here. `joins`: the team is here and each document is brought together with what is here. `apart`: the
   * ids are here, but another team made apart has them, so all of it comes in beside that under ids of its own.
   */
  readonly way: 'fresh' | 'joins' | 'apart';
  /** Documents that are not here. */
  readonly added: readonly ImportedDocument[];
  /** Documents that were changed apart, with what is to be brought into the one here. */
  readonly merged: readonly { readonly id: string; readonly update: Uint8Array }[];
  /** Documents that say the same here, or that are newer here. */
  readonly sameCount: number;
  /** Documents of an id that is here, made apart: under an id of their own, with their lines for the team's list. */
  readonly beside: readonly { readonly document: ImportedDocument; readonly entry: Entry | undefined }[];
}

/** `findHere` gives the document of an id that is here. The team stands first in `docs`, as `importTeam` gives them. */
export function planTeamFile(
  docs: readonly ImportedDocument[],
  findHere: (id: string) => Y.Doc | undefined,
): TeamFilePlan {
  const [team] = docs;
  const here = docs.filter(({ id }) => findHere(id) !== undefined);
  const plan = { ...nameOf(team!), added: docs, merged: [], sameCount: 0, beside: [] };
  if (here.length === 0) return { ...plan, way: 'fresh' };
  const teamHere = findHere(team!.id);
  return teamHere !== undefined && fateOf(team!, teamHere) !== 'beside'
    ? joining(docs, findHere)
    : apart(docs, findHere);
}

type Fate = 'same' | 'beside' | { readonly update: Uint8Array };

function fateOf(document: ImportedDocument, here: Y.Doc): Fate {
  const before = saidBy(here);
  if (saidBy(document.ydoc) === before) return 'same';
  if (!isOfOneHistory(document.ydoc, here)) return 'beside';
  const update = Y.encodeStateAsUpdate(document.ydoc, Y.encodeStateVector(here));
  const both = new Y.Doc();
  Y.applyUpdate(both, Y.encodeStateAsUpdate(here));
  Y.applyUpdate(both, update);
  return saidBy(both) === before ? 'same' : { update };
}

function joining(
  docs: readonly ImportedDocument[],
  findHere: (id: string) => Y.Doc | undefined,
): TeamFilePlan {
  const [team] = docs;
  const { contents } = teamOf(team!);
  const added: ImportedDocument[] = [];
  const merged: { id: string; update: Uint8Array }[] = [];
  const beside: TeamFilePlan['beside'][number][] = [];
  let sameCount = 0;
  for (const document of docs) {
    const here = findHere(document.id);
    const fate = here === undefined ? 'added' : fateOf(document, here);
    if (fate === 'added') added.push(document);
    else if (fate === 'same') sameCount += 1;
    else if (fate !== 'beside') merged.push({ id: document.id, update: fate.update });
    else {
      const id = idBeside(document.id, saidBy(document.ydoc));
      if (findHere(id) !== undefined) sameCount += 1;
      else {
        const entry = contents[document.id];
        beside.push({
          document: renamed(document, new Map([[document.id, id]])),
          entry: entry && { ...entry, title: besideName(entry.title) },
        });
      }
    }
  }
  return { ...nameOf(team!), way: 'joins', added, merged, sameCount, beside };
}

function apart(docs: readonly ImportedDocument[], findHere: (id: string) => Y.Doc | undefined): TeamFilePlan {
  const all = docs.map(({ ydoc }) => saidBy(ydoc)).join('');
  const ids = new Map(docs.map(({ id }) => [id, idBeside(id, all)]));
  const others = docs.map(document => renamed(document, ids));
  const added = others.filter(({ id }) => findHere(id) === undefined);
  const sameCount = others.length - added.length;
  return { ...nameOf(others[0]!), way: 'apart', added, merged: [], sameCount, beside: [] };
}

/** What stands after a name of which there are two now. */
export const BESIDE = ' (from a file)';
/** Of every named thing at least so much stays of its name. */
const NAME_LIMIT = 180;

/** The same document under other ids, also where it speaks of others; its own name says where it comes from if it is kept alone. */
function renamed({ id, kind, ydoc }: ImportedDocument, ids: ReadonlyMap<string, string>): ImportedDocument {
  const read = readDocument(ydoc);
  if (read.kind === 'refused') throw new Error(`planTeamFile: ${id} was read and cannot be read`);
  const value = withIds(read.value, ids) as Record<string, unknown>;
  if (kind === 'team') value.name = besideName(String(value.name));
  else if (ids.size === 1 && typeof value.title === 'string') value.title = besideName(value.title);
  const other = ids.get(id)!;
  return { id: other, kind, ydoc: newDocument(kind, other, value as never) };
}

const besideName = (name: string) => `${name.slice(0, NAME_LIMIT)}${BESIDE}`;

/** Ids stand as whole texts, as values and as names of items. */
function withIds(value: unknown, ids: ReadonlyMap<string, string>): unknown {
  if (typeof value === 'string') return ids.get(value) ?? value;
  if (Array.isArray(value)) return value.map(each => withIds(each, ids));
  if (!isPlain(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [ids.get(key) ?? key, withIds(inner, ids)]),
  );
}

/** The same for the same words, so that a file taken in twice comes in once. */
const idBeside = (id: string, said: string): string => `${id.slice(0, 40)}-${hashOf(said)}`;

/** FNV-1a, twice with other starts: 64 bits are enough to tell two documents of one id apart. */
function hashOf(text: string): string {
  const parts = [0x811c9dc5, 0x9dc5811c].map(start => {
    let hash = start;
    for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
    return (hash >>> 0).toString(36);
  });
  return parts.join('');
}

function saidBy(ydoc: Y.Doc): string {
  const read = readDocument(ydoc);
  return read.kind === 'ok' ? stableJson({ ...read.value }) : '';
}

function teamOf({ ydoc }: ImportedDocument) {
  const read = readDocument(ydoc);
  if (read.kind !== 'ok' || read.value.kind !== 'team')
    throw new Error('planTeamFile: a file that was read has no team');
  return { ...read.value, contents: read.value.contents as Readonly<Record<string, Entry>> };
}

const nameOf = (team: ImportedDocument) => ({ teamId: team.id, teamName: teamOf(team).name });
