import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import {
  burnedCounter,
  filmPath,
  jumpTo,
  openFilmFile,
  shownFrame,
  withFreshPage,
} from '../../../test/film-page.ts';

const app = appOfFile();

it('shows a copy first round a moment, then the film’s own picture, and forgets the copy with the moment', {
  timeout: 120_000,
}, async () => {
  await withFreshPage(app, async page => {
    await openFilmFile(page, app.url, filmPath('B.mp4'));
    await jumpTo(page, '480');
    await shownFrame(page, 480);
    for (const key of ['m', '2', 'x']) await page.keyboard.press(key);
    const said = page.getByText(/are kept ready in this browser/);
    await said.waitFor({ timeout: 90_000 });
    await jumpTo(page, '60');
    await shownFrame(page, 60);
    // What comes after it takes the place of the pictures round the moment, which were still at hand.
    await page.waitForTimeout(2000);
    await watchPictures(page);
    await jumpTo(page, '471');
    await page.locator('canvas[data-frame="471"]:not([data-copy])').waitFor({ timeout: 20_000 });
    expect(await burnedCounter(page)).toBe(471);
    const seen = await seenPictures(page);
    expect(seen.find(one => one.frame === '471')).toEqual({ frame: '471', copy: true, number: 471 });
    await page.getByRole('button', { name: 'Undo' }).click();
    await said.waitFor({ state: 'detached' });
  });
});

it('keeps a whole film ready where that was asked, still after it was closed, until it is let go', {
  timeout: 120_000,
}, async () => {
  await withFreshPage(app, async page => {
    // 120 pictures, of which only the first stands by itself; the first carries the number 480: see the README beside it.
    const longGop = new URL('../../../fixtures/film-kinds/h264_long_gop.mkv', import.meta.url).pathname;
    await page.goto(app.url);
    await keepOlderCopies(page);
    await openFilmFile(page, app.url, longGop);
    await page.getByText('Only one picture in 120 of this film stands by itself', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'Keep the whole film ready' }).click();
    await page.locator('.whole-ready[data-state="ready"]').waitFor({ timeout: 60_000 });

    await openFilmFile(page, app.url, longGop);
    await page.locator('.whole-ready[data-state="ready"]').waitFor();
    await watchPictures(page);
    await jumpTo(page, '110');
    await page.locator('canvas[data-frame="110"]:not([data-copy])').waitFor({ timeout: 20_000 });
    expect((await seenPictures(page)).find(one => one.frame === '110')).toEqual({
      frame: '110',
      copy: true,
      number: 590,
    });
    await page.getByRole('button', { name: 'Let it go' }).click();
    await page.locator('.whole-ready[data-state="offered"]').waitFor();
    const left = await page.evaluate(
      () =>
        new Promise<number>(resolve => {
          const opening = indexedDB.open('icewright-film-copies');
          opening.onsuccess = () => {
            const counting = opening.result.transaction('bytes').objectStore('bytes').count();
            counting.onsuccess = () => resolve(counting.result);
          };
        }),
    );
    expect(left).toBe(0);
  });
});

/** The store of a browser that kept copies before whole films could be asked for. */
const keepOlderCopies = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('icewright-film-copies', 1);
        opening.onupgradeneeded = () => {
          for (const name of ['windows', 'bytes']) opening.result.createObjectStore(name).put(1, 'old');
        };
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          opening.result.close();
          resolve();
        };
      }),
  );

interface SeenPicture {
  readonly frame: string;
  readonly copy: boolean;
  readonly number: number;
}

/** Notes every picture on the canvas from here on, with the number that is burned into it. */
const watchPictures = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const canvas = document.querySelector<HTMLCanvasElement>('canvas[data-testid="picture"]')!;
    const seen: SeenPicture[] = [];
    (window as unknown as { seen: typeof seen }).seen = seen;
    new MutationObserver(() => {
      const { data } = canvas.getContext('2d')!.getImageData(0, 0, 128, 16);
      const grey = (bit: number, y: number) => data[4 * (y * 128 + bit * 8 + 4)]!;
      let number = 0;
      for (let bit = 0; bit < 16; bit++) if (grey(bit, 4) > grey(bit, 12)) number += 2 ** bit;
      seen.push({ frame: canvas.dataset.frame!, copy: canvas.dataset.copy === 'true', number });
    }).observe(canvas, { attributes: true });
  });

const seenPictures = (page: Page): Promise<readonly SeenPicture[]> =>
  page.evaluate(() => (window as unknown as { seen: SeenPicture[] }).seen);
