import { readFileSync, writeFileSync } from 'node:fs';
import { ALL_FORMATS, BufferSource, Input } from 'mediabunny';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from '../../test/app-of-file.ts';
import { seriousViolations } from '../../test/axe.ts';
import { burnedCounter, clickFilm, filmPath, shownFrame, toFilm } from '../../test/film-page.ts';
import { pdfWords } from '../../test/pdf-words.ts';
import { greyAt, hasReelTools } from '../../test/read-reel.ts';
import { withPage } from '../../test/with-page.ts';

const app = appOfFile();

const lines = (page: Page) => page.locator('.item-says').allTextContents();

it(
  'a meeting is made of moments, put in order, and run in two windows by the keys of a clicker',
  {
    timeout: 90_000,
  },
  () =>
    withPage(app, 'meeting', async (page, context) => {
      await toFilm(page, app.url);
      await page.getByRole('button', { name: 'Plan a meeting' }).click();
      await page.getByRole('button', { name: /^Ten minutes/ }).click();
      await page.getByRole('button', { name: 'Put moments in' }).last().click();
      // The newest game: its film carries the number of each frame in the picture (fixtures/film-truth).
      await page.getByRole('button', { name: /0:06\.0.*started with the first pass/ }).click();
      await page.getByRole('button', { name: /0:12\.8.*looks at the goalie/ }).click();
      // Those that are in it already have a sign; each has its picture.
      await expect.poll(() => page.locator('.choice-row.is-in .in-it').count()).toBe(2);
      await page.locator('.choice-row .still canvas[data-frame="770"]').waitFor();
      await page.getByRole('button', { name: 'Close', exact: true }).click();
      await page.getByLabel('What is said').fill('Eyes up');
      const first = (await lines(page))[0]!;
      expect(await lines(page)).toEqual([first, 'Eyes up']);
      // 7 s of film and half a minute of talk each.
      await expect
        .poll(() => page.getByRole('status').filter({ hasText: 'of 10 min' }).textContent())
        .toMatch(/1 min 14 s.*8 min 46 s left/);
      // What is hidden says so, and takes no time.
      const isShown = page.getByLabel(/^In the meeting/);
      await isShown.uncheck();
      await page.getByText('hidden, takes no time').waitFor();
      await expect
        .poll(() => page.getByRole('status').filter({ hasText: 'of 10 min' }).textContent())
        .toMatch(/37 s/);
      await isShown.check();
      await page.locator('.item-head').nth(1).focus();
      await page.keyboard.press('Alt+ArrowUp');
      await expect.poll(() => lines(page)).toEqual(['Eyes up', first]);
      await page.getByRole('button', { name: 'Undo', exact: true }).click();
      await expect.poll(() => lines(page)).toEqual([first, 'Eyes up']);
      await page.getByRole('button', { name: 'Redo', exact: true }).click();
      await expect.poll(() => lines(page)).toEqual(['Eyes up', first]);

      await page.getByRole('link', { name: 'Sheet' }).click();
      // Of the two one has no freeze: its picture is shown instead.
      await expect.poll(() => page.locator('.card-paper image').count()).toBe(1);
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Download the PDF' }).click(),
      ]);
      const pdf = readFileSync(await download.path());
      expect(pdf.toString('latin1').match(/\/Subtype \/Image/g)).toHaveLength(1);
      const words = pdfWords(pdf).replace(/\s+/g, '');
      for (const said of ['Eyesup', first.replace(/\s+/g, ''), 'Notes']) expect(words).toContain(said);
      await page.getByRole('button', { name: 'With the speaker’s notes' }).click();
      await page.goBack();

      await page.getByRole('link', { name: 'Run the meeting' }).click();
      const [team] = await Promise.all([
        context.waitForEvent('page'),
        page.getByRole('button', { name: /team’s window/ }).click(),
      ]);
      await page.getByText('The other window shows the picture.').waitFor();
      // 4 s before the moment's picture, 59.94 frames a second.
      await shownFrame(team, 530);
      expect(await team.locator('.stage-line').textContent()).toBe('Eyes up');
      await page.keyboard.press('PageDown');
      // Loaded again while the film runs: it runs on where the team sees it, without another press.
      const teamS = () =>
        team.locator('.picture video').evaluate((video: HTMLVideoElement) => video.currentTime);
      await expect.poll(teamS).toBeGreaterThan(530 / 59.94 + 0.5);
      await page.reload();
      await shownFrame(team, 770);
      await shownFrame(page, 770);
      expect(await burnedCounter(team)).toBe(770);
      // Loaded again, the speaker's page goes on at its item and by its clock, and the team's window with it.
      await expect.poll(() => page.getByTestId('elapsed').textContent()).not.toBe('0:00');
      await page.reload();
      await shownFrame(page, 770);
      expect(await page.getByTestId('elapsed').textContent()).not.toBe('0:00');
      await page.getByText('The other window shows the picture.').waitFor();
      await page.keyboard.press('.');
      await team.locator('.stage.is-black').waitFor();
      await page.keyboard.press('PageDown');
      await expect.poll(() => team.locator('.stage.is-black').count()).toBe(0);
      // On, and impatiently to the next, from the team's own window this time.
      await page.keyboard.press('PageDown');
      // The press shows the next film, which runs; a press more takes it to where it stands.
      await team.keyboard.press('PageDown');
      await page.getByRole('button', { name: 'To where it stands' }).waitFor();
      await team.keyboard.press('PageDown');
      await shownFrame(team, 360);
      expect(await team.locator('.stage-line').textContent()).toBe(first);
      await team.keyboard.press('PageUp');
      await shownFrame(team, 120);
      await team.keyboard.press('PageUp');
      await shownFrame(team, 530);
      // Skipped without a second of its film; the last cannot be.
      await team.keyboard.press('n');
      await shownFrame(team, 120);
      const skip = page.getByRole('button', { name: 'Skip to the next' });
      expect(await skip.getAttribute('aria-disabled')).toBe('true');
      await team.close();
      await page.getByText('No other window is open.').waitFor();
    }),
);

it(
  'a player gets his own moments by a link: their words without the others, and their seconds of film',
  {
    timeout: 90_000,
  },
  () =>
    withPage(app, 'meeting handout', async page => {
      await page.goto(`${app.url}/film/meeting/meeting-together`);
      await page.locator('.item-head').nth(2).click();
      // Half a second of it, from the picture where it stands on.
      await shownFrame(page, 770);
      await page.keyboard.press('[');
      for (let step = 0; step < 3; step += 1) await page.keyboard.press('Shift+ArrowRight');
      await shownFrame(page, 800);
      await page.keyboard.press(']');
      await page.getByText('for this meeting').waitFor();
      await page.getByLabel('What is said').fill('Eyes up, as Thornquist does');
      await page.getByRole('button', { name: 'Hand out to a player' }).click();
      await page.getByLabel('For', { exact: true }).selectOption({ label: '14 Nakatani' });
      await page.getByLabel('Drill', { exact: true }).selectOption({ label: 'Middle first' });
      await page.getByRole('button', { name: 'Make a link' }).click();
      const link = page.locator('.out-address');
      await link.waitFor({ timeout: 60_000 });
      const address = (await link.textContent())!;
      const html = await (await fetch(address)).text();
      for (const said of ['14 Nakatani', 'Eyes up, as number 21 does', 'looks at the goalie', 'Middle first'])
        expect(html).toContain(said);
      for (const other of ['Thornquist', 'Halvorsby', 'Gone with the first pass', 'Where two stayed home'])
        expect(html).not.toContain(other);
      const films = [...html.matchAll(/src="data:video\/\w+;base64,([^"]+)"/g)].map(([, bytes]) => bytes!);
      expect(films).toHaveLength(1);
      const input = new Input({
        formats: ALL_FORMATS,
        source: new BufferSource(Buffer.from(films[0]!, 'base64')),
      });
      const track = (await input.getPrimaryVideoTrack())!;
      const { packetCount } = await track.computePacketStats();
      // Frames 770 to 800 of the film, both counted, of which the one the meeting stops at stands for 3 s; and no sound.
      expect(packetCount).toBe(31 + Math.round((3 * 60_000) / 1001));
      expect(await input.getPrimaryAudioTrack()).toBeNull();
      await page.getByRole('button', { name: 'Take back' }).click();
      await expect.poll(() => link.count()).toBe(0);
      expect(await (await fetch(address)).text()).not.toContain('Nakatani');
    }),
);

it('lists every moment for the speaker with its picture, made when it is looked at, and nothing moves for it', () =>
  withPage(
    app,
    'speaker list',
    async page => {
      await page.goto(`${app.url}/film/meeting/meeting-together/speak`);
      await shownFrame(page, 120);
      const rows = page.getByRole('list', { name: 'All moments' }).getByRole('button');
      const filled = page.locator('.speak-list canvas[data-frame]');
      const tops = () =>
        rows.evaluateAll(all => all.map(one => one.getBoundingClientRect().top + window.scrollY));
      // They lie far below a low window: nothing is read for them yet.
      expect(await rows.count()).toBe(4);
      // Several may have the same words: each says which moment it is.
      for (const said of await rows.locator('.speak-which').allTextContents())
        expect(said).toMatch(/^(done|missed|cannot see|freeze), .*\d:\d\d\.\d/);
      const before = await tops();
      expect(before[0]).toBeGreaterThan(500 + 200);
      expect(await filled.count()).toBe(0);
      await rows.last().scrollIntoViewIfNeeded();
      await expect.poll(() => filled.count(), { timeout: 20_000 }).toBe(4);
      expect(await tops()).toEqual(before);
      expect(
        await filled.evaluateAll(all => all.map(one => Number((one as HTMLElement).dataset.frame))),
      ).toEqual([360, 360, 770, 234]);
      for (const high of await rows.evaluateAll(all => all.map(one => one.getBoundingClientRect().height)))
        expect(high).toBeGreaterThanOrEqual(44);
      expect(await seriousViolations(page)).toEqual([]);
      // The name is what is read beside the picture; by finger and by keys it goes there.
      await page.getByRole('button', { name: /^2:44 Eyes / }).tap();
      await expect.poll(() => rows.nth(2).getAttribute('aria-current')).toBe('step');
      // Space presses what has the focus; Enter is a clicker's and takes the meeting on.
      await rows.nth(1).focus();
      await page.keyboard.press('Space');
      await expect.poll(() => rows.nth(1).getAttribute('aria-current')).toBe('step');
    },
    { size: { width: 390, height: 500 }, touch: true },
  ));

it(
  'what was drawn over the film is seen where it stands, in one window too, where a press goes on',
  {
    timeout: 90_000,
  },
  () =>
    withPage(app, 'meeting marks', async page => {
      await page.goto(`${app.url}/film/game-join?freeze=redLine`);
      const dot = page.locator('.pm-person .pm-dot').first();
      await dot.waitFor();
      const feet = [Number(await dot.getAttribute('cx')), Number(await dot.getAttribute('cy'))] as const;
      await page.keyboard.press('Shift+m');
      await page.getByRole('button', { name: 'Ring', exact: true }).click();
      await clickFilm(page, feet);
      await page.getByLabel('Words').fill('who else');
      await page.goto(`${app.url}/film/meeting/meeting-together/speak`);
      await shownFrame(page, 120);
      expect(await page.locator('.marks-layer text').count()).toBe(0);
      await page.keyboard.press('f');
      const press = page.locator('.show-press');
      // Run, and at once to where it stands.
      await press.click();
      await press.click();
      await shownFrame(page, 360);
      await expect.poll(() => page.locator('.marks-layer text').allTextContents()).toEqual(['who else']);
      await page.getByRole('button', { name: 'Back', exact: true }).click();
      await shownFrame(page, 120);
      if (hasReelTools) await seenInHandout(page, feet);
    }),
);

/** The first picture of the player's film against the same picture of the game's: they differ where the mark lies, and nowhere else. */
const seenInHandout = async (page: Page, feet: readonly [number, number]): Promise<void> => {
  await page.goto(`${app.url}/film/meeting/meeting-together`);
  await page.locator('.item-head').first().click();
  await shownFrame(page, 360);
  await page.keyboard.press('[');
  await page.keyboard.press('ArrowRight');
  await shownFrame(page, 361);
  await page.keyboard.press(']');
  await page.getByText('for this meeting').waitFor();
  await page.getByRole('button', { name: 'Hand out to a player' }).click();
  await page.getByLabel('For', { exact: true }).selectOption({ label: '27 Halvorsby' });
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'One page (HTML)' }).click(),
  ]);
  const html = readFileSync(await download.path(), 'utf8');
  const [, bytes] = /src="data:video\/\w+;base64,([^"]+)"/.exec(html)!;
  const path = `${await download.path()}.film`;
  writeFileSync(path, Buffer.from(bytes!, 'base64'));
  const size = { width: 640, height: 360 };
  const [his, film] = [greyAt(path, 0, size), greyAt(filmPath('B.mp4'), 360, size)];
  const [x, y] = [feet[0] / 2, feet[1] / 2];
  let [atMark, elsewhere] = [0, 0];
  his.forEach((grey, i) => {
    if (Math.abs(grey - film[i]!) < CLEARLY) return;
    const apart = [Math.abs((i % size.width) - x), Math.abs(Math.floor(i / size.width) - y)] as const;
    if (apart[0] < 40 && apart[1] < 25) atMark++;
    else if (apart[0] > 120 || apart[1] > 60) elsewhere++;
  });
  expect(atMark).toBeGreaterThan(40);
  expect(elsewhere).toBeLessThan(20);
};

/** Of 255: more than coding a film anew changes a flat place. */
const CLEARLY = 70;
