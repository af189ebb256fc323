import { open } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { filmHashOf } from '../../book/index.ts';
import type { BenchRow } from '../../cli/bench-row.ts';
import type { RunningApp } from '../../test/browser.ts';
import { filmPath } from '../../test/film-page.ts';
import { withApp, withPage } from './open-app.ts';
import { budget } from './rows.ts';
import { seasonFile } from './season-file.ts';

const MOMENTS = 1500;
const PRESSES = 20;
const FRAMES = 600;

/** A game of 1,500 moments in the film room: marking by one key, filtering, and rolling through the list. */
const bench = (): Promise<BenchRow[]> =>
  withApp(async app => {
    await takeIn(app);
    return withPage(app, async page => {
      await page.addInitScript(
        `localStorage.setItem('icewright.teams', '{"teams":[{"id":"season-team","name":"Full Season","demo":false}],"teamId":"season-team"}')`,
      );
      await page.goto(`${app.url}/film/season-game-0`);
      // The film is one of the demo's: it is found by its content in the server's folder.
      await page.locator('.film-below').getByText(said(MOMENTS)).waitFor();
      // Copies round the moments are made first; they are another bench's matter.
      await page.waitForTimeout(4_000);
      const pressMs = await pressKeys(page);
      await page
        .locator('.film-below')
        .getByText(said(MOMENTS + PRESSES))
        .waitFor();
      const rolled = await roll(page);
      const name = `film room with ${MOMENTS} moments`;
      return [
        budget({
          name: `${name}: key pressed to its row in the list`,
          values: pressMs,
          most: 100,
          share: 0.75,
        }),
        budget({
          name: `${name}: between two pictures while the list rolls`,
          values: rolled.frameMs,
          most: 17.5,
        }),
        budget({
          name: `${name}: longest task while the list rolls`,
          values: [rolled.longestTaskMs],
          most: 50,
        }),
      ];
    });
  });

export default bench;

const said = (count: number): RegExp =>
  new RegExp(`^${count.toLocaleString('en-GB')} moments|^${count} moments`);

/** One game of the season's file, its moments spread over a film that there is, and a key of the coach's own. */
const takeIn = async (app: RunningApp): Promise<void> => {
  const file = JSON.parse(seasonFile(1, MOMENTS).text);
  const [team, game] = file.documents.map(({ value }: { value: unknown }) => value);
  team.momentKeys = {
    n: { rank: 1, key: 'n', habit: 'habit-0', verdict: 'done', beforeS: 2, afterS: 1 },
  };
  const { hash, byteCount } = await hashed(filmPath('A.mp4'));
  game.films = {
    film: {
      rank: 1,
      hash,
      fileName: 'A.mp4',
      byteCount,
      durationS: FRAMES / 30,
      frameCount: FRAMES,
      label: '',
    },
  };
  const moments: { frameIndex: number; filmTimeS: number }[] = Object.values(game.moments);
  for (const [index, one] of moments.entries()) {
    one.frameIndex = Math.floor((index * FRAMES) / MOMENTS);
    one.filmTimeS = one.frameIndex / 30;
  }
  const body = JSON.stringify(file);
  const answer = await fetch(`${app.url}/api/teams/file`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', 'Content-Length': `${Buffer.byteLength(body)}` },
    body,
  });
  if (answer.status !== 201) throw new Error(`the game was not taken in: ${await answer.text()}`);
};

const hashed = async (path: string) => {
  const handle = await open(path);
  const { size: byteCount } = await handle.stat();
  const hash = await filmHashOf(async (offset, length) => {
    const { buffer, bytesRead } = await handle.read(new Uint8Array(length), 0, length, offset);
    return buffer.subarray(0, bytesRead);
  }, byteCount);
  await handle.close();
  return { hash, byteCount };
};

/** Milliseconds from the press to the picture in which the list counts one more. */
const pressKeys = (page: Page): Promise<number[]> =>
  page.evaluate(async presses => {
    const counted = () => document.querySelector('.film-below')?.textContent?.slice(0, 12);
    const times: number[] = [];
    for (let i = 0; i < presses; i++) {
      const before = counted();
      const from = performance.now();
      document.body.dispatchEvent(new KeyboardEvent('keydown', { key: 'n', code: 'KeyN', bubbles: true }));
      while (counted() === before) await new Promise(resolve => requestAnimationFrame(resolve));
      times.push(performance.now() - from);
      await new Promise(resolve => setTimeout(resolve, 300));
    }
    return times;
  }, PRESSES);

const roll = (page: Page): Promise<{ frameMs: number[]; longestTaskMs: number }> =>
  page.evaluate(async () => {
    let longestTaskMs = 0;
    const tasks = new PerformanceObserver(list => {
      for (const { duration } of list.getEntries()) longestTaskMs = Math.max(longestTaskMs, duration);
    });
    tasks.observe({ type: 'longtask' });
    const frameMs: number[] = [];
    let last = 0;
    for (let i = 0; i < 240; i++) {
      window.scrollBy(0, 120);
      const now = await new Promise<number>(resolve => requestAnimationFrame(resolve));
      if (last > 0) frameMs.push(now - last);
      last = now;
    }
    tasks.disconnect();
    if (window.scrollY < 10_000) throw new Error(`the list is only ${window.scrollY} px long`);
    return { frameMs, longestTaskMs };
  });
