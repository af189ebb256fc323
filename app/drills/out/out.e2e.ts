import { readFileSync } from 'node:fs';
import { importDrills } from '@icewright/book';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import { pdfWords } from '../../../test/pdf-words.ts';
import { shot, withPage } from '../../../test/with-page.ts';

const app = appOfFile({ holdsReps: true });

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const tight = (words: string) => words.replace(/\s+/g, '');

async function openPanel(page: Page, drill = 'drill-middle-first'): Promise<void> {
  await page.goto(`${app.url}/drills/${drill}`);
  await press(page, 'Hand out').press('Enter');
  await press(page, 'Drill file (JSON)').waitFor();
}

/** Where the file lies that this act saves, and its name. */
async function saved(page: Page, name: string): Promise<{ path: string; fileName: string; bytes: Buffer }> {
  const download = page.waitForEvent('download', { timeout: 60_000 });
  await press(page, name).press('Enter');
  const file = await download;
  const path = await file.path();
  return { path, fileName: file.suggestedFilename(), bytes: readFileSync(path) };
}

/** A page beside the app that counts what it asks of anybody. */
async function aloneIn(page: Page, html: string, type: string, work: (alone: Page) => Promise<void>) {
  const alone = await page.context().newPage();
  const asked: string[] = [];
  alone.on('request', request => asked.push(request.url()));
  await alone.route('http://alone.example/file', route => route.fulfill({ body: html, contentType: type }));
  await alone.goto('http://alone.example/file');
  await work(alone);
  expect(asked.filter(url => !url.startsWith('data:'))).toEqual(['http://alone.example/file']);
  await alone.close();
}

describe('handing out', () => {
  for (const [width, height] of [
    [1440, 900],
    [1024, 768],
    [390, 844],
  ] as const)
    it(`opens by key, is clean and inside the window at ${width}, and closes by Escape`, () =>
      withPage(
        app,
        `hand out ${width}`,
        async page => {
          await openPanel(page);
          await page.getByText(/frames a second|cannot write films/).waitFor();
          expect(await seriousViolations(page)).toEqual([]);
          expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
          await shot(page, `hand out ${width}`);
          await press(page, 'Drill file (JSON)').press('Escape');
          await press(page, 'Drill file (JSON)').waitFor({ state: 'detached' });
        },
        { size: { width, height }, touch: width < 500 },
      ));

  it('SVG: stands alone with its own letters', () =>
    withPage(app, 'svg', async page => {
      await openPanel(page);
      const { fileName, bytes } = await saved(page, 'Sharp at any size (SVG)');
      expect(fileName).toBe('Middle first.svg');
      const text = bytes.toString('utf8');
      expect(text).not.toMatch(/(href|src)="|url\((?!data:font|#)/);
      await aloneIn(page, text, 'image/svg+xml', async alone => {
        const look = () =>
          alone.evaluate(async () => {
            await document.fonts.ready;
            const title = [...document.querySelectorAll('text')].find(
              each => each.textContent === 'Middle first',
            );
            return {
              loaded: [...document.fonts].filter(font => font.status === 'loaded').map(font => font.family),
              titleWidth: (title as SVGTextElement).getComputedTextLength(),
            };
          });
        const { loaded, titleWidth } = await look();
        expect(loaded.join()).toMatch(/Encode Sans/);
        expect(loaded.join()).toMatch(/Newsreader/);
        // Without our letters the same words are another width: it was not the fallback that was seen.
        await alone.evaluate(() => document.querySelector('style')?.remove());
        expect(Math.abs((await look()).titleWidth - titleWidth)).toBeGreaterThan(2);
      });
    }));

  it('PNG: two dots to each px, looking as the SVG does', () =>
    withPage(app, 'png', async page => {
      await openPanel(page);
      const svg = (await saved(page, 'Sharp at any size (SVG)')).bytes.toString('utf8');
      const png = (await saved(page, 'Picture (PNG)')).bytes;
      expect(png.readUInt32BE(16)).toBe(2400);
      const height = png.readUInt32BE(20);
      const context = await page
        .context()
        .browser()!
        .newContext({
          viewport: { width: 1200, height: height / 2 },
          deviceScaleFactor: 2,
        });
      const other = await context.newPage();
      await other.setContent(`<style>body{margin:0}</style>${svg}`);
      await other.evaluate(() => document.fonts.ready);
      const drawn = await other.screenshot();
      const { differing, dark } = await other.evaluate(
        differenceOf,
        [png, drawn].map(each => each.toString('base64')),
      );
      expect(dark).toBeGreaterThan(0.01);
      expect(differing).toBeLessThan(0.005);
      await context.close();
    }));

  it('PDF: one drill, or a booklet with others, on the paper that was chosen', () =>
    withPage(app, 'pdf', async page => {
      await openPanel(page);
      const one = (await saved(page, 'Page to print (PDF)')).bytes;
      expect(one.toString('latin1').match(/\/Type \/Page\b/g)).toHaveLength(1);
      expect(tight(pdfWords(one))).toContain(tight('Level before our blue line'));
      // What is to be known of the block stands on paper too.
      expect(tight(pdfWords(one))).toContain(tight('skaters move at once'));
      await press(page, 'With others').press('Enter');
      await press(page, 'Gap ladder').press('Enter');
      await press(page, 'Four corners').press('Enter');
      await page.getByLabel('paper').selectOption('letter');
      const { fileName, bytes } = await saved(page, 'Booklet to print (PDF)');
      expect(fileName).toBe('Middle first and 2 others.pdf');
      const text = bytes.toString('latin1');
      expect(text.match(/\/Type \/Page\b/g)).toHaveLength(3);
      expect(text).toMatch(/\/MediaBox \[0 0 612 792\]/);
      expect(text).not.toMatch(/\/Subtype \/Image/);
      const said = tight(pdfWords(bytes));
      for (const words of ['Gap ladder', 'Four corners', '2 of 3', 'Before the first'])
        expect(said).toContain(tight(words));
    }));

  it('the keys of the browser print the page of the drill, not the workbench round it', () =>
    withPage(app, 'printed', async page => {
      await page.goto(`${app.url}/drills/drill-middle-first`);
      await page.getByRole('button', { name: 'Hand out' }).waitFor();
      const bytes = await page.pdf({ preferCSSPageSize: true });
      expect(bytes.toString('latin1').match(/\/Type \/Page\b/g)).toHaveLength(1);
      await shotOfPrint(page);
    }));

  it('one page: opens anywhere, asks nobody for anything, runs no script', () =>
    withPage(app, 'one page', async page => {
      await openPanel(page);
      const { fileName, bytes } = await saved(page, 'One page (HTML)');
      expect(fileName).toBe('Middle first.html');
      const html = bytes.toString('utf8');
      expect(html).not.toMatch(/<script|Lanterns/);
      await aloneIn(page, html, 'text/html', async alone => {
        await alone.getByRole('heading', { name: 'Middle first' }).waitFor();
        await alone.getByText('Level before our blue line').waitFor();
        await alone.getByText('No shot until the goalie looks at you.').waitFor();
        expect((await alone.getByRole('img').boundingBox())!.width).toBeGreaterThan(600);
      });
    }));
});

describe('a drill file', () => {
  it('goes out with several drills and without the team, and its schema can be read', () =>
    withPage(app, 'drill file', async page => {
      await openPanel(page);
      await press(page, 'With others').press('Enter');
      await press(page, 'Gap ladder').press('Enter');
      const { fileName, bytes } = await saved(page, 'Drill file (JSON)');
      expect(fileName).toBe('Middle first and 1 other.icewright-drill.json');
      const imported = importDrills(bytes.toString('utf8'), { habits: {}, madeAt: '2026-11-28T12:00:00Z' });
      if (imported.kind === 'refused') throw new Error(`${imported.path}: ${imported.said}`);
      expect(imported.drills.map(({ value }) => value.title)).toEqual(['Middle first', 'Gap ladder']);
      expect(imported.drills[0]!.otherHabits).toContain('First forward back takes the middle');
      expect(bytes.toString('utf8')).not.toMatch(/Lantern|game-hunt|drill-middle/);
      const address = await page.getByRole('link', { name: 'What its fields mean' }).getAttribute('href');
      const schema = await (await fetch(app.url + address)).json();
      expect(schema).toEqual(JSON.parse(readFileSync('docs/drill-file.schema.json', 'utf8')));
    }));

  it('comes in by choosing: the drills are there, opened and computed as at home', () =>
    withPage(app, 'take in', async page => {
      await openPanel(page, 'drill-off-the-boards');
      const { bytes } = await saved(page, 'Drill file (JSON)');
      const text = bytes.toString('utf8').replace('"Off the boards"', '"Off the boards, theirs"');
      await page.goto(`${app.url}/drills`);
      await page.locator('.postcard').first().waitFor();
      const before = await page.locator('.postcard').count();
      await page
        .getByLabel('A drill file')
        .setInputFiles({ name: 'theirs.json', mimeType: 'application/json', buffer: Buffer.from(text) });
      await page.getByRole('status').getByText('1 drill taken in').waitFor();
      await expect.poll(() => page.locator('.postcard').count()).toBe(before + 1);
      expect(await seriousViolations(page)).toEqual([]);
      const again = text.replace(/"minutes": \d+/, '"minutes": 59');
      for (const [said, file] of [
        ['1 drill already here, unchanged: Off the boards, theirs', text],
        ['beside yours of that title, which differs in minutes', again],
      ] as const) {
        await page
          .getByLabel('A drill file')
          .setInputFiles({ name: 'again.json', mimeType: 'application/json', buffer: Buffer.from(file) });
        await expect.poll(() => page.locator('.take-in').textContent()).toContain(said);
      }
      await page.locator('.take-in').getByRole('link', { name: 'yours of that title' }).click();
      await page.getByText(/^In this rep/).waitFor();
      await press(page, 'Hand out').click();
      expect((await saved(page, 'Drill file (JSON)')).bytes.toString('utf8')).toBe(text);
    }));

  it('comes in by dropping', () =>
    withPage(app, 'drop', async page => {
      await openPanel(page, 'drill-gap-ladder');
      const text = (await saved(page, 'Drill file (JSON)')).bytes
        .toString('utf8')
        .replace('"Gap ladder"', '"Dropped ladder"');
      await page.goto(`${app.url}/drills`);
      await page.locator('.postcard').first().waitFor();
      const transfer = await page.evaluateHandle(words => {
        const data = new DataTransfer();
        data.items.add(new File([words], 'dropped.json', { type: 'application/json' }));
        return data;
      }, text);
      await page.dispatchEvent('.drop-drills', 'drop', { dataTransfer: transfer });
      await page.getByRole('status').getByText('1 drill taken in').waitFor();
      await page.locator('.postcard-title', { hasText: 'Dropped ladder' }).waitFor();
    }));

  it('that is bad is refused with the place and the reason, and nothing is changed', () =>
    withPage(app, 'bad file', async page => {
      await openPanel(page);
      const file = JSON.parse((await saved(page, 'Drill file (JSON)')).bytes.toString('utf8'));
      file.drills[0].spots['spot-f3'].atM.xM = 400;
      await page.goto(`${app.url}/drills`);
      await page.locator('.postcard').first().waitFor();
      const before = await page.locator('.postcard').count();
      const give = (name: string, text: string) =>
        page
          .getByLabel('A drill file')
          .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
      await give('far.json', JSON.stringify(file));
      const alert = page.getByRole('alert').filter({ hasText: 'far.json' });
      await alert.waitFor();
      expect(await alert.textContent()).toContain(
        'far.json: F3: place along the sheet, in metres, in “Middle first”: at most 100 is possible, and 400 stands there (drills.0.spots.spot-f3.atM.xM). Nothing was changed.',
      );
      expect(await seriousViolations(page)).toEqual([]);
      await give('photo.json', '\u0000\u0001');
      await page.getByRole('alert').filter({ hasText: 'photo.json: this file is not JSON' }).waitFor();
      expect(await page.locator('.postcard').count()).toBe(before);
    }));
});

describe('a link for a player', () => {
  it('shows the drill and its rep on a phone, asks for nothing else, and ends when it is taken back', () =>
    withPage(app, 'link', async page => {
      await openPanel(page);
      await press(page, 'Make a link').press('Enter');
      const address = (await page.locator('.out-address').first().textContent()) ?? '';
      expect(address).toMatch(/\/handout\/[A-Za-z0-9_-]{22}$/);
      const { page: player, context } = await app.newPage({ width: 390, height: 844 }, true, true);
      const asked: string[] = [];
      player.on('request', request => asked.push(new URL(request.url()).pathname));
      player.on('websocket', socket => asked.push(`socket ${socket.url()}`));
      await player.goto(address);
      await player.getByRole('heading', { name: 'Middle first' }).waitFor();
      await player.getByText('Level before our blue line').waitFor();
      const key = player.getByRole('region', { name: 'What the marks mean' });
      expect(await key.locator('li > span').allTextContents()).toEqual(
        expect.arrayContaining(['skating', 'with puck', 'whistle', 'shot', 'goalie', 'us', 'them']),
      );
      await key.scrollIntoViewIfNeeded();
      await shot(player, 'player key');
      await player.getByRole('button', { name: 'Run' }).click();
      await expect.poll(async () => player.locator('.player-moving circle').count()).toBeGreaterThan(0);
      expect(await player.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
      expect(await player.locator('body').textContent()).not.toContain('Lanterns');
      expect(await seriousViolations(player)).toEqual([]);
      const token = address.split('/').at(-1);
      const others = asked.filter(path => !/^\/assets\/|^\/icewright\.svg$/.test(path));
      expect(others).toEqual([`/handout/${token}`, `/handout/${token}/drill.json`]);
      const kept = await player.evaluate(async () => [
        ...(await indexedDB.databases()).map(({ name }) => name),
        ...(await navigator.serviceWorker.getRegistrations()).map(({ scope }) => scope),
      ]);
      expect(kept).toEqual([]);
      await press(page, 'Take back').first().press('Enter');
      await page.locator('.out-address').first().waitFor({ state: 'detached' });
      await player.reload();
      await player.getByRole('alert').getByText('This link shows nothing').waitFor();
      await context.close();
    }));
});

describe('its page', () => {
  it('says the team where the coach chose so', () =>
    withPage(app, 'named link', async page => {
      await openPanel(page);
      await press(page, 'With the team’s name').press('Enter');
      await press(page, 'Make a link').press('Enter');
      await page.goto((await page.locator('.out-address').first().textContent()) ?? '');
      await page.getByText('Tern Harbour Lanterns').waitFor();
    }));
});

/** Shares of the pixels of two pictures that differ visibly, and that are dark. Runs in the page. */
async function differenceOf(pictures: string[]): Promise<{ differing: number; dark: number }> {
  const all = await Promise.all(
    pictures.map(async base64 => {
      const image = new Image();
      image.src = `data:image/png;base64,${base64}`;
      await image.decode();
      const canvas = document.createElement('canvas');
      canvas.width = image.naturalWidth;
      canvas.height = image.naturalHeight;
      const context = canvas.getContext('2d')!;
      context.drawImage(image, 0, 0);
      return context.getImageData(0, 0, canvas.width, canvas.height).data;
    }),
  );
  const [a, b] = all as [Uint8ClampedArray, Uint8ClampedArray];
  if (a.length !== b.length) return { differing: 1, dark: 0 };
  let [differing, dark] = [0, 0];
  for (let at = 0; at < a.length; at += 4) {
    if (Math.abs(a[at]! - b[at]!) > 64) differing += 1;
    if (a[at]! < 64) dark += 1;
  }
  return { differing: (4 * differing) / a.length, dark: (4 * dark) / a.length };
}

/** What stands on the page while it is printed. */
async function shotOfPrint(page: Page): Promise<void> {
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  const paper = page.getByRole('img', { name: 'Middle first, as it is printed' });
  const words = (await paper.textContent()) ?? '';
  for (const said of ['Level before our blue line', 'Findings, an estimate', 'The rep over time'])
    expect(words).toContain(said);
  for (const name of ['Hand out', 'Put in a practice', 'Paste'])
    expect(await page.getByRole('button', { name }).count()).toBe(0);
  await shot(page, 'drill printed');
}
