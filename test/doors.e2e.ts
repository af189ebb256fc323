import { readFileSync } from 'node:fs';
import { rootOf } from '@icewright/book';
import { startServer } from '@icewright/server';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { documentStoreOn } from '../server/store/document-store.ts';
import { openDatabase } from '../server/store/open-database.ts';
import { appOfFile } from './app-of-file.ts';
import { brokenPath } from './film-page.ts';
import { allOnDisc } from './on-disc.ts';
import { withPage } from './with-page.ts';

/** Documents of the demo that a newer Icewright has written since. */
const NEWER = [
  ['/drills/drill-four-corners', 'drill-four-corners', 'This drill cannot be read by this Icewright.'],
  ['/practices/practice-2', 'practice-2', 'This practice cannot be read by this Icewright.'],
  ['/film/game-join', 'game-join', 'This game cannot be read here.'],
] as const;

const FILE = '/api/teams/team-lanterns/file';

/** The demo team as a file, from before. */
let whole: string;
const app = appOfFile({
  prepare: async dataFolder => {
    const server = await startServer({ dataFolder, port: 0 });
    whole = await (await fetch(`http://localhost:${server.port}${FILE}`)).text();
    await server.close();
    const db = openDatabase(dataFolder);
    const store = documentStoreOn(db);
    for (const [, id] of NEWER) {
      const ydoc = store.load(id);
      const kind = rootOf(ydoc).get('kind') as 'drill';
      ydoc.once('update', (update: Uint8Array) => store.append(id, kind, update));
      rootOf(ydoc).set('schema', 99);
    }
    db.close();
  },
});

/** Does the work and sees that all that is kept is as it was. */
async function changingNothing(work: () => Promise<void>): Promise<void> {
  const before = allOnDisc(app.dataFolder);
  expect(Object.keys(before).length).toBeGreaterThan(10);
  await work();
  expect(allOnDisc(app.dataFolder)).toEqual(before);
}

/** One sentence to the point, and the assurance once. */
async function refusalOf(page: Page, fileName: string): Promise<string> {
  const alert = page.getByRole('alert').filter({ hasText: fileName });
  await alert.waitFor();
  const said = (await alert.textContent()) ?? '';
  expect(said.match(/Nothing (here )?was changed\./g), said).toHaveLength(1);
  return said;
}

describe('documents of a newer Icewright', () => {
  for (const [path, , says] of NEWER)
    it(`${path} says so and stays as it is`, () =>
      withPage(app, `newer ${path}`, page =>
        changingNothing(async () => {
          await page.goto(`${app.url}${path}`);
          await page.getByText(says).waitFor();
          await page.getByText(/Nothing (in it )?was changed\./).waitFor();
        }),
      ));

  it('do not keep the others from being seen', () =>
    withPage(app, 'newer, lists', page =>
      changingNothing(async () => {
        for (const [path, there] of [
          ['/drills', '.postcard'],
          ['/practices', '.practice-title'],
          ['/film', '.games tbody tr'],
          ['/ledger', '.ledger-line'],
        ] as const) {
          await page.goto(`${app.url}${path}`);
          await page.locator(there).first().waitFor();
          if (path === '/drills') await page.getByText(/^1 drill cannot be read/).waitFor();
        }
        await page.getByText(/3 documents could not be read and are not counted\./).waitFor();
      }),
    ));
});

describe('films', () => {
  const wanted = JSON.parse(readFileSync(brokenPath('expected.json'), 'utf8')) as Record<
    string,
    { readonly expect: string }
  >;
  const none = Object.keys(wanted).filter(name => wanted[name]!.expect.startsWith('refuse'));

  it.each(['/film', '/film/game-hunt'])('that are none are refused when they are dropped on %s', path =>
    withPage(app, `dropped on ${path}`, page =>
      changingNothing(async () => {
        await page.goto(`${app.url}${path}`);
        await page.locator('.games tbody tr, .moments tbody tr').first().waitFor();
        for (const name of none) {
          await drop(page, name, readFileSync(brokenPath(name)));
          const said = await refusalOf(page, name);
          expect(said.length, said).toBeLessThan(320);
        }
      }),
    ),
  );
});

describe('rosters', () => {
  const files = {
    'columns.csv': [Buffer.from('shirt,who\n9,Somebody'), /column "number" is missing/],
    'empty.csv': [Buffer.from(''), /\S/],
    'position.csv': [Buffer.from('number,name,position\n9,Somebody,Q'), /line 2.*position|position.*line 2/i],
    'number.csv': [Buffer.from('number,name,position\nnine,Somebody,F'), /line 2.*number|number.*line 2/i],
    'photo.csv': [readFileSync(brokenPath('photo.mp4')), /not a CSV file/],
  } as const;
  it('that do not fit are refused, each with what is wrong and where', () =>
    withPage(app, 'rosters', page =>
      changingNothing(async () => {
        await page.goto(`${app.url}/team`);
        await page.getByRole('button', { name: 'Roster from a file' }).click();
        for (const [name, [buffer, says]] of Object.entries(files)) {
          await page.getByLabel('A roster file').setInputFiles({ name, mimeType: 'text/csv', buffer });
          expect(await refusalOf(page, name)).toMatch(says);
        }
      }),
    ));
});

describe('team files', () => {
  it('are not written of half a team: one sentence says which document is in the way', async () => {
    const answer = await fetch(`${app.url}${FILE}`);
    expect(answer.status).toBe(409);
    const { sentence } = (await answer.json()) as { readonly sentence: string };
    expect(sentence).toMatch(
      /^“.+” was written by a newer Icewright; a file without it would be half a team\.$/,
    );
  });

  it('that are newer, cut off or of something else are refused, and one that brings nothing says so', () =>
    withPage(
      app,
      'team files',
      page =>
        changingNothing(async () => {
          await page.goto(`${app.url}/habits`);
          await page.getByRole('button', { name: 'Settings' }).click();
          const newer = JSON.stringify({ ...(JSON.parse(whole) as object), version: 99 });
          for (const [name, text, says] of [
            ['newer.json', newer, /made by a newer Icewright \(version 99/],
            ['cut.json', whole.slice(0, whole.length / 2), /not JSON, or it is cut off/],
            ['other.json', '{"format":"something else"}', /not a team file of Icewright/],
          ] as const) {
            const file = { name, mimeType: 'application/json', buffer: Buffer.from(text) };
            await page.getByLabel('A team file').setInputFiles(file);
            expect(await refusalOf(page, name)).toMatch(says);
          }
          const here = { name: 'here.json', mimeType: 'application/json', buffer: Buffer.from(whole) };
          await page.getByLabel('A team file').setInputFiles(here);
          await page.getByText(/“Tern Harbour Lanterns” is here, .* there is nothing to take in/).waitFor();
        }),
      { saysToo: /status of 4\d\d/ },
    ));
});

it('a value out of its range is refused with what is allowed, and the last good one stays', () =>
  withPage(app, 'value', page =>
    changingNothing(async () => {
      await page.goto(`${app.url}/practices/practice-1`);
      const minutes = page.getByRole('spinbutton', { name: 'Minutes', exact: true });
      const before = await minutes.inputValue();
      await minutes.fill('500');
      await page.getByRole('alert').getByText('From 1 to 120.').waitFor();
      await minutes.blur();
      await expect.poll(() => minutes.inputValue()).toBe(before);
      await page.getByRole('alert').getByText('500 is not kept: 1 to 120.').waitFor();
    }),
  ));

const drop = (page: Page, name: string, bytes: Buffer): Promise<void> =>
  page.locator('.drop-zone').evaluate(
    (zone, { name, base64 }) => {
      const bytes = Uint8Array.from(atob(base64), letter => letter.charCodeAt(0));
      const transfer = new DataTransfer();
      transfer.items.add(new File([bytes], name));
      for (const kind of ['dragover', 'drop'])
        zone.dispatchEvent(new DragEvent(kind, { dataTransfer: transfer, bubbles: true, cancelable: true }));
    },
    { name, base64: bytes.toString('base64') },
  );
