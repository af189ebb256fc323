import { spawnSync } from 'node:child_process';
import { closeSync, existsSync, openSync, readFileSync, renameSync, rmSync, writeSync } from 'node:fs';
import type { NumberedFilm } from './some-films.ts';

const HOLE_BYTES = 10_000_000_000;

/**
 * The film as a recorder leaves ten gigabytes: its index at the very end, behind a free box of that size (ISO/IEC 14496-12, 8.1.2), which takes no room on a
 * disc that keeps holes. Made by the machine's ffmpeg beside the film, once.
 */
export const hugeFilm = (film: NumberedFilm): NumberedFilm => {
  const path = film.path.replace(/\.mp4$/, '-huge.mp4');
  const name = `${film.name}, 10 GB, index at the end`;
  if (existsSync(path)) return { ...film, name, path };
  const plain = `${path}.plain.mp4`;
  const made = spawnSync('ffmpeg', ['-y', '-v', 'error', '-i', film.path, '-c', 'copy', plain], {
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  if (made.status !== 0) throw new Error('ffmpeg could not put the index of a film to its end');
  const whole = readFileSync(plain);
  rmSync(plain);
  const index = indexAt(whole);
  const free = Buffer.alloc(16);
  free.writeUInt32BE(1, 0);
  free.write('free', 4, 'latin1');
  free.writeBigUInt64BE(BigInt(HOLE_BYTES), 8);
  const making = `${path}.making`;
  const file = openSync(making, 'w');
  writeSync(file, whole, 0, index, 0);
  writeSync(file, free, 0, free.length, index);
  writeSync(file, whole, index, whole.length - index, index + HOLE_BYTES);
  closeSync(file);
  renameSync(making, path);
  return { ...film, name, path };
};

/** Where the last box begins, which must be the index. */
const indexAt = (whole: Buffer): number => {
  for (let at = 0; at < whole.length; ) {
    const size = whole.readUInt32BE(at);
    const length = size === 1 ? Number(whole.readBigUInt64BE(at + 8)) : size;
    if (whole.toString('latin1', at + 4, at + 8) === 'moov') return at;
    if (length < 8) break;
    at += length;
  }
  throw new Error('the film has no index');
};
