import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import { choose, filmPath, jumpTo, shownFrame, toFilm, withFreshPage } from '../../../test/film-page.ts';

const app = appOfFile();

it('a game is marked live by one key, and brought onto its film by one moment that both show', () =>
  withFreshPage(app, async page => {
    await toFilm(page, app.url);
    // A game that is begun and left with nothing in it is not kept, and the list says so.
    await page.getByRole('button', { name: 'Add a game' }).click();
    await page.getByText('This game has no film yet.').waitFor();
    await page.getByRole('link', { name: 'Film' }).first().click();
    await page.getByText('no film, no moment and no name, and is not kept').waitFor();
    expect(await page.locator('.games tbody tr').count()).toBe(2);
    // Nor is a live clock that ran without one mark.
    await page.getByRole('button', { name: 'Mark a game live' }).click();
    await page.getByText('since the marking began').waitFor();
    await page.getByRole('link', { name: 'Film' }).first().click();
    await page.getByText('no film, no moment and no name, and is not kept').waitFor();
    expect(await page.locator('.games tbody tr').count()).toBe(2);
    await page.getByRole('button', { name: 'Mark a game live' }).click();
    await page.getByText('since the marking began').waitFor();
    await page.getByRole('button', { name: '5v4' }).click();
    await page.getByRole('button', { name: 'A goal of ours', exact: true }).click();
    await page.locator('.key-press').first().click();
    await page.waitForTimeout(1_200);
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await page.keyboard.press('n');
    const rows = page.locator('.moments tbody tr:not(.moment-edit)');
    await expect.poll(() => rows.count()).toBe(2);
    await opensNothing(page, rows);
    const clocks = (await rows.locator('.row-handle').allTextContents()).map(
      text => Number(text.split(':')[0]) * 60 + Number(text.split(':')[1]),
    );
    // Pressed once, it holds for both.
    expect(await rows.filter({ hasText: '5v4' }).count()).toBe(2);
    // The newest stands on top.
    const apartS = clocks[0]! - clocks[1]!;
    expect(apartS).toBeGreaterThan(1);
    expect(await seriousViolations(page)).toEqual([]);
    await stoppedForABreak(page);
    await saidByAKey(page);
    await seenByTwo(page, rows);
    await overForGood(page);
    await choose(page, 'Open a film', filmPath('A.mp4'));
    await jumpTo(page, '150');
    await shownFrame(page, 150);
    await page.getByRole('button', { name: 'It happens at this picture' }).click();
    await page.getByText('2 moments came onto this film').waitFor();
    // The first lies at frame 150 of 30 a second; the other as much later as it was live.
    const tied = await rows.locator('.row-handle').allTextContents();
    expect(tied[0]).toBe('0:05.0');
    const later = Number(tied[1]!.split(':')[1]) - 5;
    expect(Math.abs(later - apartS)).toBeLessThanOrEqual(0.11);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await page.getByText('2 moments not on a film yet').waitFor();
    await opensItsFilm(page);
  }));

it('ends a moment that was marked just before a break where the clock is stopped, and gives its seconds back with the clock', () =>
  withFreshPage(app, async page => {
    await toFilm(page, app.url);
    await page.getByRole('button', { name: 'Mark a game live' }).click();
    await page.getByText('since the marking began').waitFor();
    await press(page);
    const handle = page.locator('.moments .row-handle');
    await handle.waitFor();
    await page.getByRole('button', { name: 'Stop the clock for a break' }).click();
    await page.getByText(/stopped for a break/).waitFor();
    await handle.click();
    const after = async () => Number(await page.getByLabel('Seconds after').inputValue());
    // Its key keeps three; only as many are left as went by until the press that stopped the clock.
    expect(await after()).toBeLessThan(3);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await page.getByText('since the marking began').waitFor();
    await expect.poll(after).toBe(3);
  }));

/** The clock stands in a break, and goes on from where it stood. */
async function stoppedForABreak(page: Page): Promise<void> {
  const clock = () => page.getByRole('timer').locator('b').textContent();
  await page.getByRole('button', { name: 'Stop the clock for a break' }).click();
  await page.getByText('stopped for a break of 0:01 so far').waitFor();
  const stood = await clock();
  await page.getByText('stopped for a break of 0:03 so far').waitFor();
  expect(await clock()).toBe(stood);
  await press(page);
  // Its seconds end where the clock stands.
  const said = await page.getByText(/The clock is stopped: it stands at the break/).textContent();
  expect(said).toMatch(new RegExp(`to ${stood}\\.\\d\\. The clock`));
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.getByRole('button', { name: 'Let the clock go on' }).click();
  const seconds = async () => Number((await clock())!.split(':')[1]);
  const from = Number(stood!.split(':')[1]);
  expect((await seconds()) - from).toBeLessThan(3);
  await expect.poll(seconds).toBeGreaterThan(from);
}

/** The end of a game stops its clock and takes the keys away until somebody takes it back. */
async function overForGood(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'The game is over' }).click();
  await page.getByText('on the clock when the game was over').waitFor();
  expect(await page.locator('.key-press').count()).toBe(0);
  expect(await page.locator('.moments tbody tr:not(.moment-edit)').count()).toBe(2);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.getByText('since the marking began').waitFor();
  await page.getByRole('button', { name: 'The game is over' }).click();
  await page.getByText('on the clock when the game was over').waitFor();
  expect(await seriousViolations(page)).toEqual([]);
}

/** A game that was marked live and has its film is opened at the film, with or without its pictures; the live page is one press away. */
async function opensItsFilm(page: Page): Promise<void> {
  await jumpTo(page, '99:00');
  await page.getByText('The film ends at').waitFor();
  await page.goto(page.url().replace(/\?.*$/, ''));
  const live = page.getByRole('button', { name: 'marked live', exact: true });
  await live.waitFor();
  expect(await page.getByRole('timer').count()).toBe(0);
  expect(
    await page.getByRole('button', { name: 'whole game', exact: true }).getAttribute('aria-pressed'),
  ).toBe('true');
  await live.click();
  await page.getByText('on the clock when the game was over').waitFor();
}

/** A key without a habit says how the game stands from then on; one with a habit may say it of its moment. */
async function saidByAKey(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Change keys' }).click();
  await page.getByRole('button', { name: 'Another key' }).click();
  const row = page.locator('.key-row').last();
  await row.getByLabel('Habit').selectOption('');
  await row.getByLabel('Us v them').selectOption('4v5');
  const letter = await row.locator('select').first().inputValue();
  expect(await seriousViolations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Done', exact: true }).first().click();
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await page.keyboard.press(letter);
  await page.getByText('4v5 from now on.').waitFor();
  expect(await page.getByRole('button', { name: '4v5', exact: true }).getAttribute('aria-pressed')).toBe(
    'true',
  );
}

/** A second tagger on another machine marks the same game at the same time: each sees what the other marks, and nothing is lost. */
async function seenByTwo(page: Page, rows: Locator): Promise<void> {
  const other = await app.newPage();
  try {
    await other.page.goto(page.url());
    const theirs = other.page.locator('.moments tbody tr:not(.moment-edit)');
    await expect.poll(() => theirs.count()).toBe(2);
    await Promise.all([press(page), press(other.page)]);
    await expect.poll(() => Promise.all([rows.count(), theirs.count()])).toEqual([4, 4]);
    // What one takes back is his own; the other's stays.
    await other.page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(() => Promise.all([rows.count(), theirs.count()])).toEqual([3, 3]);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(() => Promise.all([rows.count(), theirs.count()])).toEqual([2, 2]);
  } finally {
    await other.context.close();
  }
}

const press = (page: Page) => page.locator('.key-press').first().click();

/** To mark in words moves nothing that is pressed while the game runs, and covers none of it; without "Mark a moment" it marks what is now. */
const opensNothing = async (page: Page, rows: Locator): Promise<void> => {
  const pressed = '.key-press, .marking-acts > .act, .how-it-stands .act';
  const places = () =>
    page.locator(pressed).evaluateAll(all =>
      all.map(one => {
        const { left, top, width, height } = one.getBoundingClientRect();
        const isOnTop =
          document.elementFromPoint(left + width / 2, top + height / 2)?.closest('button') === one;
        return [left, top + scrollY, isOnTop || top + height / 2 > innerHeight || top < 0];
      }),
    );
  for (const size of [
    { width: 390, height: 844 },
    { width: 1440, height: 900 },
  ]) {
    await page.setViewportSize(size);
    const before = await places();
    expect(before.map(([, , isFree]) => isFree)).not.toContain(false);
    await page.keyboard.press('m');
    await page.getByRole('region', { name: /^Mark the moment at/ }).waitFor();
    expect(await places()).toEqual(before);
    await page.keyboard.press('Escape');
  }
  await page.getByRole('region', { name: 'Mark what is now' }).getByRole('button', { name: /^Done/ }).click();
  await expect.poll(() => rows.count()).toBe(3);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect.poll(() => rows.count()).toBe(2);
};
