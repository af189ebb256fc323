import { currentSchema, isDocumentKind, rootOf } from '@icewright/book';
import * as Y from 'yjs';
import { Refusal } from '../refusal.ts';

/** Bytes of one change, and of a whole document; a season's game is well under one megabyte. */
export const updateLimitBytes = 4 * 2 ** 20;
export const documentLimitBytes = 32 * 2 ** 20;

/**
 * The door of one open document. A change is first made on a copy; only if the copy is still a document of ours, of
 * the same kind and of no newer version, may it be made on the document itself.
 */
export class Door {
  /** Made at the first change: a season is opened to be read, and most of its games are never changed. */
  private copy: Y.Doc | undefined;
  private byteCount = 0;

  constructor(private readonly ydoc: Y.Doc) {}

  /** Throws a refusal, and the document stays as it was. Else says whether the change brings up an older document. */
  check(update: Uint8Array): { readonly bringsUp: boolean } {
    if (isNothing(update)) return { bringsUp: false };
    this.copy ??= this.freshCopy();
    if (update.length > updateLimitBytes) {
      throw new Refusal(`A change of ${update.length} bytes is too large; ${updateLimitBytes} are allowed.`, {
        code: 4413,
      });
    }
    if (this.byteCount + update.length > documentLimitBytes) this.weigh(update);
    const [kindBefore, schemaBefore] = [rootOf(this.ydoc).get('kind'), rootOf(this.ydoc).get('schema')];
    try {
      Y.applyUpdate(this.copy, update);
      const reason = findFault(this.copy, kindBefore);
      if (reason !== null) throw reason;
      this.byteCount += update.length;
      return { bringsUp: schemaBefore !== undefined && rootOf(this.copy).get('schema') !== schemaBefore };
    } catch (error) {
      this.copy = this.freshCopy();
      if (error instanceof Refusal) throw error;
      throw new Refusal('This is not a change of a document: its bytes cannot be read.');
    }
  }

  private freshCopy(): Y.Doc {
    const state = Y.encodeStateAsUpdate(this.ydoc);
    this.byteCount = state.length;
    return copyFrom(state);
  }

  private weigh(update: Uint8Array): void {
    this.byteCount = Y.encodeStateAsUpdate(this.ydoc).length;
    if (this.byteCount + update.length > documentLimitBytes) {
      throw new Refusal(`The document would be over ${documentLimitBytes / 2 ** 20} megabytes.`, {
        code: 4413,
      });
    }
  }
}

/** The change of a device that has nothing new: no structs and no deletions. */
const isNothing = (update: Uint8Array): boolean => update.length === 2 && update[0] === 0 && update[1] === 0;

function findFault(ydoc: Y.Doc, kindBefore: unknown): Refusal | null {
  const root = rootOf(ydoc);
  for (const name of ydoc.share.keys()) {
    if (name !== 'doc') return new Refusal('This is not a document of Icewright.');
  }
  // A device that opens a document it has not seen yet says first that it has nothing.
  if (root.size === 0 && kindBefore === undefined) return null;
  const [kind, schema] = [root.get('kind'), root.get('schema')];
  if (!isDocumentKind(kind)) return new Refusal('This is not a document of Icewright.');
  if (kindBefore !== undefined && kind !== kindBefore) {
    return new Refusal(`A ${String(kindBefore)} cannot become a ${kind}.`);
  }
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 1) {
    return new Refusal('The document does not say which version it is.');
  }
  if (schema > currentSchema[kind]) {
    return new Refusal(
      `Made by a newer Icewright: version ${schema}, this one reads up to ${currentSchema[kind]}. Nothing was changed.`,
      { code: 4426 },
    );
  }
  return null;
}

function copyFrom(state: Uint8Array): Y.Doc {
  const copy = new Y.Doc();
  Y.applyUpdate(copy, state);
  return copy;
}
