import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { findFfmpeg } from '../../server/films/find-ffmpeg.ts';
import { appOfFile } from '../../test/app-of-file.ts';
import {
  burnedCounter,
  choose,
  filmPath,
  jumpTo,
  openFilmFile,
  shownFrame,
  toFilm,
  withFreshPage,
} from '../../test/film-page.ts';

const app = appOfFile();
const withPage = (work: (page: Page) => Promise<void>) => withFreshPage(app, work);

const kindPath = (name: string): string =>
  new URL(`../../fixtures/film-kinds/${name}`, import.meta.url).pathname;
interface Kind {
  readonly frameCount: number;
  readonly firstCounter: number;
  readonly opens: boolean;
  /** Its sound, where browsers do not play it. */
  readonly unheard?: string;
}
/** What ffmpeg reads in these films: see the README beside them. */
const kinds = Object.entries(
  JSON.parse(readFileSync(kindPath('expected.json'), 'utf8')) as Record<string, Kind>,
);

/** Last and first, both sides of key pictures, and far between. */
const scattered = (count: number): number[] => [count - 1, 0, count >> 1, 23, 22, 41, count - 2];

describe('whatever the container and the codec, the very frame is shown, and it plays on from there', () => {
  it.each(kinds.filter(([, one]) => one.opens))('%s', { timeout: 60_000 }, async (name, kind) => {
    await withPage(async page => {
      await openFilmFile(page, app.url, kindPath(name));
      const without = page.getByText(/^It plays without its sound/);
      expect(await without.allTextContents()).toEqual(
        kind.unheard === undefined ? [] : [expect.stringContaining(kind.unheard)],
      );
      for (const frameIndex of scattered(kind.frameCount)) {
        await jumpTo(page, `${frameIndex}`);
        await shownFrame(page, frameIndex);
        expect(await burnedCounter(page)).toBe(kind.firstCounter + frameIndex);
      }
      await page.keyboard.press('ArrowLeft');
      await shownFrame(page, kind.frameCount - 3);
      expect(await burnedCounter(page)).toBe(kind.firstCounter + kind.frameCount - 3);

      await jumpTo(page, '10');
      await shownFrame(page, 10);
      await page.keyboard.press('l');
      await expect
        .poll(async () => Number(await page.getByTestId('frame').textContent()))
        .toBeGreaterThan(13);
      await page.keyboard.press('k');
      const stopped = Number(await page.getByTestId('frame').textContent());
      await shownFrame(page, stopped);
      expect(await burnedCounter(page)).toBe(kind.firstCounter + stopped);
    });
  });
});

const frameNow = async (page: Page): Promise<number> => Number(await page.getByTestId('frame').textContent());

it.each(['A.mp4', 'h264_aac.ts'])(
  '%s plays over and over in slow motion, within its loop',
  {
    timeout: 60_000,
  },
  async name => {
    await withPage(async page => {
      await openFilmFile(page, app.url, name === 'A.mp4' ? filmPath(name) : kindPath(name));
      await jumpTo(page, '20');
      await shownFrame(page, 20);
      await page.keyboard.press('o');
      await jumpTo(page, '28');
      await shownFrame(page, 28);
      // The loop first: a film that moves is past its end before a busy machine takes the next press.
      await page.keyboard.press('o');
      await page.keyboard.press('Shift+l');
      await page.getByText('half speed, loop 20 to 28').waitFor();
      // 8 frames at half of 30 a second take 0.53 s: in 2 s they come round at least twice.
      const seen: number[] = [];
      for (let look = 0; look < 40; look++) {
        seen.push(await frameNow(page));
        await page.waitForTimeout(50);
      }
      expect(seen.filter((frame, i) => i > 0 && frame < seen[i - 1]!).length).toBeGreaterThanOrEqual(2);
      expect(Math.min(...seen)).toBeGreaterThanOrEqual(20);
      // The video element may show one picture more before it hears that it is to turn back.
      expect(Math.max(...seen)).toBeLessThanOrEqual(31);
      await page.keyboard.press('k');
      const stopped = await frameNow(page);
      await shownFrame(page, stopped);
      await page.keyboard.press('o');
      expect(await page.getByRole('button', { name: 'Loop from here' }).count()).toBe(1);
    });
  },
);

it('keeps the pitch of the sound in half speed, is silent at a quarter, and can be muted', {
  timeout: 60_000,
}, async () => {
  await withPage(async page => {
    await openFilmFile(page, app.url, filmPath('A.mp4'));
    const sound = () =>
      page.evaluate(() => {
        const { muted, preservesPitch, playbackRate } = document.querySelector('video')!;
        return { muted, preservesPitch, playbackRate };
      });
    await jumpTo(page, '5');
    await page.keyboard.press('Shift+l');
    await expect.poll(sound).toEqual({ muted: false, preservesPitch: true, playbackRate: 0.5 });
    await page.keyboard.press('Shift+l');
    await expect.poll(sound).toEqual({ muted: true, preservesPitch: true, playbackRate: 0.25 });
    await page.getByText('quarter speed, no sound at this speed').waitFor();
    await page.keyboard.press('l');
    await page.keyboard.press('s');
    await expect.poll(sound).toEqual({ muted: true, preservesPitch: true, playbackRate: 0.5 });
    await page.keyboard.press('k');
  });
});

const hasFfmpeg = (await findFfmpeg()) !== null;

describe.skipIf(!hasFfmpeg)(
  'a film that this browser does not decode, where the machine has an ffmpeg',
  () => {
    it.each(kinds.filter(([, one]) => !one.opens))(
      '%s is converted on the spot',
      {
        timeout: 60_000,
      },
      async (name, kind) => {
        await withPage(async page => {
          await toFilm(page, app.url);
          await choose(page, 'Open a film', kindPath(name));
          await page.getByRole('button', { name: 'Convert it here' }).click();
          await shownFrame(page, 0);
          expect(await burnedCounter(page)).toBe(kind.firstCounter);
          const last = kind.frameCount - 1;
          await jumpTo(page, `${last}`);
          await shownFrame(page, last);
          expect(await burnedCounter(page)).toBe(kind.firstCounter + last);
          await page.getByText(`${name.replace(/\.\w+$/, '')} in H.264.mp4, in the film folder`).waitFor();
        });
      },
    );
  },
);
