import { type ChildProcess, spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { renameSync, rmSync, statfsSync } from 'node:fs';
import { constants, setPriority } from 'node:os';
import { extname, join } from 'node:path';
import { Refusal } from '../refusal.ts';
import { type FilmFolder, incomingPrefix, type KnownFilm } from './film-folder.ts';
import { type Ffmpeg, findFfmpeg } from './find-ffmpeg.ts';
import { freeName, spareBytes } from './receive-film.ts';

export type Conversion =
  | { readonly kind: 'none' }
  /** `share` of the film that is done, 0 to 1; null until its length is known. */
  | { readonly kind: 'going'; readonly share: number | null }
  | { readonly kind: 'done'; readonly film: KnownFilm }
  | { readonly kind: 'failed'; readonly said: string };

export type FilmConverter = ReturnType<typeof filmConverterFor>;

/**
 * Makes an H.264 film of one that browsers cannot decode, beside it in the film folder and under a name of its own; the old
 * one is only read. One at a time: it takes all the machine has.
 */
export function filmConverterFor(films: FilmFolder, command?: string) {
  let looking: Promise<Ffmpeg | null> | null = null;
  const ffmpeg = () => (looking ??= findFfmpeg(command));
  const states = new Map<string, Conversion>();
  let child: { readonly hash: string; readonly process: ChildProcess } | null = null;

  const stateOf = (hash: string): Conversion => states.get(hash) ?? { kind: 'none' };

  const start = async (hash: string): Promise<Conversion> => {
    const tool = await ffmpeg();
    if (tool === null)
      throw new Refusal('There is no ffmpeg on this machine that could convert it.', { status: 409 });
    const film = await films.find(hash);
    if (film === null) throw new Refusal('This film is not in the film folder.', { status: 404 });
    if (child?.hash === hash) return stateOf(hash);
    if (child !== null)
      throw new Refusal('Another film is being converted. Wait for it, or stop it first.', { status: 409 });
    const disc = statfsSync(films.folder);
    if (disc.bavail * disc.bsize < spareBytes + film.byteCount)
      throw new Refusal('The disc may not have room for the new film. Nothing was changed.', { status: 507 });

    const making = join(films.folder, `${incomingPrefix}${randomBytes(12).toString('hex')}`);
    const process = spawn(tool.command, argsOf(tool, film.path, making), {
      stdio: ['ignore', 'pipe', 'pipe'],
      windowsHide: true,
    });
    child = { hash, process };
    states.set(hash, { kind: 'going', share: null });
    lowerPriority(process);
    const log = followed(process, share => states.set(hash, { kind: 'going', share }));
    const end = async (code: number | null) => {
      child = null;
      if (stateOf(hash).kind !== 'going' || code !== 0) {
        rmSync(making, { force: true });
        if (stateOf(hash).kind === 'going') states.set(hash, { kind: 'failed', said: saidBy(log()) });
        return;
      }
      const stem = film.fileName.slice(0, film.fileName.length - extname(film.fileName).length);
      const fileName = freeName(films.folder, `${stem} in H.264.mp4`);
      renameSync(making, join(films.folder, fileName));
      const made = (await films.list()).find(one => one.fileName === fileName);
      states.set(hash, made ? { kind: 'done', film: made } : { kind: 'failed', said: saidBy('') });
    };
    process.once('error', () => void end(1));
    process.once('close', code => void end(code));
    return stateOf(hash);
  };

  return {
    isThere: async (): Promise<boolean> => (await ffmpeg()) !== null,
    start,
    stateOf,
    /** Ends it; what was made so far is thrown away. */
    stop(hash: string): void {
      if (child?.hash !== hash) return;
      states.delete(hash);
      child.process.kill('SIGKILL');
    },
    close(): void {
      if (child === null) return;
      states.delete(child.hash);
      child.process.kill('SIGKILL');
    },
  };
}

/**
 * The old film is read as a plain file of a known kind: a play list dressed as a film must not lead to other files or to the
 * network.
 */
const argsOf = ({ encoder, eachPicture }: Ffmpeg, from: string, to: string): string[] => [
  ...['-hide_banner', '-nostdin', '-y', '-nostats', '-progress', 'pipe:1'],
  ...['-protocol_whitelist', 'file', '-format_whitelist', KINDS, '-i', `file:${from}`],
  ...['-map', '0:v:0', '-map', '0:a:0?', '-c:v', encoder, ...(QUALITY[encoder] ?? ['-b:v', '12M'])],
  ...['-g', '30', '-pix_fmt', 'yuv420p', ...eachPicture, '-c:a', 'aac', '-b:a', '128k'],
  ...['-movflags', '+faststart', '-f', 'mp4', `file:${to}`],
];
const KINDS = 'mov,mp4,matroska,webm,mpegts,avi,mpeg,asf,flv,mxf,dv,ogg,mpegvideo';
const QUALITY: Readonly<Record<string, readonly string[]>> = {
  libx264: ['-preset', 'veryfast', '-crf', '18'],
};

/** Reads how far it is: the length once from its words, then microseconds of film from its progress. Gives its last words. */
function followed(process: ChildProcess, onShare: (share: number) => void): () => string {
  let log = '';
  let lengthS = 0;
  process.stderr?.on('data', (part: Buffer) => {
    log = (log + part.toString()).slice(-4000);
    const found = /Duration: (\d+):(\d\d):(\d\d(?:\.\d+)?)/.exec(log);
    if (found && lengthS === 0) lengthS = Number(found[1]) * 3600 + Number(found[2]) * 60 + Number(found[3]);
  });
  process.stdout?.on('data', (part: Buffer) => {
    const times = [...part.toString().matchAll(/out_time_us=(\d+)/g)];
    const doneS = Number(times.at(-1)?.[1] ?? Number.NaN) / 1e6;
    if (lengthS > 0 && Number.isFinite(doneS)) onShare(Math.min(1, doneS / lengthS));
  });
  return () => log;
}

const saidBy = (log: string): string =>
  /No space left/.test(log)
    ? 'The disc is full; the film was not converted, and nothing was changed.'
    : 'ffmpeg could not convert this film; nothing was changed. It may be damaged.';

function lowerPriority({ pid }: ChildProcess): void {
  try {
    if (pid !== undefined) setPriority(pid, constants.priority.PRIORITY_BELOW_NORMAL);
  } catch {
    // Then it runs like any other program.
  }
}
