import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { Refusal } from '../refusal.ts';

export type Db = Database.Database;

export const databaseName = 'icewright.sqlite';

/**
 * Opens the database of a data folder, making both when they are missing. Every commit waits for the disc
 * (`synchronous=FULL`), so that what was acknowledged survives a power cut. The file is held exclusively: a second
 * program on the same folder would not see the first one's changes.
 */
export function openDatabase(dataFolder: string): Db {
  mkdirSync(dataFolder, { recursive: true });
  const db = new Database(join(dataFolder, databaseName), { timeout: 500 });
  try {
    db.pragma('locking_mode = EXCLUSIVE');
    db.pragma('journal_mode = WAL');
    db.pragma('synchronous = FULL');
    const version = db.pragma('user_version', { simple: true }) as number;
    if (version > steps.length) {
      throw new Refusal(
        `The data folder ${dataFolder} was written by a newer Icewright (storage version ${version}, this one knows up to ${steps.length}). Nothing was changed.`,
      );
    }
    db.transaction(() => {
      for (const step of steps.slice(version)) db.exec(step);
      db.pragma(`user_version = ${steps.length}`);
    }).immediate();
    return db;
  } catch (error) {
    db.close();
    if (String((error as { code?: unknown }).code).startsWith('SQLITE_BUSY')) {
      throw new Refusal(`Another Icewright is already running on the data folder ${dataFolder}.`);
    }
    throw error;
  }
}

/** Each step brings the storage one version up; never changed once released. */
const steps = [
  `CREATE TABLE documents (id TEXT PRIMARY KEY, kind TEXT NOT NULL, made_at INTEGER NOT NULL) STRICT;
   CREATE TABLE updates (
     seq INTEGER PRIMARY KEY AUTOINCREMENT, document TEXT NOT NULL, bytes BLOB NOT NULL, at INTEGER NOT NULL
   ) STRICT;
   CREATE INDEX updates_of_document ON updates (document, seq);
   CREATE TABLE bases (document TEXT PRIMARY KEY, bytes BLOB NOT NULL) STRICT;
   CREATE TABLE versions (
     id INTEGER PRIMARY KEY AUTOINCREMENT, document TEXT NOT NULL, at INTEGER NOT NULL, bytes BLOB NOT NULL
   ) STRICT;
   CREATE INDEX versions_of_document ON versions (document, at);
   CREATE TABLE erased (id TEXT PRIMARY KEY, at INTEGER NOT NULL) STRICT;
   CREATE TABLE films (
     file_name TEXT PRIMARY KEY, hash TEXT NOT NULL, byte_count INTEGER NOT NULL, modified_ms REAL NOT NULL
   ) STRICT;
   CREATE INDEX films_by_hash ON films (hash);`,
  `ALTER TABLE versions ADD COLUMN is_original INTEGER NOT NULL DEFAULT 0;`,
  `CREATE TABLE handouts (
     token TEXT PRIMARY KEY, document TEXT NOT NULL, team_name TEXT NOT NULL, made_at INTEGER NOT NULL,
     ends_at INTEGER NOT NULL, revoked_at INTEGER
   ) STRICT;
   CREATE INDEX handouts_of_document ON handouts (document);`,
  `CREATE TABLE handout_pages (
     token TEXT PRIMARY KEY, document TEXT NOT NULL, said TEXT NOT NULL, made_at INTEGER NOT NULL,
     ends_at INTEGER NOT NULL, revoked_at INTEGER, bytes BLOB NOT NULL
   ) STRICT;
   CREATE INDEX handout_pages_of_document ON handout_pages (document);`,
];
