import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openDatabase } from '../store/open-database.ts';
import { type Conversion, filmConverterFor } from './convert-film.ts';
import { type FilmFolder, filmFolderAt, hashOfFile } from './film-folder.ts';
import { findFfmpeg } from './find-ffmpeg.ts';

const hasFfmpeg = (await findFfmpeg()) !== null;
const broken = (name: string) => new URL(`../../fixtures/broken/${name}`, import.meta.url).pathname;

let data: string;
let films: FilmFolder;
let db: ReturnType<typeof openDatabase>;
beforeAll(() => {
  data = mkdtempSync(join(tmpdir(), 'icewright-convert-'));
  db = openDatabase(data);
  films = filmFolderAt(join(data, 'films'), db);
});
afterAll(() => {
  db.close();
  rmSync(data, { recursive: true });
});

const put = async (from: string, name: string): Promise<string> => {
  copyFileSync(from, join(films.folder, name));
  return hashOfFile(join(films.folder, name));
};
const ended = async (state: () => Conversion): Promise<Conversion> => {
  while (state().kind === 'going') await new Promise(resolve => setTimeout(resolve, 20));
  return state();
};

describe('without an ffmpeg', () => {
  it('says that there is none, and converts nothing', async () => {
    const converter = filmConverterFor(films, 'no-such-program-here');
    expect(await converter.isThere()).toBe(false);
    await expect(converter.start('sampled-sha256:0')).rejects.toThrow(/no ffmpeg on this machine/);
  });
});

describe.skipIf(!hasFfmpeg)('where this machine has an ffmpeg', { timeout: 60_000 }, () => {
  // Frame counts as fixtures/broken/expected.json and the maker of the films have them: 120 frames each.
  it.each(['ffv1.mkv', 'mpeg4_part2.mp4'])(
    'makes an H.264 film beside %s, which stays as it was',
    async name => {
      const before = readFileSync(broken(name));
      const hash = await put(broken(name), name);
      const converter = filmConverterFor(films);
      expect(await converter.start(hash)).toMatchObject({ kind: 'going' });
      const state = await ended(() => converter.stateOf(hash));
      if (state.kind !== 'done') throw new Error(JSON.stringify(state));
      expect(state.film.fileName).toBe(`${name.replace(/\.\w+$/, '')} in H.264.mp4`);
      expect(readFileSync(join(films.folder, name)).equals(before)).toBe(true);
      expect((await films.find(state.film.hash))?.fileName).toBe(state.film.fileName);
      expect(readFileSync(join(films.folder, state.film.fileName)).includes('avc1')).toBe(true);
      expect(readdirSync(films.folder).filter(one => one.startsWith('.'))).toEqual([]);
    },
  );

  it('can be stopped, and leaves nothing behind', async () => {
    const hash = await put(broken('ffv1.mkv'), 'stopped.mkv');
    const there = readdirSync(films.folder).sort();
    const converter = filmConverterFor(films);
    await converter.start(hash);
    converter.stop(hash);
    expect(converter.stateOf(hash)).toEqual({ kind: 'none' });
    await expect.poll(() => readdirSync(films.folder).sort()).toEqual(there);
  });

  it('says when it cannot, and never follows a play list to other files', async () => {
    const list = join(films.folder, 'list.mp4');
    writeFileSync(list, `ffconcat version 1.0\nfile '${broken('mpeg4_part2.mp4')}'\n`);
    const converter = filmConverterFor(films);
    const hash = await hashOfFile(list);
    await converter.start(hash);
    expect(await ended(() => converter.stateOf(hash))).toMatchObject({
      kind: 'failed',
      said: expect.stringMatching(/nothing was changed/),
    });
  });
});
