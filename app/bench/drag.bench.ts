import type { Page } from 'playwright-core';
import type { BenchRow } from '../../cli/bench-row.ts';
import type { RunningApp } from '../../test/browser.ts';
import { type Busy, busyIn, drag, MOVES, middleOf } from './drag-by-mouse.ts';
import { type Watched, watchDrags } from './drag-watch.ts';
import { withApp, withPage } from './open-app.ts';
import { atShare, budget, median, short } from './rows.ts';

const DRAGS = 3;
const ROLES = ['F3', 'X1', 'X2'] as const;

/** A spot dragged over the ice by a real pointer: from the hand's move to the new figures on the screen. */
const bench = (): Promise<BenchRow[]> =>
  withApp(app =>
    withPage(app, async page => {
      await page.goto(`${app.url}/drills/drill-middle-first`);
      await page.getByText(/^In this rep/).waitFor();
      await checkFigures(page, app);
      const watched = await page.evaluateHandle(watchDrags);
      const busyMs: Busy[] = [];
      for (let round = 0; round < DRAGS; round++) {
        for (const role of ROLES) {
          busyMs.push(await busyIn(page, () => drag(page, role, round % 2 === 0 ? 1 : -1)));
        }
      }
      const seen = await watched.evaluate(one => one.stop());
      return rowsOf(seen, busyMs, await tapped(page));
    }),
  );

export default bench;

const rowsOf = (seen: Watched, busyMs: readonly Busy[], taps: readonly number[]): BenchRow[] => {
  const pictures = seen.shownMs.length / busyMs.length;
  const asked = DRAGS * ROLES.length * MOVES;
  if (seen.shownMs.length < asked / 3)
    throw new Error(`${asked} moves gave ${seen.shownMs.length} new pictures: the drag did not take`);
  return [
    budget({
      name: 'a spot dragged: from the move to new figures on screen',
      values: seen.shownMs,
      most: 16,
      share: 0.95,
      note: `${seen.shownMs.length} pictures, ${seen.unchangedCount} moves that changed nothing; a picture lasts ${short(seen.frameMs)} ms here`,
    }),
    budget({
      name: 'a spot dragged: what a picture of it costs the page',
      values: busyMs.map(({ taskMs }) => taskMs / pictures),
      most: null,
      note: `scripts ${short(median(busyMs.map(one => one.scriptMs)) / pictures)} ms, styles and layout ${short(median(busyMs.map(one => one.layoutMs)) / pictures)} ms, the rest painting`,
    }),
    budget({
      name: 'a spot dragged: longest task of the page',
      values: [Math.max(0, ...seen.longTaskMs)],
      most: 50,
      note: `${seen.longTaskMs.length} over 50 ms in ${asked} moves`,
    }),
    budget({ name: 'interaction to next paint, presses and keys', values: taps, most: 100, share: 0.75 }),
    {
      ...budget({
        name: 'interaction to next paint, presses and keys',
        values: taps,
        most: 200,
        share: 0.98,
      }),
      median: atShare(taps, 0.5),
    },
  ];
};

/** What is drawn from the hand's place must be what is drawn when that place is kept and read again. */
const checkFigures = async (page: Page, app: RunningApp): Promise<void> => {
  const before = await drawn(page);
  const at = await middleOf(page, 'F3');
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x - 48, at.y + 36, { steps: 4 });
  await page.waitForTimeout(200);
  const held = await drawn(page);
  await page.mouse.up();
  await page.waitForFunction(() => /^Kept/.test(document.querySelector('.kept')?.textContent ?? ''));
  await page.goto(`${app.url}/drills/drill-middle-first`);
  await page.getByText(/^In this rep/).waitFor();
  const again = await drawn(page);
  if (held === before || held !== again)
    throw new Error('the figures shown in the hand are not those of the drill that was kept');
};

/** The routes and marks on the ice, and the times of the rep's events. */
const drawn = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      `${document.querySelector('.drill-drawing')?.innerHTML} ${document.querySelector('.rep-events')?.textContent}`,
  );

/** Interactions as the browser counts them: time from a press or key to the next picture, none reported below 16 ms. */
const tapped = async (page: Page): Promise<number[]> => {
  await page.evaluate(() => {
    const longest = new Map<number, number>();
    Object.assign(window, { longestOf: longest });
    new PerformanceObserver(list => {
      for (const entry of list.getEntries() as PerformanceEventTiming[]) {
        const id = entry.interactionId ?? 0;
        if (id > 0) longest.set(id, Math.max(longest.get(id) ?? 0, entry.duration));
      }
    }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit);
  });
  let made = 0;
  for (let round = 0; round < 3; round++) {
    for (const role of ['F3', 'X1', 'X2']) {
      const at = await middleOf(page, role);
      await page.mouse.click(at.x, at.y);
      await page.getByRole('button', { name: new RegExp(`^${role}, one of`) }).press('ArrowRight');
      await page.keyboard.press('Control+z');
      await page.keyboard.press('Escape');
      made += 4;
    }
    await page.getByRole('button', { name: 'quarter' }).click();
    await page.getByRole('button', { name: 'game speed' }).click();
    made += 2;
  }
  await page.waitForTimeout(300);
  const reported = await page.evaluate(() => [
    ...(window as unknown as { longestOf: Map<number, number> }).longestOf.values(),
  ]);
  const quick = Array.from({ length: Math.max(0, made - reported.length) }, () => 16);
  return [...reported, ...quick];
};
