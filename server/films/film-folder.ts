import { mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { filmHashOf } from '@icewright/book';
import type { Db } from '../store/open-database.ts';

export interface KnownFilm {
  readonly hash: string;
  readonly fileName: string;
  readonly byteCount: number;
}

/** File names that are taken for film when they lie in the film folder. Whether it is one shows when it is opened. */
const filmEndings = ['.mp4', '.m4v', '.mov', '.webm', '.mkv', '.ts', '.mts', '.m2ts', '.mpg', '.avi'];
/** A film on its way in; it is no film until it is whole. */
export const incomingPrefix = '.incoming-';

export type FilmFolder = ReturnType<typeof filmFolderAt>;

/** The film folder: files are known by content; one that somebody drops in there is found when films are listed. */
export function filmFolderAt(folder: string, db: Db) {
  mkdirSync(folder, { recursive: true });
  for (const name of readdirSync(folder)) if (name.startsWith(incomingPrefix)) rmSync(join(folder, name));
  const known = db.prepare<[string], { hash: string; byte_count: number; modified_ms: number }>(
    'SELECT hash, byte_count, modified_ms FROM films WHERE file_name = ?',
  );
  const remember = db.prepare(
    `INSERT INTO films (file_name, hash, byte_count, modified_ms) VALUES (?, ?, ?, ?) ON CONFLICT (file_name)
     DO UPDATE SET hash = excluded.hash, byte_count = excluded.byte_count, modified_ms = excluded.modified_ms`,
  );

  const filmIn = async (fileName: string): Promise<KnownFilm | null> => {
    const path = join(folder, fileName);
    const stat = statSync(path, { throwIfNoEntry: false });
    if (stat?.isFile() !== true) return null;
    const row = known.get(fileName);
    if (row?.byte_count === stat.size && row.modified_ms === stat.mtimeMs) {
      return { hash: row.hash, fileName, byteCount: stat.size };
    }
    try {
      const hash = await hashOfFile(path);
      remember.run(fileName, hash, stat.size, stat.mtimeMs);
      return { hash, fileName, byteCount: stat.size };
    } catch {
      // Not readable, or still being copied in: seen again at the next look.
      return null;
    }
  };

  const list = async (): Promise<KnownFilm[]> => {
    const names = readdirSync(folder).filter(name => !name.startsWith('.') && isFilmName(name));
    const films = await Promise.all(names.sort().map(filmIn));
    return films.filter(film => film !== null);
  };

  return {
    folder,
    list,
    async find(hash: string): Promise<{ path: string; fileName: string; byteCount: number } | null> {
      const names = db
        .prepare<[string], { file_name: string }>('SELECT file_name FROM films WHERE hash = ?')
        .all(hash);
      for (const { file_name: name } of names) {
        const film = await filmIn(name);
        if (film?.hash === hash) return { ...film, path: join(folder, name) };
      }
      const film = (await list()).find(each => each.hash === hash);
      return film === undefined ? null : { ...film, path: join(folder, film.fileName) };
    },
  };
}

export const isFilmName = (name: string): boolean => filmEndings.includes(extname(name).toLowerCase());

export async function hashOfFile(path: string): Promise<string> {
  const file = await open(path, 'r');
  try {
    const { size } = await file.stat();
    return await filmHashOf(async (offset, length) => {
      const bytes = new Uint8Array(length);
      const { bytesRead } = await file.read(bytes, 0, length, offset);
      return bytes.subarray(0, bytesRead);
    }, size);
  } finally {
    await file.close();
  }
}
