import { createHash } from 'node:crypto';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';

const app = appOfFile();

const drawn = (page: Page) => page.locator('.sight canvas[data-drawn=true]');
/** What is drawn, as a short name of it. */
const picture = async (page: Page) =>
  createHash('sha256')
    .update(await drawn(page).screenshot())
    .digest('hex');

/** What is drawn once it is drawn no more: a press is seen a picture or two later. */
const pictureAtRest = async (page: Page) => {
  let [before, now] = ['', await picture(page)];
  while (now !== before) {
    // On a busy machine two looks may fall before the next picture is drawn.
    await page.waitForTimeout(400);
    [before, now] = [now, await picture(page)];
  }
  return now;
};

/** Late figures of the page move the canvas by parts of a pixel, and every picture with it: held in a corner only what is drawn on it tells. */
const heldInCorner = (page: Page) =>
  drawn(page).evaluate(canvas => {
    const held = {
      position: 'fixed',
      left: '8px',
      top: '8px',
      width: '900px',
      height: '400px',
      'z-index': '99',
    };
    for (const [name, value] of Object.entries(held)) canvas.style.setProperty(name, value, 'important');
  });

describe('a moment from the ice', () => {
  it('is fetched only when asked, and follows the seat, the head and the time', async () => {
    const { page, context } = await app.newPage();
    const fetched: string[] = [];
    page.on('request', request => fetched.push(request.url()));
    await page.goto(`${app.url}/drills/drill-middle-first`);
    await page.getByText(/^In this rep/).waitFor();
    expect(fetched.filter(url => url.includes('sight-view'))).toEqual([]);

    await page.getByRole('button', { name: 'Look', exact: true }).click();
    await drawn(page).waitFor();
    await heldInCorner(page);
    expect(fetched.filter(url => url.includes('sight-view')).length).toBeGreaterThan(0);

    await page.getByLabel('eyes of').selectOption({ label: 'F3' });
    const words = page.locator('.sight-words');
    const atWhistle = await words.textContent();
    expect(atWhistle).toMatch(/X1 \d+\.\d\sm at \d/);
    expect(atWhistle).not.toMatch(/F3 \d/);
    await drawn(page).focus();
    // A first key brings the focus ring, which is in every picture from then on.
    await page.keyboard.press('Home');
    const ahead = await pictureAtRest(page);
    for (let turn = 0; turn < 6; turn += 1) await page.keyboard.press('ArrowLeft');
    await expect.poll(() => picture(page)).not.toBe(ahead);
    await page.keyboard.press('Home');
    await expect.poll(() => picture(page)).toBe(ahead);

    await page.getByRole('button', { name: 'from the stand' }).click();
    await expect.poll(() => picture(page)).not.toBe(ahead);
    const still = await pictureAtRest(page);
    await page.locator('h2', { hasText: 'Findings' }).first().click();
    await page.keyboard.press('ArrowRight');
    for (let tenth = 0; tenth < 12; tenth += 1) await page.keyboard.press('ArrowRight');
    await expect.poll(() => picture(page)).not.toBe(still);
    expect(await words.textContent()).not.toBe(atWhistle);
    expect(await seriousViolations(page)).toEqual([]);
    await context.close();
  });

  it('fits a phone, and the head turns by a finger', async () => {
    const { page, context } = await app.newPage({ width: 390, height: 844 }, true);
    await page.goto(`${app.url}/drills/drill-middle-first`);
    await page.getByRole('button', { name: 'Look', exact: true }).tap();
    await drawn(page).waitFor();
    await drawn(page).scrollIntoViewIfNeeded();
    const before = await picture(page);
    const box = await drawn(page).boundingBox();
    if (box === null) throw new Error('no picture to turn');
    expect(box.width).toBeLessThanOrEqual(390);
    const touch = await context.newCDPSession(page);
    const at = (x: number) => [{ x, y: box.y + box.height / 2 }];
    await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(box.x + 250) });
    for (let x = 250; x >= 100; x -= 25)
      await touch.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(box.x + x) });
    await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await expect.poll(() => picture(page)).not.toBe(before);
    await context.close();
  });
});
