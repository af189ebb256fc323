import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import type { BenchRow } from '../../cli/bench-row.ts';
import type { RunningApp } from '../../test/browser.ts';
import { withApp, withPage } from './open-app.ts';
import { budget } from './rows.ts';

const ROUNDS = 7;
const MOST_KB = 300;

interface Load {
  readonly usableMs: number;
  /** What was asked before the place was usable, by name, in kilobytes after gzip -9. */
  readonly packedKB: ReadonlyMap<string, number>;
  readonly sentKB: number;
}

/** A browser that was never here: the front door, and a place that an address leads into. */
const bench = (): Promise<BenchRow[]> =>
  withApp(async app => {
    const door: Load[] = [];
    const walk: Load[] = [];
    const place: Load[] = [];
    for (let round = 0; round < ROUNDS; round++) {
      door.push(await loadOf(app, '/', lookRound));
      walk.push(
        await loadOf(app, '/', async page => {
          await lookRound(page);
          await page.getByRole('button', { name: /^Look round/ }).click();
          await listOfGames(page);
        }),
      );
      place.push(await loadOf(app, '/film', listOfGames));
    }
    return [
      sizeRow('first load: front door', door),
      sizeRow('first load: front door, then the first place', walk),
      sizeRow('first load: the first place by its address', place),
      timeRow('first load: front door usable', door),
      timeRow('first load: the first place by its address usable', place),
    ];
  });

export default bench;

const lookRound = (page: Page): Promise<void> => page.getByRole('button', { name: /^Look round/ }).waitFor();
const listOfGames = (page: Page): Promise<void> => page.locator('.games tbody tr').first().waitFor();

const loadOf = (app: RunningApp, path: string, usable: (page: Page) => Promise<void>): Promise<Load> =>
  withPage(app, async page => {
    const answers: Promise<readonly [string, Buffer]>[] = [];
    let isUsable = false;
    page.on('response', response => {
      const { pathname } = new URL(response.url());
      // A film is content, not the app.
      if (isUsable || pathname.startsWith('/film/sampled-')) return;
      answers.push(response.body().then(body => [pathname, body] as const));
    });
    const from = performance.now();
    await page.goto(`${app.url}${path}`, { waitUntil: 'commit' });
    await usable(page);
    const usableMs = performance.now() - from;
    // Fonts are asked for last, when the words they set are there.
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    isUsable = true;
    const bodies = await Promise.all(answers);
    const packedKB = new Map(bodies.map(([name, body]) => [name, packed(body).byteLength / 1000]));
    if (![...packedKB.keys()].some(name => name.endsWith('.js')))
      throw new Error(`no script came with ${path}: what was measured is not the app`);
    return { usableMs, packedKB, sentKB: sum(bodies.map(([, body]) => body.byteLength / 1000)) };
  });

/** Fonts are packed already: gzip would only make them longer. */
const packed = (body: Buffer): Buffer => {
  const zipped = gzipSync(body, { level: 9 });
  return zipped.byteLength < body.byteLength ? zipped : body;
};

const sizeRow = (name: string, loads: readonly Load[]): BenchRow => {
  const biggest = [...loads[0]!.packedKB].sort(([, one], [, other]) => other - one).slice(0, 6);
  return budget({
    name,
    values: loads.map(({ packedKB }) => sum([...packedKB.values()])),
    most: MOST_KB,
    unit: 'KB gzip',
    note: `${loads[0]!.packedKB.size} files, ${Math.round(loads[0]!.sentKB)} KB unpacked; ${biggest.map(([file, kb]) => `${file.split('/').pop()} ${kb.toFixed(0)}`).join(', ')}`,
  });
};

const timeRow = (name: string, loads: readonly Load[]): BenchRow =>
  budget({ name, values: loads.map(({ usableMs }) => usableMs), most: 2000 });

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
