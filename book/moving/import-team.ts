import type * as Y from 'yjs';
import { isDocumentId } from '../documents/ids.ts';
import { currentSchema, type DocumentKind, documentSchemas, isDocumentKind } from '../documents/kinds.ts';
import { shapeOf } from '../documents/shape.ts';
import { migrated } from '../migrate/migrations.ts';
import type { Plain } from '../ydoc/build.ts';
import { fitted } from '../ydoc/fit.ts';
import { newDocument } from '../ydoc/new-document.ts';
import { isPlain } from '../ydoc/plain.ts';
import { findWithHistory } from './document-history.ts';
import { documentPlaceSaid, documentSaid } from './document-place-said.ts';
import { teamFileFormat, teamFileVersion } from './export-team.ts';
import {
  asSentence,
  type FileIssue,
  foundSaid,
  reasonOf,
  refusalSaid,
  shown,
  shownPath,
} from './file-issue.ts';

export interface ImportedDocument {
  readonly id: string;
  readonly kind: DocumentKind;
  readonly ydoc: Y.Doc;
}

export type Imported =
  | { readonly kind: 'ok'; readonly docs: readonly ImportedDocument[] }
  /** One sentence that says what is wrong and where in the file. */
  | { readonly kind: 'refused'; readonly sentence: string };

const textLimit = 64 * 2 ** 20;

/** The documents of a team file, the team first, or why it is refused. All of it or nothing. */
export function importTeam(text: string): Imported {
  if (text.length > textLimit)
    return refused(`The file is over ${textLimit / 2 ** 20} million characters long.`);
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return refused('This file is not JSON, or it is cut off.');
  }
  if (!isPlain(file) || file.format !== teamFileFormat)
    return refused('This is not a team file of Icewright.');
  if (typeof file.version !== 'number') return refused('The file does not say which version it is.');
  if (file.version > teamFileVersion) {
    return refused(
      `The file was made by a newer Icewright (version ${file.version}, this one reads up to ${teamFileVersion}).`,
    );
  }
  if (!Array.isArray(file.documents)) return refused('The file has no list of documents.');
  const docs: ImportedDocument[] = [];
  for (const [index, entry] of file.documents.entries()) {
    const one = documentFrom(entry, index);
    if (typeof one === 'string') return refused(one);
    if (docs.some(({ id }) => id === one.id)) {
      const path = `documents.${index}.id`;
      return refused(asSentence(refusalSaid(saidOf(entry, index), 'its id is in the file twice', path)));
    }
    docs.push(one);
  }
  const teams = docs.filter(({ kind }) => kind === 'team');
  if (teams.length !== 1)
    return refused(
      `A team file holds one team, and this one holds ${teams.length === 0 ? 'none' : teams.length}.`,
    );
  return { kind: 'ok', docs: [...teams, ...docs.filter(({ kind }) => kind !== 'team')] };
}

/** A document, or the sentence that says why not. */
function documentFrom(entry: unknown, index: number): ImportedDocument | string {
  const at = `documents.${index}`;
  const not = (reason: string, path: string) => asSentence(refusalSaid(saidOf(entry, index), reason, path));
  if (!isPlain(entry) || !isPlain(entry.value)) return not('this is not a document', at);
  const { id, value } = entry;
  if (typeof id !== 'string' || !isDocumentId(id))
    return not('its id must have 4 to 64 letters, digits, - or _', `${at}.id`);
  const { kind, schema } = value;
  if (!isDocumentKind(kind))
    return not(`there is no kind of document called ${shown(kind)}`, `${at}.value.kind`);
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 1)
    return not('it does not say which version it is', `${at}.value.schema`);
  if (schema > currentSchema[kind]) {
    const reason = `it was made by a newer Icewright (version ${schema}, this one reads up to ${currentSchema[kind]})`;
    return not(reason, `${at}.value.schema`);
  }
  const upToDate: Plain = schema < currentSchema[kind] ? migrated(kind, value) : value;
  const { issues } = fitted(upToDate, shapeOf(kind));
  const [first] = issues;
  if (first !== undefined) {
    // The schema as a whole says more of what is wrong than its fields one by one.
    const whole = documentSchemas[kind].safeParse(upToDate);
    const issue = whole.success ? undefined : (whole.error.issues[0] as unknown as FileIssue);
    const { path } = issue ?? first;
    const place = documentPlaceSaid(kind, path, upToDate);
    const reason = issue ? reasonOf(issue, upToDate) : `this does not fit, and ${foundSaid(first.value)}`;
    return not(refusalSaid(place, reason), `${at}.value.${shownPath(path)}`);
  }
  const ydoc = findWithHistory(entry.history, id, kind, upToDate) ?? newDocument(kind, id, upToDate as never);
  return { id, kind, ydoc };
}

/** Which document of the file it is: by its own name, else by its place. */
function saidOf(entry: unknown, index: number): string {
  const value = isPlain(entry) ? entry.value : undefined;
  const kind = isPlain(value) && isDocumentKind(value.kind) ? value.kind : 'document';
  return documentSaid(kind, value, `${kind} ${index + 1} of the file`);
}

const refused = (sentence: string): Imported => ({ kind: 'refused', sentence });
