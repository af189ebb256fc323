import type { DocumentKind } from '@icewright/book';
import * as Y from 'yjs';
import { Refusal } from '../refusal.ts';
import { keptVersions } from './kept-versions.ts';
import type { Db } from './open-database.ts';

export interface StoredDocument {
  readonly id: string;
  readonly kind: DocumentKind;
}

export interface StoredVersion {
  readonly id: number;
  readonly at: number;
  readonly byteCount: number;
  /** 1 for what a document was before a newer program brought it up to its own version. */
  readonly isOriginal: number;
}

export type DocumentStore = ReturnType<typeof documentStoreOn>;

const versionEveryMs = 10 * 60_000;
const compactAfterUpdates = 100;

/**
 * Documents on disc: each change is a row, written before anybody hears that it arrived; in the background the rows
 * of a document become one base state, and now and then a whole state is kept as a version to go back to.
 */
export function documentStoreOn(db: Db, clock: () => number = Date.now) {
  const addDocument = db.prepare(
    'INSERT INTO documents (id, kind, made_at) VALUES (?, ?, ?) ON CONFLICT DO NOTHING',
  );
  const addUpdate = db.prepare('INSERT INTO updates (document, bytes, at) VALUES (?, ?, ?)');
  const baseOf = db.prepare<[string], { bytes: Buffer }>('SELECT bytes FROM bases WHERE document = ?');
  const updatesOf = db.prepare<[string], { bytes: Buffer }>(
    'SELECT bytes FROM updates WHERE document = ? ORDER BY seq',
  );
  const updateCount = db.prepare('SELECT count(*) FROM updates WHERE document = ?').pluck();
  const setBase = db.prepare(
    'INSERT INTO bases (document, bytes) VALUES (?, ?) ON CONFLICT (document) DO UPDATE SET bytes = excluded.bytes',
  );
  const dropUpdates = db.prepare('DELETE FROM updates WHERE document = ?');
  const lastVersionAt = db.prepare('SELECT max(at) FROM versions WHERE document = ?').pluck();
  const addVersion = db.prepare(
    'INSERT INTO versions (document, at, bytes, is_original) VALUES (?, ?, ?, ?)',
  );
  const versionsOf = db.prepare<[string], StoredVersion>(
    'SELECT id, at, length(bytes) AS byteCount, is_original AS isOriginal FROM versions WHERE document = ? ORDER BY at DESC, id DESC',
  );
  const versionBytes = db.prepare<[string, number], { bytes: Buffer }>(
    'SELECT bytes FROM versions WHERE document = ? AND id = ?',
  );
  const dropVersion = db.prepare('DELETE FROM versions WHERE id = ?');
  const isErased = db.prepare('SELECT 1 FROM erased WHERE id = ?').pluck();
  const allOf = db.prepare<[], StoredDocument>('SELECT id, kind FROM documents ORDER BY made_at, id');

  const keepVersion = (id: string, state: Uint8Array, isOriginal = false) => {
    addVersion.run(id, clock(), state, isOriginal ? 1 : 0);
    const all = versionsOf.all(id);
    const kept = new Set(keptVersions(all, clock()));
    for (const version of all) if (!kept.has(version)) dropVersion.run(version.id);
  };

  const appendRows = db.transaction((id: string, kind: DocumentKind, update: Uint8Array) => {
    addDocument.run(id, kind, clock());
    addUpdate.run(id, update, clock());
  });
  const append = (id: string, kind: DocumentKind, update: Uint8Array): void => {
    try {
      appendRows(id, kind, update);
    } catch (error) {
      // A full disc may show only when the transaction is committed.
      throw asRefusal(error);
    }
  };

  return {
    list: (): StoredDocument[] => allOf.all(),
    has: (id: string): boolean => db.prepare('SELECT 1 FROM documents WHERE id = ?').pluck().get(id) === 1,
    isErased: (id: string): boolean => isErased.get(id) === 1,

    /** On disc when it returns. Throws a refusal when the disc is full. */
    append,

    /** All of several new documents, or none. */
    appendAll: db.transaction(
      (all: readonly { readonly id: string; readonly kind: DocumentKind; readonly ydoc: Y.Doc }[]) => {
        for (const { id, kind, ydoc } of all) append(id, kind, Y.encodeStateAsUpdate(ydoc));
      },
    ),

    /** A document as it lies on disc, or an empty Y.Doc for an id never seen. */
    load(id: string, into: Y.Doc = new Y.Doc({ guid: id })): Y.Doc {
      into.transact(() => {
        const base = baseOf.get(id);
        if (base !== undefined) Y.applyUpdateV2(into, base.bytes);
        for (const { bytes } of updatesOf.all(id)) Y.applyUpdate(into, bytes);
      }, 'load');
      return into;
    },

    /** Makes one state of the rows of a document that is open as `ydoc`, when there are enough of them. */
    compact: db.transaction((id: string, ydoc: Y.Doc, always = false) => {
      const waiting = updateCount.get(id) as number;
      if (waiting === 0 && !always) return;
      const isVersionDue = clock() - ((lastVersionAt.get(id) as number | null) ?? 0) >= versionEveryMs;
      if (!always && !isVersionDue && waiting < compactAfterUpdates) return;
      const state = Y.encodeStateAsUpdateV2(ydoc);
      setBase.run(id, state);
      dropUpdates.run(id);
      if (isVersionDue) keepVersion(id, state);
    }),

    /** Keeps what a document says now as a version, whenever the last one was. */
    keepVersion: (id: string, ydoc: Y.Doc): void => keepVersion(id, Y.encodeStateAsUpdateV2(ydoc)),

    /** Keeps for good what a document said before it is brought up to a newer document version. */
    keepOriginal: (id: string, ydoc: Y.Doc): void => {
      try {
        keepVersion(id, Y.encodeStateAsUpdateV2(ydoc), true);
      } catch (error) {
        throw asRefusal(error);
      }
    },

    versions: (id: string): StoredVersion[] => versionsOf.all(id),

    loadVersion(id: string, versionId: number): Y.Doc | null {
      const found = versionBytes.get(id, versionId);
      if (found === undefined) return null;
      const ydoc = new Y.Doc({ guid: id });
      Y.applyUpdateV2(ydoc, found.bytes);
      return ydoc;
    },

    /** Erases documents for good; a device that still has one cannot bring it back. */
    erase: db.transaction((ids: readonly string[]) => {
      for (const id of ids) {
        for (const table of ['updates', 'bases', 'versions', 'handouts', 'handout_pages']) {
          db.prepare(`DELETE FROM ${table} WHERE document = ?`).run(id);
        }
        db.prepare('DELETE FROM documents WHERE id = ?').run(id);
        db.prepare('INSERT INTO erased (id, at) VALUES (?, ?) ON CONFLICT DO NOTHING').run(id, clock());
      }
    }),
  };
}

function asRefusal(error: unknown): unknown {
  if ((error as { code?: string }).code !== 'SQLITE_FULL') return error;
  return new Refusal('The disc is full: the last change is not saved. Make room, then go on.', {
    code: 4507,
    status: 507,
  });
}
