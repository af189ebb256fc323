import type * as Y from 'yjs';
import { isDocumentId } from '../documents/ids.ts';
import { currentSchema, type DocumentKind, isDocumentKind } from '../documents/kinds.ts';
import { shapeOf } from '../documents/shape.ts';
import { migrated } from '../migrate/migrations.ts';
import type { Plain } from '../ydoc/build.ts';
import { fitted } from '../ydoc/fit.ts';
import { newDocument } from '../ydoc/new-document.ts';
import { isPlain } from '../ydoc/plain.ts';
import { findWithHistory } from './document-history.ts';
import { teamFileFormat, teamFileVersion } from './export-team.ts';
import { shown } from './file-issue.ts';

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
  if (typeof file.version !== 'number') return refused('version: the file does not say which version it is.');
  if (file.version > teamFileVersion) {
    return refused(
      `version: the file was made by a newer Icewright (version ${file.version}, this one reads up to ${teamFileVersion}).`,
    );
  }
  if (!Array.isArray(file.documents)) return refused('documents: the list of documents is missing.');
  const docs: ImportedDocument[] = [];
  for (const [index, entry] of file.documents.entries()) {
    const at = `documents.${index}`;
    const one = documentFrom(entry, at);
    if (typeof one === 'string') return refused(one);
    if (docs.some(({ id }) => id === one.id)) return refused(`${at}.id: ${one.id} is in the file twice.`);
    docs.push(one);
  }
  const teams = docs.filter(({ kind }) => kind === 'team');
  if (teams.length !== 1) return refused(`documents: a team file holds one team, this one ${teams.length}.`);
  return { kind: 'ok', docs: [...teams, ...docs.filter(({ kind }) => kind !== 'team')] };
}

/** A document, or the sentence that says why not. */
function documentFrom(entry: unknown, at: string): ImportedDocument | string {
  if (!isPlain(entry) || !isPlain(entry.value)) return `${at}: this is not a document.`;
  const { id, value } = entry;
  if (typeof id !== 'string' || !isDocumentId(id))
    return `${at}.id: an id has 4 to 64 letters, digits, - or _.`;
  const { kind, schema } = value;
  if (!isDocumentKind(kind)) return `${at}.value.kind: there is no kind of document called ${shown(kind)}.`;
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 1) {
    return `${at}.value.schema: the document does not say which version it is.`;
  }
  if (schema > currentSchema[kind]) {
    return `${at}.value.schema: the ${kind} was made by a newer Icewright (version ${schema}, this one reads up to ${currentSchema[kind]}).`;
  }
  const upToDate: Plain = schema < currentSchema[kind] ? migrated(kind, value) : value;
  const { issues } = fitted(upToDate, shapeOf(kind));
  const [first] = issues;
  if (first !== undefined) {
    const found = first.value === undefined ? 'it is missing' : `found ${shown(first.value)}`;
    return `${at}.value.${first.path.join('.')}: this does not fit (${found}).`;
  }
  const ydoc = findWithHistory(entry.history, id, kind, upToDate) ?? newDocument(kind, id, upToDate as never);
  return { id, kind, ydoc };
}

const refused = (sentence: string): Imported => ({ kind: 'refused', sentence });
