import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readDocument, rootOf } from '@icewright/book';
import { documentStoreOn } from '../server/store/document-store.ts';
import { type Db, databaseName, openDatabase } from '../server/store/open-database.ts';

/** A document as a server would find it that was killed at this moment. */
export interface OnDisc {
  readonly value: unknown;
  /** When its last change was written, by the clock of the server; 0 when there is none waiting. */
  readonly lastChangeAtMs: number;
}

export const onDisc = (dataFolder: string, id: string): OnDisc =>
  inCopy(dataFolder, db => {
    const last = db.prepare('SELECT max(at) FROM updates WHERE document = ?').pluck().get(id);
    const read = readDocument(documentStoreOn(db).load(id));
    return {
      value: read.kind === 'ok' ? read.value : undefined,
      lastChangeAtMs: (last as number | null) ?? 0,
    };
  });

/** Everything that is kept, readable or not, to see that nothing of it changed. */
export const allOnDisc = (dataFolder: string): Readonly<Record<string, unknown>> =>
  inCopy(dataFolder, db => {
    const store = documentStoreOn(db);
    return Object.fromEntries(store.list().map(({ id }) => [id, rootOf(store.load(id)).toJSON()]));
  });

/** Reads a copy of the files: the running server holds its own for itself. */
function inCopy<Result>(dataFolder: string, work: (db: Db) => Result): Result {
  const copy = mkdtempSync(join(tmpdir(), 'icewright-copy-'));
  try {
    for (const file of [databaseName, `${databaseName}-wal`])
      if (existsSync(join(dataFolder, file))) copyFileSync(join(dataFolder, file), join(copy, file));
    const db = openDatabase(copy);
    try {
      return work(db);
    } finally {
      db.close();
    }
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
}
