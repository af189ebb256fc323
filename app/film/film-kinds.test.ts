import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { canBeConverted } from './film-refusal.ts';
import { openFilm } from './open-film.ts';

interface Kind {
  readonly shown: readonly [number, number];
  readonly frameCount: number;
  readonly firstS: number;
  readonly opens: boolean;
}
const folder = new URL('../../fixtures/film-kinds/', import.meta.url);
/** What ffmpeg reads in these films: see the README beside them. */
const kinds = Object.entries(
  JSON.parse(readFileSync(new URL('expected.json', folder), 'utf8')) as Record<string, Kind>,
);
const open = (name: string, canDecode = true) =>
  openFilm({ file: new Blob([readFileSync(new URL(name, folder))]) }, async () => canDecode);

describe('films of every kind', () => {
  it.each(kinds.filter(([, one]) => one.opens))('%s', async (name, { shown, frameCount, firstS }) => {
    const film = await open(name);
    if (film.kind === 'refused') throw new Error(film.says);
    expect([film.widthPx, film.heightPx]).toEqual(shown);
    expect(film.index.frameCount).toBe(frameCount);
    expect(Math.abs(film.index.timesS[0]! - firstS)).toBeLessThan(1e-3);
    film.close();
  });

  it.each([
    ['hevc.mp4', /the picture is HEVC/],
    ['motion_jpeg.avi', /an AVI file/],
  ] as const)('%s is refused by its name, and could be converted', async (name, says) => {
    const film = await open(name, false);
    if (film.kind !== 'refused') throw new Error(`${name} opened`);
    expect(film.says).toMatch(says);
    expect(canBeConverted(film)).toBe(true);
  });
});
