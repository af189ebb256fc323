import type { Page } from 'playwright-core';
import type { BenchRow } from '../../cli/bench-row.ts';
import type { RunningApp } from '../../test/browser.ts';
import { memoryOf, withApp, withPage } from './open-app.ts';
import { budget, short } from './rows.ts';
import { type SeasonFile, seasonFile } from './season-file.ts';

const GAMES = 80;
const MOMENTS = 1500;
const ROUNDS = 3;

/** The ledger of a full season: opened by a new browser, by one that has the season, and again in the same window. */
const bench = (): Promise<BenchRow[]> =>
  withApp(async app => {
    const season = seasonFile(GAMES, MOMENTS);
    await takeIn(app, season);
    return withPage(app, async page => {
      await page.addInitScript(
        `localStorage.setItem('icewright.teams', '{"teams":[{"id":"season-team","name":"Full Season","demo":false}],"teamId":"season-team"}')`,
      );
      const freshMs = await openLedger(page, app, 'reload');
      await checkFigures(page, season);
      const memory = await memoryOf(page);
      const againMs: number[] = [];
      for (let round = 0; round < ROUNDS; round++) againMs.push(await openLedger(page, app, 'go'));
      const reloadedMs: number[] = [];
      for (let round = 0; round < ROUNDS; round++) reloadedMs.push(await openLedger(page, app, 'reload'));
      const name = `ledger of ${GAMES} games × ${MOMENTS} moments`;
      return [
        budget({ name: `${name}: opened again in the same window`, values: againMs, most: 500 }),
        budget({ name: `${name}: in a window just opened`, values: reloadedMs, most: 500 }),
        budget({ name: `${name}: by a browser that was never here`, values: [freshMs], most: 500 }),
        budget({
          name: `${name}: memory of the page`,
          values: [memory.heapMB],
          most: 300,
          unit: 'MB',
          note: `script objects${memory.processMB === null ? '' : `; its whole process ${short(memory.processMB)} MB`}`,
        }),
      ];
    });
  });

export default bench;

const takeIn = async (app: RunningApp, season: SeasonFile): Promise<void> => {
  const answer = await fetch(`${app.url}/api/teams/file`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', 'Content-Length': `${Buffer.byteLength(season.text)}` },
    body: season.text,
  });
  if (answer.status !== 201) throw new Error(`the season was not taken in: ${await answer.text()}`);
};

/** Milliseconds from pressing "Ledger" on another place until its figures are final. */
const openLedger = async (page: Page, app: RunningApp, how: 'reload' | 'go'): Promise<number> => {
  if (how === 'reload') await page.goto(`${app.url}/drills`);
  else await page.getByRole('link', { name: 'Drills' }).first().click();
  await page.getByRole('link', { name: 'Ledger' }).waitFor();
  await page.waitForTimeout(500);
  return page.evaluate(async () => {
    const isFinal = () => {
      const text = document.body.textContent ?? '';
      return document.querySelector('.ledger') !== null && !text.includes('still opening');
    };
    const from = performance.now();
    document.querySelector<HTMLAnchorElement>('nav a[href="/ledger"]')!.click();
    while (!isFinal()) await new Promise(resolve => requestAnimationFrame(resolve));
    return performance.now() - from;
  });
};

/** Chances and those done, habit by habit, must be those that were put in. */
const checkFigures = async (page: Page, season: SeasonFile): Promise<void> => {
  await page.getByRole('button', { name: 'As a table' }).click();
  for (const [title, { chances, done }] of season.counted) {
    const row = (await page.locator('.ledger-table tbody tr', { hasText: title }).textContent()) ?? '';
    // Before its first practice, and from then on.
    const parts = [...row.matchAll(/(\d+) of (\d+):/g)];
    const [doneSaid, chancesSaid] = [1, 2].map(at => parts.reduce((sum, part) => sum + Number(part[at]), 0));
    if (doneSaid !== done || chancesSaid !== chances)
      throw new Error(`${title}: the ledger does not add up to ${done} of ${chances}, but says: ${row}`);
  }
  await page.getByRole('button', { name: 'As a table' }).click();
};
