import { expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { shot, withPage } from '../../../test/with-page.ts';

const app = appOfFile();

it('all of a drill turned to the other end: ours stay ours, and its many reps and its habit come out as before', () =>
  withPage(app, 'other end', async page => {
    await page.goto(`${app.url}/drills/drill-gap-ladder`);
    const rate = page.locator('.many-rate:not(.stale) > button');
    await rate.waitFor({ timeout: 90_000 });
    const names = () =>
      page
        .locator('.board [data-thing]')
        .evaluateAll(all => all.map(one => one.getAttribute('aria-label')).sort());
    const xOf = (role: string) =>
      page
        .locator(`.board [aria-label^="${role}, one of"]`)
        .evaluate(one => new DOMMatrix(getComputedStyle(one).transform).e);
    const [before, beforeX] = [await names(), await xOf('D1')];
    const wanted = await page.locator('.many-figure .say').textContent();
    const held = await rate.textContent();
    const interval = await page.getByText(/^95 % interval/).textContent();

    await page.keyboard.press('Control+a');
    await page.getByRole('button', { name: 'Half turn', exact: true }).click();
    await page.getByText('Ours stay ours, and play towards the other end now').waitFor();
    await expect.poll(() => xOf('D1')).toBeCloseTo(-beforeX, 6);
    expect(await names()).toEqual(before);
    // The figure of before is told to be old, then the new one stands.
    await page.locator('.many-rate.stale').waitFor();
    await rate.waitFor({ timeout: 90_000 });
    expect(await rate.textContent()).toBe(held);
    expect(await page.getByText(/^95 % interval/).textContent()).toBe(interval);
    expect(await page.locator('.many-figure .say').textContent()).toBe(wanted);
    await shot(page, 'other end');
    await page.keyboard.press('Control+z');
    await expect.poll(() => xOf('D1')).toBeCloseTo(beforeX, 6);
  }));
