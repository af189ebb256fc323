import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import {
  burnedCounter,
  choose,
  filmPath,
  jumpTo,
  openFilmFile,
  shownFrame,
  withFreshPage,
} from '../../../test/film-page.ts';

const app = appOfFile();

/** The recorder filmed one play with both; its whistle is at 11.904 s of A and at 10.104 s of C. */
const WHISTLE_A_S = 11.904;
const WHISTLE_C = '0:10.104';
const A_PER_S = 30;

const otherCounter = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const canvas = document.querySelector<HTMLCanvasElement>('canvas.other-picture')!;
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, 128, 16);
    const grey = (bit: number, y: number) => data[4 * (y * 128 + bit * 8 + 4)]!;
    let number = 0;
    for (let bit = 0; bit < 16; bit++) if (grey(bit, 4) > grey(bit, 12)) number += 2 ** bit;
    return number;
  });

it('ties two cameras by one event, and each shows what the other saw', { timeout: 120_000 }, async () => {
  await withFreshPage(app, async page => {
    await openFilmFile(page, app.url, filmPath('A.mp4'));
    await choose(page, 'Add another part', filmPath('C.mp4'));
    await page.getByRole('button', { name: 'part 2', pressed: true }).waitFor();
    await shownFrame(page, 0);
    await jumpTo(page, WHISTLE_C);
    // Parts of a game follow each other: nothing is to be tied, unless it is said that both show the same.
    expect(await page.getByRole('button', { name: /^Tie to/ }).count()).toBe(0);
    await page.getByRole('button', { name: 'whole game shows the same play' }).click();
    await page.getByRole('button', { name: 'Tie to whole game by an event' }).click();
    await page.getByRole('heading', { name: 'The same event' }).waitFor();
    // The frame that is looked for stands beside.
    await page.getByText(/^part 2, frame \d+$/).waitFor();
    const lookedFor = Number(
      (await page.locator('.tie-picture figcaption').textContent())!.split(' ').at(-1),
    );
    await page.locator(`canvas.other-picture[data-frame="${lookedFor}"]`).waitFor();
    expect(await otherCounter(page)).toBe(lookedFor);
    const whistleA = Math.floor(WHISTLE_A_S * A_PER_S);
    await jumpTo(page, `${whistleA}`);
    await shownFrame(page, whistleA);
    await page.getByRole('button', { name: 'It is this frame' }).click();
    await page.getByText(/± 0\.03\d s/).waitFor();

    for (const frameIndex of [300, 301, 420]) {
      await jumpTo(page, `${frameIndex}`);
      await shownFrame(page, frameIndex);
      // What C shows 1.8 s earlier on its own clock, by the plain video element and the number burned into it.
      const timeS = (frameIndex + 0.5) / A_PER_S - (WHISTLE_A_S - 10.104);
      const expected = await counterOfC(timeS);
      await expect.poll(async () => Math.abs((await otherCounter(page)) - expected)).toBeLessThanOrEqual(1);
    }
    await page.keyboard.press('Space');
    await page.locator('.other-waits').waitFor();
    await page.keyboard.press('Space');
    await page.locator('.other-waits').waitFor({ state: 'detached' });
    await jumpTo(page, '420');
    await shownFrame(page, 420);
    expect(await seriousViolations(page)).toEqual([]);
    const other = Number(await page.locator('canvas.other-picture').getAttribute('data-frame'));
    await page.getByRole('button', { name: 'Go on in part 2' }).click();
    await shownFrame(page, other);
    expect(await burnedCounter(page)).toBe(other);
    await page.getByRole('button', { name: 'Rename part 2' }).click();
    await page.getByLabel('Name of this film').fill('Whole game');
    await page.getByText('another film of this game is called so').first().waitFor();
    await page.getByLabel('Name of this film').fill('bench side');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'bench side', pressed: true }).waitFor();
    await page.getByRole('button', { name: 'Untie' }).click();
    await page.getByRole('button', { name: 'Tie to whole game by an event' }).waitFor();
  });
});

/** The number in C at a time, from a video element that was never told of the tie. */
const counterOfC = async (timeS: number): Promise<number> => {
  const { page: plain, context } = await app.newPage();
  try {
    await plain.setContent('<input type="file"><video muted preload="auto"></video>');
    await plain.locator('input').setInputFiles(filmPath('C.mp4'));
    return await plain.evaluate(async at => {
      const video = document.querySelector('video')!;
      video.src = URL.createObjectURL(document.querySelector('input')!.files![0]!);
      await new Promise(resolve => video.addEventListener('loadeddata', resolve, { once: true }));
      const done = new Promise(resolve => video.addEventListener('seeked', resolve, { once: true }));
      video.currentTime = at;
      await done;
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [128, 16];
      const pen = canvas.getContext('2d')!;
      pen.drawImage(video, 0, 0);
      const { data } = pen.getImageData(0, 0, 128, 16);
      const grey = (bit: number, y: number) => data[4 * (y * 128 + bit * 8 + 4)]!;
      let number = 0;
      for (let bit = 0; bit < 16; bit++) if (grey(bit, 4) > grey(bit, 12)) number += 2 ** bit;
      return number;
    }, timeS);
  } finally {
    await context.close();
  }
};
