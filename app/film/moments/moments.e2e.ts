import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import { filmPath, jumpTo, openFilmFile, shownFrame, withFreshPage } from '../../../test/film-page.ts';

const app = appOfFile();

const rows = (page: Page) => page.locator('.moments tbody tr:not(.moment-edit)');
const opened = async (page: Page): Promise<void> => {
  await openFilmFile(page, app.url, filmPath('A.mp4'));
  await jumpTo(page, '150');
  await shownFrame(page, 150);
};
const at = async (page: Page, frame: number, ...keys: string[]): Promise<void> => {
  await jumpTo(page, `${frame}`);
  await shownFrame(page, frame);
  for (const key of keys) await page.keyboard.press(key);
};

describe('moments', () => {
  it('one key of the coach’s own keeps the seconds around the press, and is made and changed in the margin', () =>
    withFreshPage(app, async page => {
      await opened(page);
      await page.keyboard.press('h');
      // Frame 150 of 30 a second: 5 s, of which 4 before and 3 after are kept.
      await page.getByText('kept from 0:01.0 to 0:08.0').waitFor();
      await page.getByRole('button', { name: 'Change keys' }).click();
      await page.getByRole('button', { name: 'Another key' }).click();
      const row = page.locator('.key-row').last();
      // Letters of the film itself are not to be had: J K L, M, F, loop and sound, and G for the places.
      const offered = await row.locator('select').first().locator('option').allTextContents();
      expect(offered.filter(key => 'JKLMFOSG1234567'.includes(key))).toEqual([]);
      await row.locator('select').first().selectOption('z');
      await row.getByLabel('s before').fill('0.5');
      await row.getByLabel('s after').fill('0.5');
      await row.getByLabel('Seen').selectOption('missed');
      await page.getByRole('button', { name: 'Done', exact: true }).click();
      await at(page, 300, 'z');
      await page.getByText('missed: kept from 0:09.5 to 0:10.5').waitFor();
      expect(await rows(page).count()).toBe(2);
      // Its seconds are played, and the film stands at their end.
      await page.keyboard.press('p');
      await shownFrame(page, 315);
      expect(await seriousViolations(page)).toEqual([]);
    }));

  it('are followed: what came of one is timed, counted, and asked for', () =>
    withFreshPage(app, async page => {
      await opened(page);
      await page.keyboard.press('h');
      await at(page, 180, '1');
      await at(page, 240, '3');
      await at(page, 100, '2');
      await page.getByText('cannot have come of it before it was').waitFor();
      const steps = page.locator('.follow-steps li');
      await steps.nth(1).waitFor();
      expect(await steps.allInnerTexts()).toEqual([
        expect.stringMatching(/^\+1\.0 s lost/),
        expect.stringMatching(/^\+3\.0 s won back/),
      ]);
      await page.locator('.came').getByText('lost, then won back:').waitFor();
      await page.locator('.came').getByText('after 2.0 s').waitFor();
      await at(page, 400, 'n');
      await page.getByRole('button', { name: 'at any time' }).click();
      await page.locator('.moment-filter').getByRole('option', { name: 'won back' }).click();
      await page.getByText('of 2 moments').waitFor();
      expect(await rows(page).count()).toBe(1);
      await page.getByRole('button', { name: 'Change all 1 shown' }).click();
      await page.getByRole('button', { name: 'Take 1 moment out' }).click();
      await page.locator('.came').waitFor({ state: 'detached' });
      await page.getByRole('button', { name: 'Undo', exact: true }).click();
      await page.locator('.came').getByText('after 2.0 s').waitFor();
    }));

  it('that are shown are changed together, in one step of undo', () =>
    withFreshPage(app, async page => {
      await opened(page);
      for (const [i, frame] of [20, 40, 60].entries()) await at(page, frame, i === 2 ? 'n' : 'h');
      await page.getByRole('button', { name: 'done, missed or not seen' }).click();
      await page.locator('.moment-filter').getByRole('option', { name: 'done', exact: true }).click();
      // What it opens lies below the row of acts and moves none of them.
      const acts = page.locator('.moments-acts > .act, .moments-acts > div > .act');
      const placesOf = () =>
        acts.evaluateAll(all =>
          all.map(one => [one.getBoundingClientRect().left, one.getBoundingClientRect().top + scrollY]),
        );
      const before = await placesOf();
      expect(before.length).toBeGreaterThan(3);
      await page.getByRole('button', { name: 'Change all 2 shown' }).click();
      expect(await placesOf()).toEqual(before);
      // As it is, until something is said.
      const change = page.getByRole('button', { name: 'Change 2 moments' });
      expect(await change.getAttribute('aria-disabled')).toBe('true');
      await page.getByLabel('to', { exact: true }).selectOption({ label: 'Blue' });
      await change.click();
      await page.getByText('2 moments changed.').waitFor();
      await expect.poll(async () => (await rows(page).allInnerTexts()).join()).toMatch(/Blue[\s\S]*Blue/);
      await page.getByRole('button', { name: 'Undo', exact: true }).click();
      await expect.poll(async () => (await rows(page).allInnerTexts()).join()).not.toContain('Blue');
    }));

  it('are judged a second time blind, and the two pairs of eyes are compared', () =>
    withFreshPage(app, async page => {
      await opened(page);
      for (const [i, frame] of [30, 60, 90, 120].entries()) await at(page, frame, i < 2 ? 'h' : 'n');
      await at(page, 30, ']', '[', 'f');
      const head = page.getByRole('complementary', { name: 'The freeze' }).locator('.verdict');
      await expect.poll(() => head.textContent()).toContain('Done');
      await page.getByRole('button', { name: 'Give a second opinion' }).click();
      expect(await rows(page).count()).toBe(0);
      expect(await page.locator('.pulse .pm').count()).toBe(0);
      await page.getByLabel('Your initials').fill('Falk');
      await page.getByRole('button', { name: 'Judge 4 moments' }).click();
      await shownFrame(page, 30);
      await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
      // The freeze of the first can be looked at, and tells nothing of what was said of it.
      await page.keyboard.press(']');
      await shownFrame(page, 60);
      await page.keyboard.press('[');
      await head.getByText('is put away while moments are judged').waitFor();
      expect(await head.textContent()).not.toMatch(/Done|Missed|Cannot/);
      expect(await page.locator('.film-room').textContent()).not.toContain('by the standard');
      for (const [i, key] of ['d', 'x', 'x', 'x'].entries()) {
        await page.getByText(`${4 - i} to go`).waitFor();
        await page.keyboard.press(key);
      }
      await page.getByText('3 of 4 the same').waitFor();
      // Seen alike .75, by luck alone .5 · .25 + .5 · .75 = .5: kappa .5.
      expect(await page.locator('.agreement .why').first().textContent()).toMatch(/^0\.50/);
      await page.locator('.differ').getByText('first: done; Falk: missed').waitFor();
    }));
});

describe('moments from files and into files', () => {
  it('a table is mapped, tied to the film by one event, comes in once, and is remembered', () =>
    withFreshPage(app, async page => {
      await opened(page);
      const table = {
        name: 'events.csv',
        mimeType: 'text/csv',
        buffer: Buffer.from(
          'period,clock,event,team,player,x,y\n1,19:58,draw,LAN,,0,0\n1,19:50,puck won,LAN,14,25,-10\n1,19:45,puck lost,QBY,14,,\n',
        ),
      };
      await page.getByRole('button', { name: 'Moments in and out' }).click();
      await page.getByLabel('A file of moments').setInputFiles(table);
      const take = page.getByRole('button', { name: 'Take the moments' });
      await page.getByText('say first what one of its words means', { exact: true }).waitFor();
      await page
        .getByLabel('What puck won means')
        .selectOption({ label: 'The nearest hunts the lost puck: done' });
      await page
        .getByLabel('What puck lost means')
        .selectOption({ label: 'The nearest hunts the lost puck: missed' });
      await page.getByRole('button', { name: 'happens at the picture shown', exact: true }).click();
      await take.click();
      const came = page.getByText('2 moments came in.');
      await came.waitFor();
      await page.getByRole('button', { name: 'Undo', exact: true }).click();
      await expect.poll(() => came.count()).toBe(0);
      await page.getByRole('button', { name: 'Redo', exact: true }).click();
      await expect.poll(async () => (await rows(page).allInnerTexts()).join('\n')).toContain('events.csv');
      // The draw is tied to 5.0 s; 8 and 13 s later the others. What they lost is nothing that our 14 missed.
      const theirs = await rows(page).filter({ hasText: 'QBY 14' }).textContent();
      expect(theirs).toContain('theirs');
      expect(theirs).not.toContain('Nakatani');
      await expect
        .poll(async () => (await rows(page).allInnerTexts()).join('\n'))
        .toMatch(/0:13\.0[\s\S]*14 Nakatani[\s\S]*period 1[\s\S]*0:18\.0/);
      await page.getByLabel('A file of moments').setInputFiles(table);
      expect(await page.getByLabel('What puck won means').inputValue()).toBe('hunt done');
      await page.getByRole('button', { name: 'happens at the picture shown', exact: true }).click();
      await take.click();
      await page.getByText('0 moments came in. 2 were here already and stay as they are.').waitFor();
      const [file] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Words for the film (WebVTT)' }).click(),
      ]);
      expect(readFileSync((await file.path())!, 'utf8')).toMatch(
        /^WEBVTT\n\nmoment \S+, frame 390 alone\n00:00:13\.000 --> 00:00:14\.000\nThe nearest hunts the lost puck: done\n14 Nakatani · period 1\n/,
      );
      const [own] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'A table (CSV)' }).click(),
      ]);
      // Our own files say all of themselves: nothing is asked, and nothing doubled.
      const takeAgain = async (name: string, path: string, said: string) => {
        const [mimeType, buffer] = ['text/plain', readFileSync(path)];
        await page.getByLabel('A file of moments').setInputFiles({ name, mimeType, buffer });
        await page.getByText(said).waitFor();
      };
      const ownPath = (await own.path())!;
      await takeAgain('own.csv', ownPath, '0 moments came in. 2 were here already and stay as they are.');
      await page.getByRole('button', { name: 'Change all 2 shown' }).click();
      await page.getByRole('button', { name: 'Take 2 moments out' }).click();
      await takeAgain('own.csv', ownPath, '2 moments came in.');
      await takeAgain('own.vtt', (await file.path())!, '0 moments came in. 2 were here already');
      await expect
        .poll(async () => (await rows(page).allInnerTexts()).join('\n'))
        .toMatch(/0:13\.0[\s\S]*14 Nakatani[\s\S]*period 1[\s\S]*events\.csv[\s\S]*0:18\.0/);
      await page
        .getByLabel('A file of moments')
        .setInputFiles({ name: 'broken.json', mimeType: 'application/json', buffer: Buffer.from('{') });
      await page
        .getByText('broken.json: This file is not JSON, or it is cut off. Nothing was changed.')
        .waitFor();
      expect(await seriousViolations(page)).toEqual([]);
    }));
});
