import * as Y from 'yjs';
import { currentSchema, type DocumentKind } from '../documents/kinds.ts';
import { shapeOf } from '../documents/shape.ts';
import { migrated, migrations } from '../migrate/migrations.ts';
import type { Plain } from './build.ts';
import { isSame, plainOf } from './plain.ts';
import { findKind, rootOf } from './root.ts';
import { writeField, writeList } from './write.ts';

/** True for a document that this program reads through a migration and must bring up before it writes into it. */
export const isOlder = (ydoc: Y.Doc, table = currentSchema): boolean => {
  const kind = findKind(ydoc);
  return kind !== null && schemaOf(ydoc) < table[kind];
};

/**
 * Brings an older document up where it lies, inside the transaction of the first change: older programs then refuse it
 * instead of half reading what is written next.
 *
 * Two people may do this at the same time, apart. A list that each made on his own would be two lists, and a merge
 * keeps one of them with all that it holds: what the other put into his would be gone. So the new lists and the new
 * version number are written in the name of a writer that stands for the step itself; whoever takes the step writes
 * the very same change, and a merge sees it once.
 */
export function upgrade(ydoc: Y.Doc, steps = migrations): void {
  const kind = findKind(ydoc)!;
  for (let schema = schemaOf(ydoc); schema <= steps[kind].length; schema += 1) {
    const only = { ...steps, [kind]: steps[kind].slice(0, schema) };
    takeStep(ydoc, kind, migrated(kind, plainOf(rootOf(ydoc), undefined), only));
  }
}

/** The writer that stands for the step to a version. Writers of people are random numbers of 32 bits. */
export const stepWriterOf = (schema: number): number => schema;

/** What the document would be, for trying a change before anything is touched. */
export function upgradedCopy(ydoc: Y.Doc): Y.Doc {
  const copy = new Y.Doc({ guid: ydoc.guid });
  Y.applyUpdate(copy, Y.encodeStateAsUpdate(ydoc));
  copy.transact(() => upgrade(copy));
  return copy;
}

function takeStep(ydoc: Y.Doc, kind: DocumentKind, next: Plain): void {
  const root = rootOf(ydoc);
  const schema = next.schema as number;
  const shape = shapeOf(kind);
  writeAs(ydoc, stepWriterOf(schema), () => {
    // In the order of the alphabet: the same change byte for byte, whatever the order of the schema's fields.
    for (const key of [...shape.lists.keys()].sort()) {
      if (Object.hasOwn(next, key) && !(root.get(key) instanceof Y.Map)) root.set(key, new Y.Map());
    }
    root.set('schema', schema);
  });
  // What the step says otherwise depends on what stood there: an ordinary change, of which the last writer's stays.
  for (const [key, value] of Object.entries(next)) {
    const list = shape.lists.get(key);
    if (list !== undefined) writeList(root.get(key) as Y.Map<unknown>, value as Plain, list);
    else if (!isSame(plainOf(root, undefined)[key], value)) writeField(root, shape, key, value);
  }
}

function writeAs(ydoc: Y.Doc, writer: number, write: () => void): void {
  const own = ydoc.clientID;
  // A step that was taken before and is somehow to be taken again must not use its numbers twice.
  const isTaken = Y.decodeStateVector(Y.encodeStateVector(ydoc)).has(writer);
  try {
    if (!isTaken) ydoc.clientID = writer;
    write();
  } finally {
    ydoc.clientID = own;
  }
}

const schemaOf = (ydoc: Y.Doc): number => rootOf(ydoc).get('schema') as number;
