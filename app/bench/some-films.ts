import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, renameSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { filmPath } from '../../test/film-page.ts';

/** A film whose pictures carry their number in 16 blocks, as those of fixtures/film do. */
export interface NumberedFilm {
  readonly name: string;
  readonly path: string;
  readonly frameCount: number;
  readonly framesPerS: number;
  /** Numbers begin again after this many frames. */
  readonly numbersTo: number;
  /** Side of a block of the burned number, pixels. */
  readonly blockPx: number;
}

const FIXTURES: readonly NumberedFilm[] = [
  {
    name: '720p, key frame every 60',
    path: filmPath('A.mp4'),
    frameCount: 600,
    framesPerS: 30,
    numbersTo: 600,
    blockPx: 8,
  },
  {
    name: '720p, key frame every 250',
    path: filmPath('B.mp4'),
    frameCount: 960,
    framesPerS: 60_000 / 1001,
    numbersTo: 960,
    blockPx: 8,
  },
];

const FFMPEG = 'ffmpeg';
const HALF_MINUTE_FRAMES = 900;

/**
 * Where ffmpeg is installed, half a minute of 1080p made of a film of the tests, with a key frame every 30 and every 250
 * frames; else the films of the tests. Made once and left in the system's folder for passing files.
 */
export const someFilms = (): {
  readonly films: readonly NumberedFilm[];
  readonly said: string;
  readonly canBeHuge: boolean;
} => {
  const hasFfmpeg = spawnSync(FFMPEG, ['-version'], { stdio: 'ignore' }).status === 0;
  if (!hasFfmpeg)
    return { films: FIXTURES, said: 'no ffmpeg here to make 1080p: 720p only', canBeHuge: false };
  return {
    films: [30, 250].map(fullHd),
    said: 'the 1080p films are half a minute, made by ffmpeg',
    canBeHuge: true,
  };
};

const fullHd = (keyEvery: number): NumberedFilm => {
  const folder = join(tmpdir(), 'icewright-bench-films');
  const path = join(folder, `1080p-key-${keyEvery}.mp4`);
  if (!existsSync(path)) {
    mkdirSync(folder, { recursive: true });
    const making = join(folder, `making-${process.pid}.mp4`);
    const made = spawnSync(
      FFMPEG,
      [
        ['-y', '-v', 'error', '-stream_loop', '-1', '-i', filmPath('A.mp4'), '-an'],
        ['-vf', 'scale=1920:1080:flags=neighbor', '-frames:v', `${HALF_MINUTE_FRAMES}`, '-c:v', 'libx264'],
        ['-preset', 'veryfast', '-b:v', '8M', '-g', `${keyEvery}`, '-keyint_min', `${keyEvery}`],
        ['-sc_threshold', '0', '-bf', '2', '-pix_fmt', 'yuv420p', '-movflags', '+faststart', making],
      ].flat(),
      { stdio: ['ignore', 'ignore', 'inherit'] },
    );
    if (made.status !== 0) throw new Error('ffmpeg is here and could not make the film of the bench');
    renameSync(making, path);
  }
  const name = `1080p, key frame every ${keyEvery}`;
  return { name, path, frameCount: HALF_MINUTE_FRAMES, framesPerS: 30, numbersTo: 600, blockPx: 12 };
};
