import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from '../../test/app-of-file.ts';
import { frozenAt, truthOf, withFreshPage } from '../../test/film-page.ts';

const app = appOfFile();
const truth = truthOf('A.json').find(one => one.i === 180)!;

const WINDOWS = [
  [1440, 900],
  [1280, 720],
  [1024, 768],
  [820, 1180],
  [390, 844],
] as const;

interface Sides {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const sidesOf = (page: Page, selector: string): Promise<Sides> =>
  page
    .locator(selector)
    .last()
    .evaluate(one => {
      const { left, top, right, bottom } = one.getBoundingClientRect();
      return { left, top, right, bottom };
    });

const overlap = (a: Sides, b: Sides): boolean =>
  a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 1 && b.top < a.bottom - 1;

/** What has the focus, as long as it is not in the picture itself. */
const focused = (page: Page): Promise<Sides | null> =>
  page.evaluate(() => {
    const one = document.activeElement;
    if (!one || one === document.body || one.closest('.film-stands')) return null;
    const { left, top, right, bottom } = one.getBoundingClientRect();
    return { left, top, right, bottom };
  });

it('keeps the picture in view, over nothing that is judged or has the focus, while the last offered pin is read', {
  timeout: 240_000,
}, async () => {
  await withFreshPage(app, async page => {
    await frozenAt(page, app.url, 'A.mp4', truth);
    await page.getByRole('button', { name: /^Offer pins/ }).click();
    await page.getByTestId('pins-offer').waitFor({ timeout: 60_000 });
    for (const [width, height] of WINDOWS) {
      const window = { left: 0, top: 0, right: width, bottom: height };
      await page.setViewportSize({ width, height });
      // At the top of the page it covers nothing: what belongs under it begins where it ends.
      await page.evaluate(() => scrollTo(0, 0));
      await expect
        .poll(async () => overlap(await sidesOf(page, '.film-stands'), await sidesOf(page, '.film-bar')))
        .toBe(false);
      await page
        .locator('.pins-offer li')
        .last()
        .evaluate(row => row.scrollIntoView({ block: 'end' }));
      expect(await page.evaluate(() => scrollY)).toBeGreaterThan(100);
      const picture = await sidesOf(page, '.picture-frame');
      const row = await sidesOf(page, '.pins-offer li');
      expect(picture.top).toBeGreaterThanOrEqual(-1);
      expect(picture.bottom).toBeLessThanOrEqual(window.bottom + 1);
      expect(picture.right - picture.left).toBeGreaterThan(0.4 * Math.min(width, 700));
      expect(overlap(row, window)).toBe(true);
      expect(overlap(row, picture)).toBe(false);
      for (const name of await page
        .locator('.offer-pin text')
        .evaluateAll(all => all.map(one => one.getBoundingClientRect().toJSON() as Sides))) {
        expect(name.left).toBeGreaterThanOrEqual(picture.left - 1);
        expect(name.right).toBeLessThanOrEqual(picture.right + 1);
      }
      // WCAG 2.2, 2.4.11 and 2.4.12 (focus not obscured): backwards, the way on which a thing comes out under what lies at the top.
      await page
        .locator('.film-below :is(button, a)')
        .last()
        .evaluate(one => (one as HTMLElement).focus());
      await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
      let seen = 0;
      for (let press = 0; press < 45; press++) {
        await page.keyboard.press('Shift+Tab');
        const focus = await focused(page);
        if (focus === null) continue;
        seen++;
        expect(overlap(focus, await sidesOf(page, '.film-stands'))).toBe(false);
      }
      expect(seen).toBeGreaterThan(20);
    }
    // On paper nothing goes along.
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.film-stands').evaluate(one => getComputedStyle(one).position)).toBe('static');
  });
});
