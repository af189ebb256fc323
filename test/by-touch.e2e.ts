import type { Locator } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from './app-of-file.ts';
import { dragFinger } from './finger.ts';
import { withPage } from './with-page.ts';

const app = appOfFile({ holdsReps: true });

const SET = { size: { width: 390, height: 844 }, touch: true };

it('a finger moves a skater, pulls a route and bends it, and the page does not slide away under it', () =>
  withPage(
    app,
    'by touch',
    async (page, context) => {
      await page.goto(`${app.url}/drills/drill-middle-first`);
      const skater = page.getByRole('button', { name: /^F3, one of/ });
      await skater.scrollIntoViewIfNeeded();
      const slidTo = () => page.evaluate(() => window.scrollY);
      const before = await centreOf(skater);
      await dragFinger(page, context, before, { x: before.x - 40, y: before.y + 10 });
      // Up to ten pixels nearer to a marking or to a line of the others, which draw a finger.
      await expect
        .poll(async () => Math.abs((await centreOf(skater)).x - before.x + 40))
        .toBeLessThanOrEqual(10);

      const points = page.getByRole('button', { name: /^F3, point \d+ of the route/ });
      const pointCount = await points.count();
      const pull = page.getByRole('button', { name: 'Pull a route out of F3' });
      await pull.scrollIntoViewIfNeeded();
      const slid = await slidTo();
      const from = await centreOf(pull);
      await dragFinger(page, context, from, { x: from.x - 60, y: from.y - 60 });
      await expect.poll(() => points.count()).toBe(pointCount + 1);
      expect(await slidTo()).toBe(slid);

      const bend = page.getByRole('button', { name: /^F3, bend the route before point 1/ });
      await bend.scrollIntoViewIfNeeded();
      const middle = await centreOf(bend);
      await dragFinger(page, context, middle, { x: middle.x + 50, y: middle.y });
      await expect.poll(() => points.count()).toBe(pointCount + 2);
      await page.getByRole('button', { name: 'Undo' }).click();
      await expect.poll(() => points.count()).toBe(pointCount + 1);
    },
    SET,
  ));

it('what stands alone on the ice is about as wide as a finger needs', () =>
  withPage(
    app,
    'finger room',
    async page => {
      await page.goto(`${app.url}/drills/drill-middle-first`);
      const skater = page.getByRole('button', { name: /^F3, one of/ });
      await skater.locator('.hit').tap();
      const pull = page.getByRole('button', { name: 'Pull a route out of F3' }).locator('.hit');
      await pull.waitFor();
      expect((await skater.locator('.hit').boundingBox())!.width).toBeGreaterThanOrEqual(40);
      expect((await pull.boundingBox())!.width).toBeGreaterThan(24);
      // A long title is no wider than the page.
      await page
        .getByLabel('Title of the drill')
        .fill('First forward back takes the middle: only the two it is about');
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    },
    SET,
  ));

async function centreOf(what: Locator): Promise<{ x: number; y: number }> {
  const box = await what.locator('.hit').boundingBox();
  if (box === null) throw new Error('not on the board');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
