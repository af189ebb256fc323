import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../test/app-of-file.ts';
import { shot, withPage } from '../../test/with-page.ts';

const app = appOfFile();

describe('the room that the ice has', () => {
  it('a page enlarged to twice its size shows the whole sheet under one line of title and acts', () =>
    withPage(
      app,
      'enlarged',
      async page => {
        await page.goto(`${app.url}/drills/drill-three-on-the-heels`);
        const box = (await page.locator('svg.board').boundingBox())!;
        expect(box.y + 0.9 * box.height).toBeLessThan(450);
        const tops = await page
          .locator('.head .title-entry, .head .acts .act')
          .evaluateAll(all => all.map(each => each.getBoundingClientRect().top));
        expect(Math.max(...tops) - Math.min(...tops)).toBeLessThan(20);
        await shot(page, 'enlarged');
      },
      // 1440 × 900 at 200 %.
      { size: { width: 720, height: 450 } },
    ));

  it('what is said of a field, its unit, and the ring of a skater at the boards lie clear', () =>
    withPage(app, 'fields', async page => {
      await page.goto(`${app.url}/drills/drill-middle-first`);
      const board = page.locator('svg.board');
      await board.waitFor();
      expect(await board.evaluate(each => getComputedStyle(each).overflow)).toBe('visible');
      const minutes = page.getByRole('spinbutton', { name: 'minutes' });
      await minutes.fill('999');
      const alert = page.locator('.drill-words [role="alert"]');
      await alert.waitFor();
      // The ring is 3 px wide and stands 2 px off.
      const [field, said] = [await minutes.boundingBox(), await alert.boundingBox()];
      expect(said!.y).toBeGreaterThanOrEqual(field!.y + field!.height + 5);
    }));

  it('a phone shows the whole sheet and what stops it while a rep plays, and nothing wider than itself', () =>
    withPage(
      app,
      'phone',
      async page => {
        await page.goto(`${app.url}/drills/drill-three-on-the-heels`);
        const overflow = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        const board = page.locator('svg.board');
        await board.waitFor();
        expect(await overflow()).toBe(0);
        await page.getByRole('button', { name: /^Run/ }).click();
        const stop = page.getByRole('button', { name: 'Stop the rep' });
        await expect
          .poll(() => stop.boundingBox().then(box => box!.y + box!.height))
          .toBeLessThanOrEqual(640);
        const box = (await board.boundingBox())!;
        expect(box.y).toBeGreaterThanOrEqual(0);
        expect(box.y + box.height).toBeLessThanOrEqual(640);
        await shot(page, 'phone-run');
        await stop.click();
        await page.getByRole('button', { name: 'Run it again' }).waitFor();
        expect(await overflow()).toBe(0);
      },
      { size: { width: 320, height: 640 }, touch: true },
    ));
});
