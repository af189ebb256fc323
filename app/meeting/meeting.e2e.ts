import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from '../../test/app-of-file.ts';
import { burnedCounter, shownFrame, toFilm } from '../../test/film-page.ts';
import { pdfWords } from '../../test/pdf-words.ts';
import { withPage } from '../../test/with-page.ts';

const app = appOfFile();

const lines = (page: Page) => page.locator('.item-says').allTextContents();

it(
  'a meeting is made of moments, put in order, and run in two windows by the keys of a clicker',
  {
    timeout: 90_000,
  },
  () =>
    withPage(app, 'meeting', async (page, context) => {
      await toFilm(page, app.url);
      await page.getByRole('button', { name: 'Plan a meeting' }).click();
      await page.getByRole('button', { name: /^Ten minutes/ }).click();
      await page.getByRole('button', { name: 'Put moments in' }).last().click();
      // The newest game: its film carries the number of each frame in the picture (fixtures/film-truth).
      await page.getByRole('button', { name: /0:06\.0.*started with the first pass/ }).click();
      await page.getByRole('button', { name: /0:12\.8.*looks at the goalie/ }).click();
      await page.getByRole('button', { name: 'Close', exact: true }).click();
      await page.getByLabel('What is said').fill('Eyes up');
      const first = (await lines(page))[0]!;
      expect(await lines(page)).toEqual([first, 'Eyes up']);
      // 7 s of film and half a minute of talk each.
      await expect
        .poll(() => page.getByRole('status').filter({ hasText: 'of 10 min' }).textContent())
        .toMatch(/1 min 14 s.*8 min 46 s left/);
      await page.locator('.item-head').nth(1).focus();
      await page.keyboard.press('Alt+ArrowUp');
      await expect.poll(() => lines(page)).toEqual(['Eyes up', first]);
      await page.getByRole('button', { name: 'Undo', exact: true }).click();
      await expect.poll(() => lines(page)).toEqual([first, 'Eyes up']);
      await page.getByRole('button', { name: 'Redo', exact: true }).click();
      await expect.poll(() => lines(page)).toEqual(['Eyes up', first]);

      await page.getByRole('link', { name: 'Sheet' }).click();
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Download the PDF' }).click(),
      ]);
      const words = pdfWords(readFileSync(await download.path())).replace(/\s+/g, '');
      for (const said of ['Eyesup', first.replace(/\s+/g, ''), 'Notes']) expect(words).toContain(said);
      await page.goBack();

      await page.getByRole('link', { name: 'Run the meeting' }).click();
      const [team] = await Promise.all([
        context.waitForEvent('page'),
        page.getByRole('button', { name: /team’s window/ }).click(),
      ]);
      await page.getByText('The other window shows the picture.').waitFor();
      // 4 s before the moment's picture, 59.94 frames a second.
      await shownFrame(team, 530);
      expect(await team.locator('.stage-line').textContent()).toBe('Eyes up');
      await page.keyboard.press('PageDown');
      await shownFrame(team, 770);
      await shownFrame(page, 770);
      expect(await burnedCounter(team)).toBe(770);
      await page.keyboard.press('.');
      await team.locator('.stage.is-black').waitFor();
      await page.keyboard.press('PageDown');
      await expect.poll(() => team.locator('.stage.is-black').count()).toBe(0);
      // On, and impatiently to the next, from the team's own window this time.
      await page.keyboard.press('PageDown');
      await team.keyboard.press('PageDown');
      await shownFrame(team, 120);
      expect(await team.locator('.stage-line').textContent()).toBe(first);
      await team.keyboard.press('PageUp');
      await shownFrame(team, 530);
      await team.close();
      await page.getByText('No other window is open.').waitFor();
    }),
);
