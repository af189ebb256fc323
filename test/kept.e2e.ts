import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startServer } from '@icewright/server';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { appOfFile } from './app-of-file.ts';
import { onDisc } from './on-disc.ts';
import { startOwnBrowser } from './own-browser.ts';
import { pdfWords } from './pdf-words.ts';
import { withPage } from './with-page.ts';

const app = appOfFile({ holdsReps: true });

/** A field of each kind of document; the habit lies in the team's. */
const FIELDS = {
  practice: {
    path: '/practices/practice-1',
    document: 'practice-1',
    field: (page: Page) => page.getByLabel('Today, in one sentence'),
  },
  drill: {
    path: '/drills/drill-middle-first',
    document: 'drill-middle-first',
    field: (page: Page) => page.getByLabel('Title of the drill'),
  },
  habit: {
    path: '/habits/gap',
    document: 'team-lanterns',
    field: (page: Page) => page.getByLabel('In a few words', { exact: true }),
  },
} as const;

/** The worker takes a page over from the next load on. */
async function withWorker(page: Page, url: string, there: Locator): Promise<void> {
  await page.goto(url);
  await there.waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await there.waitFor();
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
}

/** Types one more word, so that it cannot be there already; gives the words and when the last letter was struck. */
async function writeOn(field: Locator, word: string): Promise<{ words: string; struckAtMs: number }> {
  await field.waitFor();
  const words = `${(await field.inputValue()).slice(0, 60)} ${word}`.trim();
  await field.fill(words);
  return { words, struckAtMs: Date.now() };
}

describe('a change is on the disc of the server within a second', () => {
  for (const [kind, { path, document, field }] of Object.entries(FIELDS))
    it(kind, () =>
      withPage(app, `kept ${kind}`, async page => {
        await page.goto(`${app.url}${path}`);
        const { words, struckAtMs } = await writeOn(field(page), 'kept');
        const found = () => onDisc(app.dataFolder, document);
        await expect.poll(() => JSON.stringify(found().value), { timeout: 10_000 }).toContain(words);
        expect(found().lastChangeAtMs - struckAtMs).toBeLessThan(1000);
        // And somebody who has nothing of it gets it from there.
        await withPage(app, `kept ${kind}, fresh`, async fresh => {
          await fresh.goto(`${app.url}${path}`);
          await expect.poll(() => field(fresh).inputValue()).toBe(words);
        });
      }),
    );
});

describe('two windows on one thing see each other', () => {
  for (const [kind, { path, field }] of Object.entries(FIELDS))
    it(kind, () =>
      withPage(app, `${kind}, here`, here =>
        withPage(app, `${kind}, there`, async there => {
          for (const page of [here, there]) {
            await page.goto(`${app.url}${path}`);
            await field(page).waitFor();
          }
          for (const [from, to, word] of [
            [here, there, 'hither'],
            [there, here, 'thither'],
          ] as const) {
            const { words } = await writeOn(field(from), word);
            await expect.poll(() => field(to).inputValue()).toBe(words);
          }
          if (kind === 'drill') await undoneAfterReload(here, there, field);
        }),
      ),
    );

  /** Her own steps live through a reload, and the other's change in between is left. */
  async function undoneAfterReload(here: Page, there: Page, field: (page: Page) => Locator): Promise<void> {
    const act = (name: string) => here.getByRole('button', { name: new RegExp(`^${name}`) });
    const press = async (name: string) => {
      // The steps are read from the store after the document.
      await expect.poll(() => act(name).getAttribute('aria-disabled')).not.toBe('true');
      await act(name).click();
    };
    const before = await field(here).inputValue();
    await here.waitForTimeout(350);
    const { words } = await writeOn(field(here), 'thrice');
    await expect.poll(() => field(there).inputValue()).toBe(words);
    await field(here).blur();
    await here.waitForTimeout(WRITTEN_MS);
    await here.reload();
    await expect.poll(() => field(here).inputValue()).toBe(words);
    expect(await act('Redo').getAttribute('aria-disabled')).toBe('true');
    await press('Undo');
    await expect.poll(() => field(there).inputValue()).toBe(before);
    await here.waitForTimeout(WRITTEN_MS);
    await here.reload();
    await field(here).waitFor();
    await press('Redo');
    await expect.poll(() => field(there).inputValue()).toBe(words);
    // The undo above is hers; what the other writes now is not.
    const { words: theirs } = await writeOn(field(there), 'theirs');
    await expect.poll(() => field(here).inputValue()).toBe(theirs);
    await here.reload();
    await field(here).waitFor();
    await press('Undo');
    await expect.poll(() => field(there).inputValue()).toContain('theirs');
    expect(await field(here).inputValue()).toContain('theirs');
  }
});

/** Steps are written down a quarter of a second after the change; a busy machine takes longer over it. */
const WRITTEN_MS = 1000;

/** The page keeps the app for a day without network; what it may then say in the console, and nothing else. */
const OFFLINE = {
  keepsForOffline: true,
  saysToo: /ERR_INTERNET_DISCONNECTED|WebSocket connection|ERR_CONNECTION_REFUSED/,
};

describe('without network', () => {
  it('what was open opens again, and what is changed then arrives later', () =>
    withPage(
      app,
      'offline',
      async (page, context) => {
        const game = page.getByRole('heading', { level: 1, name: /Quillback Bay/ });
        const pages = [
          ...Object.values(FIELDS).map(({ path, field }) => [path, field(page)] as const),
          ['/film/game-hunt', game] as const,
        ];
        const [[first, firstThere], ...others] = pages as [(typeof pages)[number], ...typeof pages];
        await withWorker(page, `${app.url}${first}`, firstThere);
        // It has the page from here on, wherever that goes.
        for (const [path, there] of others) {
          await page.goto(`${app.url}${path}`);
          await there.waitFor();
        }
        await page.getByTestId('picture').waitFor();
        await context.setOffline(true);
        const written = new Map<string, string>();
        for (const [kind, { path, field }] of Object.entries(FIELDS)) {
          await page.goto(`${app.url}${path}`);
          await page.getByText(/^Offline/).waitFor();
          const { words } = await writeOn(field(page), 'offline');
          await page.getByText('Offline, kept on this machine').waitFor();
          written.set(kind, words);
          await page.reload();
          await expect.poll(() => field(page).inputValue()).toBe(words);
        }
        await page.goto(`${app.url}/film/game-hunt`);
        await game.waitFor();
        await page.getByText('This browser has no way to the film now: open its file again.').waitFor();
        await page.reload();
        await game.waitFor();
        // A rink often has no network: the card is printed there all the same.
        await page.goto(`${app.url}${FIELDS.practice.path}/card`);
        const coming = page.waitForEvent('download');
        await page.getByRole('button', { name: 'Download the PDF' }).click();
        const card = pdfWords(readFileSync(await (await coming).path()));
        expect(card.replace(/\s+/g, ' ')).toContain('No shot until the goalie looks at you.');
        await context.setOffline(false);
        for (const { path, field } of Object.values(FIELDS)) {
          await page.goto(`${app.url}${path}`);
          await field(page).waitFor();
        }
        await withPage(app, 'after offline', async fresh => {
          for (const [kind, { path, field }] of Object.entries(FIELDS)) {
            await fresh.goto(`${app.url}${path}`);
            await expect.poll(() => field(fresh).inputValue(), { timeout: 20_000 }).toBe(written.get(kind));
          }
        });
      },
      OFFLINE,
    ));

  it('two who change one drill meanwhile lose nothing, and see the same', () =>
    withPage(
      app,
      'apart, here',
      (here, hereContext) =>
        withPage(
          app,
          'apart, there',
          async (there, thereContext) => {
            const { path, field } = FIELDS.drill;
            const spot = (page: Page) => page.getByRole('button', { name: /^F3, one of/ });
            const place = (page: Page) => spot(page).getAttribute('transform');
            for (const page of [here, there]) await withWorker(page, `${app.url}${path}`, spot(page));
            const before = await place(here);
            await hereContext.setOffline(true);
            await thereContext.setOffline(true);
            const { words } = await writeOn(field(here), 'apart');
            await spot(there).press('Shift+ArrowUp');
            const moved = await place(there);
            expect(moved).not.toBe(before);
            await hereContext.setOffline(false);
            await thereContext.setOffline(false);
            for (const page of [here, there]) {
              await expect.poll(() => field(page).inputValue(), { timeout: 20_000 }).toBe(words);
              await expect.poll(() => place(page), { timeout: 20_000 }).toBe(moved);
            }
          },
          OFFLINE,
        ),
      OFFLINE,
    ));
});

describe('a browser that is killed', () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'icewright-killed-'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('has what was changed a second before, though the server was not there to take it', async () => {
    const [dataFolder, profile] = [join(folder, 'data'), join(folder, 'profile')];
    const { path, field, document } = FIELDS.practice;
    const first = await startServer({ dataFolder, port: 0 });
    const url = `http://localhost:${first.port}${path}`;
    let browser = await startOwnBrowser(profile);
    await withWorker(browser.page, url, field(browser.page));
    await first.close();
    await browser.page.getByText(/^Offline/).waitFor();
    const { words } = await writeOn(field(browser.page), 'killed');
    await browser.page.waitForTimeout(1000);
    await browser.kill();

    browser = await startOwnBrowser(profile);
    await browser.page.goto(url);
    await expect.poll(() => field(browser.page).inputValue(), { timeout: 20_000 }).toBe(words);
    expect(JSON.stringify(onDisc(dataFolder, document).value)).not.toContain(words);
    // Her undo lived as well.
    await browser.page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(() => field(browser.page).inputValue()).not.toContain('killed');
    await browser.page.getByRole('button', { name: 'Redo', exact: true }).click();
    await expect.poll(() => field(browser.page).inputValue()).toBe(words);

    const second = await startServer({ dataFolder, port: first.port });
    await expect
      .poll(() => JSON.stringify(onDisc(dataFolder, document).value), { timeout: 30_000 })
      .toContain(words);
    await browser.kill();
    await second.close();
  });
});
