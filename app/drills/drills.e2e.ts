import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../test/app-of-file.ts';

const app = appOfFile();

const spot = (page: Page, role: string) => page.getByRole('button', { name: new RegExp(`^${role}, one of`) });
const rep = (page: Page) => page.getByText(/^In this rep/);

async function centreOf(page: Page, role: string): Promise<{ x: number; y: number }> {
  const box = await spot(page, role).locator('.hit').boundingBox();
  if (box === null) throw new Error(`${role} is not on the board`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

describe('a drill on the ice', () => {
  it('by mouse: a skater is dragged, a route pulled out of it, the rep computed, and all of it undone', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/drills/drill-middle-first`);
    await rep(page).waitFor();
    const before = await centreOf(page, 'F3');
    await page.mouse.move(before.x, before.y);
    await page.mouse.down();
    await page.mouse.move(before.x - 60, before.y + 40, { steps: 6 });
    await page.mouse.up();
    await expect.poll(async () => Math.round((await centreOf(page, 'F3')).x - before.x)).toBe(-60);

    const pull = page.getByRole('button', { name: 'Pull a route out of F3' });
    const from = await pull.locator('.shown').boundingBox();
    if (from === null) throw new Error('no handle to pull');
    await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
    await page.mouse.down();
    await page.mouse.move(from.x - 70, from.y - 30, { steps: 6 });
    await page.mouse.up();
    await page.getByRole('button', { name: 'F3, point 4 of the route' }).waitFor();

    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'F3, point 4 of the route' }).waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(async () => Math.round((await centreOf(page, 'F3')).x - before.x)).toBe(0);
    await context.close();
  });

  it('by key: a bare sheet becomes a chase with a finding', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/drills`);
    await page.getByRole('button', { name: 'Draw on bare ice' }).press('Enter');
    await page.getByRole('button', { name: 'One of us' }).press('Enter');
    await page.getByRole('heading', { name: /^F1/ }).waitFor();
    await page.getByRole('button', { name: 'skates', exact: true }).press('Enter');
    await page.getByRole('button', { name: 'F1, point 1 of the route' }).waitFor();
    for (let metres = 8; metres < 30; metres += 1)
      await page.getByRole('button', { name: 'F1, point 1 of the route' }).press('Shift+ArrowRight');
    await page.getByText('comes too near', { exact: false }).waitFor();
    await page.keyboard.press('Escape');
    await page.keyboard.press('Space');
    await expect
      .poll(async () =>
        Number(await page.getByRole('slider', { name: 'Time of the rep' }).getAttribute('aria-valuenow')),
      )
      .toBeGreaterThan(0.3);
    await context.close();
  });

  it('two windows on one drill see each other', async () => {
    const first = await app.newPage();
    const second = await app.newPage();
    for (const { page } of [first, second]) {
      await page.goto(`${app.url}/drills/drill-gap-ladder`);
      await rep(page).waitFor();
    }
    const before = await centreOf(second.page, 'D1');
    await spot(first.page, 'D1').press('Shift+ArrowUp');
    await expect.poll(async () => (await centreOf(second.page, 'D1')).y).toBeLessThan(before.y - 5);
    await first.context.close();
    await second.context.close();
  });
});
