import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { LOOKS, readableAt } from '../../../test/axe.ts';

const app = appOfFile();

const panel = (page: Page) => page.locator('.flow-panel');
const slot = (page: Page, name: string) => panel(page).locator('.slot', { hasText: name });
const option = (page: Page, name: string) => panel(page).getByRole('option', { name, exact: true });
const figure = (page: Page, label: string) =>
  panel(page).locator('dl > div', { hasText: label }).locator('button.why').textContent();

/** "92 reps, one every 7.8 s" */
async function head(page: Page): Promise<{ goes: number; everyS: number }> {
  const [goes, everyS] = ((await panel(page).locator('h2 .q3').textContent())?.match(/[\d.]+/g) ?? []).map(
    Number,
  );
  return { goes: goes ?? Number.NaN, everyS: everyS ?? Number.NaN };
}

describe('the block of a drill', () => {
  it('by key: a rep every ten seconds, fewer skaters, and who is left without a place', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/drills/drill-middle-first`);
    await panel(page).waitFor();
    const before = await head(page);
    const rep = page.getByText(/^In this rep/);
    const repS = Number((await rep.textContent())?.match(/[\d.]+/)?.[0]);
    expect(before.everyS).toBeCloseTo(repS, 1);

    await slot(page, 'when this one has ended').press('Enter');
    await option(page, 'every … seconds').press('Enter');
    await expect.poll(async () => (await head(page)).everyS).toBe(10);
    // Twelve minutes: the last rep that ends in time starts at a whole ten seconds.
    const after = await head(page);
    expect(after.goes).toBe(Math.floor((720 - repS) / 10) + 1);
    // Four spots, eighteen skaters on the demo team.
    expect(Number((await figure(page, 'reps each'))?.match(/[\d.]+/)?.[0])).toBeCloseTo(
      (after.goes * 4) / 18,
      1,
    );

    await slot(page, '18 skaters').press('Enter');
    await option(page, '5').press('Enter');
    await panel(page).getByText('With two missing nobody is left for F3.').waitFor();
    await panel(page).getByRole('button', { name: 'Draw them so' }).press('Enter');
    await panel(page).getByRole('button', { name: 'Draw them so' }).waitFor({ state: 'detached' });

    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await slot(page, 'when this one has ended').waitFor();
    await context.close();
  });

  it('says how near the rep comes to the freeze it was made from, term by term, and nothing of it where it was drawn on bare ice', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/drills/drill-middle-first`);
    await expect.poll(() => figure(page, 'from where they stood')).toMatch(/^\d+\.\d\sm, why\?$/);
    const near = panel(page).locator('dl > div', { hasText: 'from where they stood' });
    await near.locator('button.why').press('Enter');
    const said = ((await near.locator('.slip').textContent()) ?? '').replace(/\s/g, ' ');
    const [total] = ((await figure(page, 'from where they stood')) ?? '').match(/[\d.]+/) ?? [];
    const [, places, gaps] =
      /Places ([\d.]+) m apart with the puck, distances to the puck ([\d.]+) m/.exec(said) ?? [];
    // The slip says how its terms make the figure: so they must, within what one decimal leaves open.
    expect(Math.hypot(Number(places), Number(gaps))).toBeCloseTo(Number(total), 0);
    expect(said).toContain('Speeds are not compared');

    await page.goto(`${app.url}/drills`);
    await page.getByRole('button', { name: 'Draw on bare ice' }).click();
    await page.getByText('Set somebody on the ice').waitFor();
    expect(await page.getByText('from where they stood').count()).toBe(0);
    await context.close();
  });

  it('by turns at two ends both goalies are shot at, half as often', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/drills/drill-middle-first`);
    await panel(page).waitFor();
    const one = await head(page);
    await slot(page, 'at one end').click();
    await option(page, 'at the two ends by turns').click();
    await expect
      .poll(() => figure(page, 'between shots'))
      .toMatch(new RegExp(`^${Math.round(2 * one.everyS)} s`));
    await panel(page).locator('button.why', { hasText: 'of 18' }).click();
    await panel(page).getByText('On the mean of the block.').waitFor();
    await context.close();
  });

  it('follows the hand: a longer way makes fewer reps, before the hand lets go', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/drills/drill-middle-first`);
    await panel(page).waitFor();
    const { goes } = await head(page);
    await page.getByRole('button', { name: /^X2, one of/ }).press('Enter');
    const end = page.getByRole('button', { name: 'X2, point 3 of the route' });
    const box = await end.locator('.hit').boundingBox();
    if (box === null) throw new Error('no end of the route');
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x - 70, box.y + 170, { steps: 8 });
    await expect.poll(async () => (await head(page)).goes).toBeLessThan(goes);
    await page.mouse.up();
    await context.close();
  });

  for (const { widths, size, touch } of LOOKS)
    it(`is readable by everybody at ${widths.join(' and ')} px, with a choice and a why open`, async () => {
      const { page, context } = await app.newPage(size, touch);
      await page.goto(`${app.url}/drills/drill-gap-ladder`);
      await panel(page).waitFor();
      await slot(page, 'skaters').click();
      await panel(page).locator('button.why').first().click();
      await readableAt(page, widths);
      if (touch) {
        // A finger 20 px over the figure still asks it.
        const asked = panel(page).locator('button.why').nth(3);
        await asked.scrollIntoViewIfNeeded();
        const box = (await asked.boundingBox())!;
        await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2 - 20);
        await expect.poll(() => asked.getAttribute('aria-expanded')).toBe('true');
      }
      await context.close();
    });
});
