import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { seriousViolations } from '../../../test/axe.ts';
import { type RunningApp, startApp } from '../../../test/browser.ts';
import { toFilm, withFreshPage } from '../../../test/film-page.ts';
import { burnedIn, hasReelTools, probe } from '../../../test/read-reel.ts';

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

const [AROUND_S, HOLD_S] = [0.5, 0.5];
const LENGTH_S = 62 / 30 + HOLD_S;
/** Of film A, 30 pictures a second: the frame of the first moment, which is frozen there, and of the second. */
const [FIRST, SECOND] = [122, 201];

describe.skipIf(!hasReelTools)('a reel, read with ffprobe and ffmpeg', () => {
  it('shows exactly the pictures of its moments, stands as long as a freeze says, and takes the sound along', {
    timeout: 120_000,
  }, async () => {
    await withFreshPage(app, async page => {
      await toFilm(page, app.url);
      // The browser keeps the file and hands it out: a dialog of the system cannot be pressed here.
      await page.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'));
      await page.reload();
      await page
        .getByRole('link', { name: /Quillback Bay, at home/ })
        .first()
        .click();
      await page.locator('.film-room').waitFor();
      await cutMoments(page);
      const opens = page.getByRole('button', { name: 'Make a reel of those shown' });
      const onPage = () => opens.evaluate(one => one.getBoundingClientRect().top + window.scrollY);
      const stoodAt = await onPage();
      await opens.click();
      const panel = page.getByRole('region', { name: 'A reel' });
      const boxes = panel.locator('li input');
      await boxes.first().waitFor();
      // The act stays where it was pressed, and what it opened is seen below the picture.
      expect(Math.abs((await onPage()) - stoodAt)).toBeLessThan(2);
      await expect
        .poll(() =>
          boxes
            .first()
            .evaluate(
              one =>
                document.elementFromPoint(
                  one.getBoundingClientRect().x + 4,
                  one.getBoundingClientRect().y + 4,
                ) === one,
            ),
        )
        .toBe(true);
      for (let i = 2; i < (await boxes.count()); i++) await boxes.nth(i).uncheck();
      await panel.getByRole('button', { name: /^Later: .* 0:04\.\d$/ }).click();
      await panel.getByLabel('a title before each').uncheck();
      expect(await panel.getByText(/long, with marks and stands/).textContent()).toMatch(/^0:02\.6 /);
      expect(await seriousViolations(page)).toEqual([]);

      const [download] = await Promise.all([
        page.waitForEvent('download'),
        panel
          .getByRole('button', { name: /^(MP4|WebM)/ })
          .first()
          .click(),
      ]);
      const path = await download.path();
      await panel.getByText(/^Made: Quillback Bay, at home, 2 moments/).waitFor();

      const streams = probe(path);
      expect(streams.video).toMatchObject({ width: 1280, height: 720 });
      expect(['h264', 'vp9', 'vp8']).toContain(streams.video?.codec_name);
      expect(['aac', 'opus']).toContain(streams.audio?.codec_name);
      // The sound is as long as the pictures, up to a packet.
      expect(Math.abs(Number(streams.audio?.duration) - LENGTH_S)).toBeLessThan(0.06);

      const pictures = burnedIn(path);
      const inOrder = pictures.filter((one, i) => i === 0 || one.frame !== pictures[i - 1]!.frame);
      const range = (middle: number) => Array.from({ length: 31 }, (_, i) => middle - 15 + i);
      expect(inOrder.map(one => one.frame)).toEqual([...range(SECOND), ...range(FIRST)]);
      const standsAt = inOrder.findIndex(one => one.frame === FIRST);
      const stoodS = inOrder[standsAt + 1]!.atS - inOrder[standsAt]!.atS;
      expect(stoodS).toBeCloseTo(HOLD_S + 1 / 30, 2);
      const movedS = inOrder[standsAt]!.atS - inOrder[standsAt - 1]!.atS;
      expect(movedS).toBeCloseTo(1 / 30, 3);

      // Called off, it leaves nothing and says so.
      await panel.getByLabel('a title before each').check();
      await panel
        .getByRole('button', { name: /^(MP4|WebM)/ })
        .first()
        .click();
      await panel.getByRole('button', { name: 'Cancel' }).click();
      await panel.getByText('Called off. Nothing was kept.').waitFor();
    });
  });
});

/** The first two moments get short stretches, and the freeze of the first stands. */
const cutMoments = async (page: Page): Promise<void> => {
  for (const nth of [0, 1]) {
    await page.locator('.row-handle').nth(nth).click();
    await page.getByLabel('Seconds before').fill(`${AROUND_S}`);
    await page.getByLabel('Seconds after').fill(`${AROUND_S}`);
    await page.keyboard.press('Tab');
    if (nth === 0) {
      await page.getByLabel('In playback it stands for').fill(`${HOLD_S}`);
      await page.keyboard.press('Tab');
    }
  }
};
