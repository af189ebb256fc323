import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readDocument } from '@icewright/book';
import { documentStoreOn } from '../server/store/document-store.ts';
import { databaseName, openDatabase } from '../server/store/open-database.ts';

/** A document as a server would find it that was killed at this moment. */
export interface OnDisc {
  readonly value: unknown;
  /** When its last change was written, by the clock of the server; 0 when there is none waiting. */
  readonly lastChangeAtMs: number;
}

/** Reads a copy of the files: the running server holds its own for itself. */
export function onDisc(dataFolder: string, id: string): OnDisc {
  const copy = mkdtempSync(join(tmpdir(), 'icewright-copy-'));
  try {
    for (const file of [databaseName, `${databaseName}-wal`])
      if (existsSync(join(dataFolder, file))) copyFileSync(join(dataFolder, file), join(copy, file));
    const db = openDatabase(copy);
    try {
      const last = db.prepare('SELECT max(at) FROM updates WHERE document = ?').pluck().get(id);
      const read = readDocument(documentStoreOn(db).load(id));
      return {
        value: read.kind === 'ok' ? read.value : undefined,
        lastChangeAtMs: (last as number | null) ?? 0,
      };
    } finally {
      db.close();
    }
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
}
