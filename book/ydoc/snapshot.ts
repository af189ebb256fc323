import type * as Y from 'yjs';
import { blankOf } from '../blank/blank.ts';
import type { Issue } from '../documents/issue.ts';
import { type AnyDocument, currentSchema, isDocumentKind } from '../documents/kinds.ts';
import { shapeOf } from '../documents/shape.ts';
import { migrated } from '../migrate/migrations.ts';
import type { Plain } from './build.ts';
import { fitted } from './fit.ts';
import { type ChangedTypes, plainOf } from './plain.ts';
import { rootOf } from './root.ts';

export type ReadResult =
  /** `issues`: values that no longer fit; they are kept in the Y.Doc and left out of `value`. */
  | { readonly kind: 'ok'; readonly value: AnyDocument; readonly issues: readonly Issue[] }
  | {
      readonly kind: 'refused';
      readonly reason: 'newer' | 'notOurs' | 'broken';
      readonly issues: readonly Issue[];
    };

export interface Snapshot {
  readonly raw: Plain;
  readonly read: ReadResult;
}

/**
 * What a Y.Doc says now. Parts that did not change since `previous` are the same objects as then, so a screen can
 * compare by identity. Costs one walk over the document, or with `changed`, all types that changed since `previous`, over
 * those alone; only changed items are checked again.
 */
export function snapshotOf(
  ydoc: Y.Doc,
  previous?: Snapshot,
  table = currentSchema,
  changed?: ChangedTypes,
): Snapshot {
  const raw = plainOf(rootOf(ydoc), previous?.raw, changed);
  if (previous !== undefined && raw === previous.raw) return previous;
  return { raw, read: readRaw(raw, table) };
}

/**
 * The document in a Y.Doc as a valid value, or why it cannot be read. Never half of a newer document. `table` says up
 * to which version the program reads: another than its own stands for an older program.
 */
export const readDocument = (ydoc: Y.Doc, table = currentSchema): ReadResult =>
  snapshotOf(ydoc, undefined, table).read;

function readRaw(raw: Plain, table: typeof currentSchema): ReadResult {
  const { kind, schema } = raw;
  if (!isDocumentKind(kind)) return refused('notOurs', 'kind', kind, 'This is not a document of Icewright.');
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 1) {
    return refused('broken', 'schema', schema, 'The document does not say which version it is.');
  }
  const ours = table[kind];
  if (schema > ours) {
    const message = `Made by a newer Icewright: version ${schema}, this one reads up to ${ours}.`;
    return refused('newer', 'schema', schema, message);
  }
  const shape = shapeOf(kind);
  const upToDate = schema < ours ? migrated(kind, raw) : raw;
  for (const list of shape.lists.keys()) {
    if (typeof upToDate[list] !== 'object' || upToDate[list] === null) {
      return refused('broken', list, upToDate[list], `The document has lost its list of ${list}.`);
    }
  }
  const { value, issues } = fitted(upToDate, shape, blankOf(kind));
  if (value === undefined) return { kind: 'refused', reason: 'broken', issues };
  return { kind: 'ok', value: value as unknown as AnyDocument, issues };
}

function refused(
  reason: 'newer' | 'notOurs' | 'broken',
  key: string,
  value: unknown,
  message: string,
): ReadResult {
  return { kind: 'refused', reason, issues: [{ code: reason, path: [key], value, message }] };
}
