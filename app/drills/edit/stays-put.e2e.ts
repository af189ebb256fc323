import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfEachTest } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import { shot, withPage } from '../../../test/with-page.ts';

const app = appOfEachTest();

const topOf = async (page: Page, what: string): Promise<number> => {
  const box = await page.locator(what).first().boundingBox();
  if (box === null) throw new Error(`no ${what}`);
  return Math.round(box.y + (await page.evaluate(() => window.scrollY)));
};
const act = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const bareIce = async (page: Page) => {
  await page.goto(`${app.url}/drills`);
  await act(page, 'Draw on bare ice').click();
  await page.locator('.board').waitFor();
};
const press = async (page: Page, across: number, down: number, tap = false) => {
  const box = (await page.locator('.board').boundingBox())!;
  const at = { x: box.x + across * box.width, y: box.y + down * box.height };
  await (tap ? page.touchscreen.tap(at.x, at.y) : page.mouse.click(at.x, at.y));
};

describe('the page under a hand that draws', () => {
  it('at 1440: acts and score stay where they are when reps come, have nothing to show, and come again', () =>
    withPage(
      app,
      'stays put',
      async page => {
        await bareIce(page);
        await act(page, 'One of us').click();
        await press(page, 0.3, 0.4);
        await page.locator('.score').waitFor();
        const before = [await topOf(page, '.hand-line'), await topOf(page, '.score')];
        const now = async () => [await topOf(page, '.hand-line'), await topOf(page, '.score')];
        await act(page, 'carries').click();
        await press(page, 0.8, 0.4);
        await act(page, 'Puck').click();
        await press(page, 0.3, 0.4);
        await page.locator('.where-strip', { hasText: 'stands here' }).waitFor();
        expect(await now()).toEqual(before);
        await act(page, 'One of us').click();
        await press(page, 0.25, 0.7);
        await act(page, 'skates').click();
        await press(page, 0.8, 0.6);
        await page.getByRole('img', { name: /^Where .*, 1000 reps/ }).waitFor({ timeout: 90_000 });
        expect(await now()).toEqual(before);
        await shot(page, 'stays put 1440');
        await page.keyboard.press('Control+a');
        await page.keyboard.press('Control+z');
        await page.keyboard.press('Control+z');
        expect(await now()).toEqual(before);
        expect(await seriousViolations(page)).toEqual([]);
      },
      { size: { width: 1440, height: 900 } },
    ));

  it('on a tablet: the ice does not slip from under the first skater', () =>
    withPage(
      app,
      'stays put tablet',
      async page => {
        await bareIce(page);
        const before = await topOf(page, '.board');
        await act(page, 'One of us').tap();
        await press(page, 0.3, 0.4, true);
        await act(page, 'What F1 does').waitFor();
        expect(await topOf(page, '.board')).toBe(before);
        // The ruled strip has its room with the first rep: reps that come later move nothing below it.
        await page.locator('.where-strip', { hasText: 'stands here' }).waitFor();
        await shot(page, 'stays put tablet');
      },
      { size: { width: 820, height: 1180 }, touch: true },
    ));

  it('on a phone: what comes next for who is chosen is under the thumb, in words for a finger', () =>
    withPage(
      app,
      'stays put phone',
      async page => {
        await bareIce(page);
        await page.locator('.board').scrollIntoViewIfNeeded();
        await act(page, 'One of us').tap();
        await press(page, 0.5, 0.3, true);
        const skates = act(page, 'skates');
        await skates.waitFor();
        await page.evaluate(() => document.querySelector('.board')!.scrollIntoView({ block: 'start' }));
        const box = (await skates.boundingBox())!;
        expect(box.y + box.height).toBeLessThanOrEqual(844);
        expect(box.height).toBeGreaterThanOrEqual(44);
        await shot(page, 'stays put phone');
        await skates.tap();
        await page.getByText('Press the ice where F1 goes to').waitFor();
        await page.getByRole('button', { name: 'F1, point 1 of the route' }).waitFor();
        expect(await page.locator('.hand-said').textContent()).not.toMatch(/Arrows|Shift|Alt/);
        await page.keyboard.press('Escape');
        expect(await page.locator('.hand-said').textContent()).not.toMatch(/Arrows|Shift|Alt/);
        const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        expect(over).toBeLessThanOrEqual(0);
        expect(await seriousViolations(page)).toEqual([]);
      },
      { size: { width: 390, height: 844 }, touch: true },
    ));

  it('who moves in the rep is named', () =>
    withPage(app, 'named in the rep', async page => {
      await page.goto(`${app.url}/drills/drill-middle-first`);
      const now = page.getByRole('slider', { name: 'Time of the rep' });
      for (let step = 0; step < 5; step += 1) await now.press('Shift+ArrowRight');
      await expect.poll(() => page.locator('.now text').allTextContents()).toContain('F3');
      await page.evaluate(() => window.scrollTo(0, 0));
      await shot(page, 'named in the rep');
      expect(await page.locator('.now text').allTextContents()).toContain('X1');
    }));
});
