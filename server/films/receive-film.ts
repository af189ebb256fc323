import { randomBytes } from 'node:crypto';
import { createWriteStream, existsSync, renameSync, rmSync, statfsSync } from 'node:fs';
import type { IncomingMessage } from 'node:http';
import { extname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { Refusal } from '../refusal.ts';
import { type FilmFolder, hashOfFile, incomingPrefix, isFilmName } from './film-folder.ts';

/** Room that stays free on the disc, so that the team's documents can always be saved. */
export const spareBytes = 200 * 2 ** 20;

/**
 * Takes a film in: into a hidden file first, which becomes a film when all of it arrived and its content is what the
 * sender said. Anything else leaves the folder as it was and throws a refusal.
 */
export async function receiveFilm(
  films: FilmFolder,
  hash: string,
  sentName: string,
  body: IncomingMessage,
): Promise<{ fileName: string; byteCount: number }> {
  const there = await films.find(hash);
  if (there !== null) return there;
  const announced = Number(body.headers['content-length'] ?? 0);
  const disc = statfsSync(films.folder);
  const room = disc.bavail * disc.bsize - spareBytes;
  if (announced > room) throw fullDisc(announced, room);
  const incoming = join(films.folder, incomingPrefix + randomBytes(12).toString('hex'));
  try {
    await pipeline(body, createWriteStream(incoming, { flags: 'wx', highWaterMark: 2 ** 20, flush: true }));
    const found = await hashOfFile(incoming);
    if (found !== hash)
      throw new Refusal('The film that arrived is not the one that was announced. Send it again.');
    const fileName = freeName(films.folder, safeName(sentName));
    renameSync(incoming, join(films.folder, fileName));
    const film = await films.find(hash);
    if (film === null) throw new Error(`a film just taken in is not found: ${fileName}`);
    return film;
  } catch (error) {
    rmSync(incoming, { force: true });
    const { code } = error as { code?: string };
    if (code === 'ENOSPC' || code === 'EDQUOT') throw fullDisc(announced, 0);
    if (code === 'ERR_STREAM_PREMATURE_CLOSE' || code === 'ECONNRESET') {
      throw new Refusal('The film did not arrive whole. Send it again.');
    }
    throw error;
  }
}

/** A plain file name: no folders, no control or reserved characters, no leading dot; ends like a film. */
export function safeName(sent: string): string {
  const last = sent.split(/[/\\]/).at(-1) ?? '';
  const plain = last
    .replace(/[\p{Cc}<>:"|?*]/gu, '')
    .replace(/^[. ]+|[. ]+$/g, '')
    .slice(-120);
  return isFilmName(plain) && plain !== extname(plain) ? plain : `${plain || 'film'}.mp4`;
}

export function freeName(folder: string, name: string): string {
  const ending = extname(name);
  const stem = name.slice(0, name.length - ending.length);
  for (let count = 1; ; count += 1) {
    const tried = count === 1 ? name : `${stem} (${count})${ending}`;
    if (!existsSync(join(folder, tried))) return tried;
  }
}

function fullDisc(wanted: number, room: number): Refusal {
  const inGb = (bytes: number) => (Math.max(0, bytes) / 1e9).toFixed(1);
  return new Refusal(
    `The disc has no room for this film: it needs ${inGb(wanted)} GB, ${inGb(room)} GB are free for films. Nothing was changed.`,
    { status: 507 },
  );
}
