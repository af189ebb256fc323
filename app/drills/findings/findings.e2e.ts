import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { LOOKS, readableAt } from '../../../test/axe.ts';
import { shot } from '../../../test/with-page.ts';

const app = appOfFile();

const list = (page: Page) => page.getByRole('region', { name: 'Findings' });
const crossing = (page: Page) => list(page).getByText('D1 and F2 cross too fast');
const doIt = (page: Page) => list(page).getByRole('button', { name: /^Do it/ });

async function openDrill(size: { width: number; height: number }, touch = false) {
  const { page, context } = await app.newPage(size, touch);
  // Demo drills have nothing to look at: this one has a crossing, and comes in as a drill file.
  await page.goto(`${app.url}/drills`);
  await page.getByLabel('A drill file').setInputFiles('fixtures/documents/crossing-drill.json');
  await page.getByRole('status').getByRole('link', { name: 'Five that cross' }).click();
  await crossing(page).waitFor();
  return { page, context };
}

describe('the findings of a drill', () => {
  it('are mended by one press, and undone by one', async () => {
    const { page, context } = await openDrill({ width: 1440, height: 900 });
    await doIt(page).first().waitFor();
    // It says what it does to what is wanted of the drill, and so does what is said when it is done.
    await list(page)
      .locator('.mend-effect')
      .filter({ hasText: /in \d+\s%, why\? of reps that come to it, now in \d+\s%\.$/ })
      .first()
      .waitFor();
    await shot(page, 'mend-effect');
    await doIt(page).first().click();
    await crossing(page).waitFor({ state: 'detached' });
    await list(page)
      .getByText(/^Done: .* in \d+\s% .* was in \d+\s%\. Undo puts it back\.$/)
      .waitFor();
    await shot(page, 'mend-done');
    // After another change one undo takes back that, and no longer the mend: the promise is gone, and comes back with it.
    await page.getByLabel('Title of the drill').fill('Five that crossed');
    await list(page)
      .getByText(/^Done:/)
      .waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Undo' }).click();
    await list(page)
      .getByText(/^Done:/)
      .waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await crossing(page).waitFor();
    await list(page)
      .getByText(/^Done:/)
      .waitFor({ state: 'detached' });
    await expect
      .poll(() => page.getByRole('button', { name: 'Undo' }).getAttribute('aria-disabled'))
      .toBe('true');
    await context.close();
  });

  it('are chosen on the ice and in the list as one, by pointer and by key', async () => {
    const { page, context } = await openDrill({ width: 1440, height: 900 });
    const flag = list(page).getByRole('button', { name: /^1\s*, show it/ });
    await page.locator('.board g.flag[data-number="1"]').click();
    await expect.poll(() => flag.getAttribute('aria-pressed')).toBe('true');
    await expect.poll(() => page.locator('.board g.flag.is-chosen').count()).toBe(1);
    const atS = async () =>
      Number(await page.getByRole('slider', { name: 'Time of the rep' }).getAttribute('aria-valuenow'));
    await expect.poll(atS).toBeGreaterThan(0.5);
    // Looked at, then run: the rep is seen from the whistle on.
    await page.getByRole('button', { name: 'Quarter speed' }).click();
    await page.getByRole('button', { name: /^Run/ }).click();
    await expect.poll(atS).toBeLessThan(0.5);
    await page.getByRole('button', { name: /^Stop/ }).click();
    await page.keyboard.press('Escape');
    await expect.poll(() => flag.getAttribute('aria-pressed')).toBe('false');
    const inScore = page.locator('.score g.flag[data-number="1"] text');
    await inScore.scrollIntoViewIfNeeded();
    const box = (await inScore.boundingBox())!;
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    await expect.poll(() => flag.getAttribute('aria-pressed')).toBe('true');
    await expect.poll(() => page.locator('.score g.flag.is-chosen').count()).toBe(1);
    await page.keyboard.press('Escape');
    await expect.poll(() => flag.getAttribute('aria-pressed')).toBe('false');
    await page.keyboard.press('Home');
    await flag.focus();
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => flag.evaluate(element => element === document.activeElement)).toBe(false);
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Enter');
    await expect.poll(() => flag.getAttribute('aria-pressed')).toBe('true');
    await expect.poll(atS).toBeGreaterThan(0.5);
    await context.close();
  });

  it('a mend is not offered while the hand holds something, and is looked for again once it rests', async () => {
    const { page, context } = await openDrill({ width: 1440, height: 900 });
    await doIt(page).first().waitFor();
    const spot = page.getByRole('button', { name: /^F2, one of/ }).locator('.hit');
    const box = (await spot.boundingBox())!;
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2 - 3, box.y + box.height / 2 + 3, { steps: 4 });
    await crossing(page).waitFor();
    await expect.poll(() => doIt(page).count()).toBe(0);
    await page.mouse.up();
    await doIt(page).first().waitFor();
    await context.close();
  });

  for (const { widths, size, touch } of LOOKS)
    it(`can be read and pressed by everybody at ${widths.join(' and ')} px`, async () => {
      const { page, context } = await openDrill(size, touch);
      await list(page).scrollIntoViewIfNeeded();
      await doIt(page).first().waitFor();
      await list(page)
        .getByRole('button', { name: /, why\?$/ })
        .first()
        .click();
      await list(page)
        .getByText(/into the rep, .* from the middle/)
        .waitFor();
      await readableAt(page, widths);
      if (touch) {
        for (const button of [
          doIt(page).first(),
          list(page).getByRole('button', { name: /^1\s*, show it/ }),
        ]) {
          const { height: high, width: wide } = (await button.boundingBox())!;
          expect(Math.min(high, wide)).toBeGreaterThanOrEqual(43.5);
        }
      }
      await context.close();
    });
});
