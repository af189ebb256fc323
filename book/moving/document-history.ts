import * as Y from 'yjs';
import { currentSchema, type DocumentKind } from '../documents/kinds.ts';
import type { Plain } from '../ydoc/build.ts';
import { readDocument } from '../ydoc/snapshot.ts';
import { stepWriterOf } from '../ydoc/upgrade.ts';
import { base64Of, bytesOfBase64 } from './base64.ts';
import { stableJson } from './stable-json.ts';

/** The changes a document was made of, as text: by them two copies of it that were changed apart can be brought together. */
export const historyOf = (ydoc: Y.Doc): string => base64Of(Y.encodeStateAsUpdate(ydoc));

/**
 * The document with its history, or null where that cannot be read or says something else than the `value` beside it, as in
 * a file that was changed by hand: then the value is what somebody wanted.
 */
export function findWithHistory(
  history: unknown,
  id: string,
  kind: DocumentKind,
  value: Plain,
): Y.Doc | null {
  if (typeof history !== 'string') return null;
  try {
    const ydoc = new Y.Doc({ guid: id });
    Y.applyUpdate(ydoc, bytesOfBase64(history));
    const isOurs = [...ydoc.share.keys()].every(name => name === 'doc');
    const read = readDocument(ydoc);
    if (!isOurs || read.kind === 'refused' || read.value.kind !== kind) return null;
    return stableJson(read.value) === stableJson(value) ? ydoc : null;
  } catch {
    return null;
  }
}

/** True for two copies of one document; false for two that were made apart and only bear one name. */
export function isOfOneHistory(one: Y.Doc, other: Y.Doc): boolean {
  const others = writersOf(other);
  return [...writersOf(one)].some(writer => others.has(writer));
}

/** The writers that stand for a step of version are the same everywhere, and no sign of anything. */
const writersOf = (ydoc: Y.Doc): Set<number> =>
  new Set([...Y.decodeStateVector(Y.encodeStateVector(ydoc)).keys()].filter(writer => writer > LAST_STEP));

const LAST_STEP = stepWriterOf(Math.max(...Object.values(currentSchema)));
