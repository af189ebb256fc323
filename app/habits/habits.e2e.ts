import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../test/app-of-file.ts';
import { seriousViolations } from '../../test/axe.ts';

const app = appOfFile();

describe('habits', () => {
  it('are listed with their rate, its count and its interval, and the figure says why', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/habits`);
    const row = page.getByRole('listitem').filter({ hasText: 'Gap at our blue line' });
    await row.getByText(/^1 of 1, 95 %: 21 to 100/).waitFor();
    await row.getByRole('button', { name: /100.*why/ }).click();
    await row.getByText('interval by Wilson 1927', { exact: false }).waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await context.close();
  });

  it('are judged again when their sentence changes, and undo brings the old sentence back', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/habits/gap`);
    const done = page.locator('.four-counts p', { hasText: 'done' }).locator('b');
    const missed = page.locator('.four-counts p', { hasText: 'missed' }).locator('b');
    await expect.poll(() => done.textContent()).toBe('1');
    await page.getByRole('button', { name: /^3\.0/ }).click();
    await page.getByRole('option', { name: /^1\.0/ }).click();
    await expect.poll(() => missed.textContent()).toBe('1');
    expect(await done.textContent()).toBe('0');
    expect(await seriousViolations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => done.textContent()).toBe('1');
    await context.close();
  });

  it('say what another limit would make of the same freezes, and take it from the hand', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/habits/gap`);
    const limit = page.getByRole('slider', { name: 'The limit' });
    await limit.focus();
    for (let step = 0; step < 10; step += 1) await page.keyboard.press('ArrowLeft');
    await page.getByRole('button', { name: /^2\.0/ }).waitFor();
    expect(await limit.getAttribute('aria-valuetext')).toContain('0 done, 1 missed');
    await page.keyboard.press('Control+z');
    await page.getByRole('button', { name: /^3\.0/ }).waitFor();
    await context.close();
  });

  it('can be written by keyboard alone, are there after a reload, and can be taken out and undone', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/habits`);
    await page.getByRole('link', { name: 'Two stop in the house' }).waitFor();
    await page.keyboard.press('n');
    const title = page.getByRole('textbox', { name: 'The habit in a few words' });
    await page.getByText('goals: not estimated').waitFor();
    await title.focus();
    await page.keyboard.type('Two hard strides');
    const slot = page.getByRole('button', { name: 'level with the puck' });
    await slot.focus();
    await page.keyboard.press('Enter');
    await page.getByRole('option', { name: 'level with' }).focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'goal-side of the puck' }).waitFor();
    await page.getByText(/^Kept/).waitFor();
    await page.reload();
    await page.getByRole('button', { name: 'goal-side of the puck' }).waitFor();
    expect(await title.inputValue()).toBe('Two hard strides');
    await page.getByRole('button', { name: 'Take out' }).click();
    await page.getByRole('button', { name: 'Take up again' }).waitFor();
    await page.keyboard.press('Control+z');
    await page.getByRole('button', { name: 'Take up again' }).waitFor({ state: 'detached' });
    await context.close();
  });

  it('lead back to the film', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/habits/gap`);
    await page.getByRole('link', { name: /Quillback Bay, 0:07/ }).click();
    await page.waitForURL(/\/film\/game-hunt\?moment=/);
    await context.close();
  });

  it('that are not there say so', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/habits/nothing-here`);
    await page.getByText('This habit is not here.').waitFor();
    await context.close();
  });
});
