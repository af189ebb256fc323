import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';

const app = appOfFile();

describe('who skates a drill, and what is wanted of it', () => {
  it('are kept with the drill: our own timed skaters, and the wanted that was chosen, each undone by one step', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/team`);
    // Eight of the demo team are timed; one more is.
    const gates = page.getByLabel('Gates of 26 Lindqvaer');
    await gates.fill('5 m 1.45, ten 2');
    await gates.press('Enter');
    await page.getByText('“ten 2” is not read').waitFor();
    await gates.fill('5 m 1.45, 10 m 2.25, 20 m 3.62, 30 m 4.9');
    await gates.press('Enter');
    await expect.poll(() => page.getByText(/top speed, τ [\d.]+ s/).count()).toBe(9);
    expect(await seriousViolations(page)).toEqual([]);

    await page.goto(`${app.url}/drills/drill-middle-first`);
    const many = page.locator('.many');
    await many.getByText('reps, college women').waitFor();
    await many.getByRole('button', { name: 'skaters of the level' }).press('Enter');
    await page.getByRole('option', { name: /^our 9 timed skaters, in turn/ }).click();
    await many.getByText('reps, our 9 timed skaters in turn').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await many.getByText('reps, college women').waitFor();
    await many.getByRole('button', { name: 'skaters of the level' }).click();
    await page.getByRole('option', { name: 'ours by name' }).click();
    const timed = await many.getByLabel('F3').locator('option').nth(1).getAttribute('value');
    await many.getByLabel('F3').selectOption(timed ?? '');
    await many.getByText('reps, 1 timed skater of ours by name').waitFor();

    await many.locator('.slot').last().press('Enter');
    await page.getByRole('option', { name: 'F3 is level with the puck' }).click();
    const wanted = many.getByRole('button', { name: 'F3 is level with the puck' });
    await wanted.waitFor();
    await page.waitForFunction(() => /^Kept/.test(document.querySelector('.kept')?.textContent ?? ''));
    await page.reload();
    await wanted.waitFor();
    await many.getByText('reps, 1 timed skater of ours by name').waitFor();
    await context.close();
  });
});
