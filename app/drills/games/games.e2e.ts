import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { LOOKS, readableAt } from '../../../test/axe.ts';

const app = appOfFile();

const thing = (page: Page, name: string) =>
  page.locator('.things').getByRole('button', { name, exact: true });
const panel = (page: Page) => page.locator('.game-panel');
const slot = (page: Page, name: string) => panel(page).locator('.slot', { hasText: name });
const option = (page: Page, name: string | RegExp) => panel(page).getByRole('option', { name, exact: true });
const corner = (page: Page, name: string) =>
  page.getByRole('button', { name: `Corner of the small game, ${name}` });
const figure = async (page: Page, label: string): Promise<number> => {
  const said = await panel(page).locator('dl > div', { hasText: label }).locator('button.why').textContent();
  return Number(said?.match(/[\d.]+/)?.[0]);
};

async function bareIce(page: Page): Promise<void> {
  await page.goto(`${app.url}/drills`);
  await page.getByRole('button', { name: 'Draw on bare ice' }).press('Enter');
  await thing(page, 'Small game').waitFor();
}

describe('a small game', () => {
  it('by key alone: set, moved, its corner drawn in until it is crowded, and read', async () => {
    const { page, context } = await app.newPage();
    await bareIce(page);
    await thing(page, 'Small net').press('Enter');
    await page.getByRole('button', { name: 'smallNet' }).waitFor();
    await thing(page, 'Small game').press('Enter');
    // 20 m of a sheet 25.908 m wide for six: 86 m² each, and the net in it is its net.
    await expect.poll(() => figure(page, 'ice for each')).toBe(86);
    await slot(page, 'on 1 net').waitFor();
    await page.getByText('3 on 3, coach brings the puck').waitFor();

    await page.getByRole('button', { name: 'Small game, 3 on 3' }).press('Enter');
    for (let metres = 0; metres < 12; metres += 1)
      await corner(page, 'their end, left').press('Shift+ArrowLeft');
    // 8 × 25.908 m for six.
    await expect.poll(() => figure(page, 'ice for each')).toBe(35);
    await page.locator('.drill-findings').getByText('The small game is crowded: 35 m² of ice').waitFor();

    await slot(page, '3').first().press('Enter');
    await option(page, '2').press('Enter');
    await page.getByText('2 on 3,').waitFor();
    await expect.poll(() => figure(page, 'ice for each')).toBe(41);
    await slot(page, 'the coach').press('Enter');
    await option(page, 'who scored').press('Enter');
    await page.getByText('who scored', { exact: false }).first().waitFor();
    await slot(page, 'who scored').waitFor();
    await context.close();
  });

  for (const { widths, size, touch } of LOOKS)
    it(`at ${widths.join(' and ')} px is pressed onto the ice, has a corner pulled, and is readable by everybody`, async () => {
      const { page, context } = await app.newPage(size, touch);
      await bareIce(page);
      await thing(page, 'Small game').click();
      const board = await page.locator('.board').boundingBox();
      if (board === null) throw new Error('no board');
      await page.mouse.click(board.x + board.width / 2, board.y + board.height * 0.35);
      await panel(page).waitFor();
      const before = await figure(page, 'ice for each');
      await panel(page).getByRole('button', { name: 'Show its corners' }).click();
      const handle = corner(page, 'their end, left').locator('.shown');
      await handle.scrollIntoViewIfNeeded();
      const from = await handle.boundingBox();
      if (from === null) throw new Error('no corner');
      await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
      await page.mouse.down();
      // Away from the middle of the game, whichever way the sheet stands.
      const away = touch ? { x: 0, y: -40 } : { x: 90, y: 0 };
      await page.mouse.move(from.x + from.width / 2 + away.x, from.y + from.height / 2 + away.y, {
        steps: 6,
      });
      await expect.poll(() => figure(page, 'ice for each')).toBeGreaterThan(before);
      await page.mouse.up();
      const kept = await figure(page, 'ice for each');
      expect(kept).toBeGreaterThan(before);
      await readableAt(page, widths);
      await page.getByRole('button', { name: 'Undo' }).click();
      await expect.poll(() => figure(page, 'ice for each')).toBe(before);
      await context.close();
    });
});
