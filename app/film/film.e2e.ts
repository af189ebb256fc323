import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../test/app-of-file.ts';
import { seriousViolations } from '../../test/axe.ts';
import {
  brokenPath,
  burnedCounter,
  choose,
  filmPath,
  jumpTo,
  openedAnew,
  openFilmFile,
  shownFrame,
  toFilm,
  withFreshPage,
} from '../../test/film-page.ts';

const app = appOfFile();

const withPage = (work: (page: Page) => Promise<void>) => withFreshPage(app, work);

describe('the picture is the very frame that the clock says', () => {
  // The films carry their frame number in the picture itself: fixtures/film-truth and the README of the films.
  it.each([
    ['A.mp4', [599, 0, 137, 30, 31, 250, 249, 431]],
    ['B.mp4', [0, 251, 250, 249, 959, 503, 747]],
    ['C.mp4', [399, 12, 200, 201]],
    ['D.webm', [324, 3, 161]],
  ] as const)('%s', { timeout: 120_000 }, async (name, frames) => {
    await withPage(async page => {
      await openFilmFile(page, app.url, filmPath(name));
      for (const frameIndex of frames) {
        await jumpTo(page, `${frameIndex}`);
        await shownFrame(page, frameIndex);
        expect(await burnedCounter(page)).toBe(frameIndex);
      }
      const from = frames[frames.length - 1]!;
      for (const step of [1, 2, 1, 0, -1, -2]) {
        const before = Number(await page.getByTestId('frame').textContent());
        await page.keyboard.press(from + step > before ? 'ArrowRight' : 'ArrowLeft');
        await shownFrame(page, from + step);
        expect(await burnedCounter(page)).toBe(from + step);
      }
    });
  });

  it('finds a frame near the start after the room has filled in what lies before a key picture', {
    timeout: 60_000,
  }, async () => {
    await withPage(async page => {
      await openFilmFile(page, app.url, filmPath('A.mp4'));
      // Frame 240 of this film is a key picture; the room looks at what lies before it once it is quiet.
      await jumpTo(page, '240');
      await shownFrame(page, 240);
      await page.waitForTimeout(900);
      await jumpTo(page, '10');
      await shownFrame(page, 10);
      expect(await burnedCounter(page)).toBe(10);
    });
  });

  it('stops on the frame that is then shown, playing forwards and backwards', {
    timeout: 120_000,
  }, async () => {
    await withPage(async page => {
      await openFilmFile(page, app.url, filmPath('A.mp4'));
      for (const key of ['l', 'j']) {
        await jumpTo(page, '300');
        await shownFrame(page, 300);
        await page.keyboard.press(key);
        await page.waitForFunction(
          () => document.querySelector('[data-testid="frame"]')?.textContent !== '300',
          undefined,
          { timeout: 20_000 },
        );
        await page.waitForTimeout(700);
        await page.keyboard.press('k');
        const stopped = Number(await page.getByTestId('frame').textContent());
        await shownFrame(page, stopped);
        expect(await burnedCounter(page)).toBe(stopped);
        expect(Math.sign(stopped - 300)).toBe(key === 'l' ? 1 : -1);
      }
    });
  });
});

const EXPECTED = JSON.parse(readFileSync(brokenPath('expected.json'), 'utf8')) as Record<
  string,
  { expect: string }
>;
const SAYS: Record<string, RegExp> = {
  'empty.mp4': /This file is empty/,
  'text.mp4': /text, not a film/,
  'photo.mp4': /photo, not a film/,
  'truncated.mp4': /cut off: the index/,
  'audio_only.mp4': /only sound/,
  'mpeg4_part2.mp4': /MPEG-4 part 2/,
  'ffv1.mkv': /FFV1/,
};

describe('films that are none', () => {
  it('are refused in a sentence that says what and what to do, and change nothing', {
    timeout: 120_000,
  }, async () => {
    await withPage(async page => {
      await toFilm(page, app.url);
      const games = page.locator('.games tbody tr');
      await games.first().waitFor();
      const before = await games.count();
      for (const [name, { expect: wanted }] of Object.entries(EXPECTED)) {
        if (!wanted.startsWith('refuse')) continue;
        await choose(page, 'Open a film', brokenPath(name));
        const alert = page.getByRole('alert').filter({ hasText: name });
        await alert.waitFor();
        expect(await alert.textContent()).toMatch(SAYS[name]!);
        expect(await alert.textContent()).toMatch(/Nothing here was changed/);
        expect(await games.count()).toBe(before);
      }
      expect(await seriousViolations(page)).toEqual([]);
    });
  });

  it.each([
    ['damaged_middle.mp4', 100, 70, /damaged/],
    ['truncated_data_missing.mp4', 100, 590, /file ends before/],
  ] as const)(
    '%s opens, and says which frames are gone',
    { timeout: 120_000 },
    async (name, good, gone, says) => {
      await withPage(async page => {
        await openFilmFile(page, app.url, brokenPath(name));
        await jumpTo(page, `${good}`);
        await shownFrame(page, good);
        expect(await burnedCounter(page)).toBe(good);
        await jumpTo(page, `${gone}`);
        const said = page.locator('.picture-gone');
        await said.waitFor({ timeout: 20_000 });
        expect(await said.textContent()).toMatch(says);
        expect(await said.textContent()).toContain(`Frame ${gone}`);
        await jumpTo(page, `${good + 1}`);
        await shownFrame(page, good + 1);
        expect(await burnedCounter(page)).toBe(good + 1);
      });
    },
  );
});

it('says where a damaged film stops playing, and goes on after it', { timeout: 120_000 }, async () => {
  await withPage(async page => {
    await openFilmFile(page, app.url, brokenPath('damaged_middle.mp4'));
    await jumpTo(page, '40');
    await shownFrame(page, 40);
    await page.keyboard.press('l');
    await page.getByText('It does not play on from here').waitFor({ timeout: 20_000 });
    await jumpTo(page, '95');
    await shownFrame(page, 95);
    await page.keyboard.press('l');
    await expect.poll(async () => Number(await page.getByTestId('frame').textContent())).toBeGreaterThan(96);
  });
});

it('takes a dropped file, and a second part of a game', { timeout: 120_000 }, async () => {
  await withPage(async page => {
    await toFilm(page, app.url);
    const drop = async (name: string) => {
      const bytes = readFileSync(brokenPath(name)).toString('base64');
      const transfer = await page.evaluateHandle(
        ([base64, fileName]) => {
          const data = new DataTransfer();
          data.items.add(new File([Uint8Array.from(atob(base64!), one => one.charCodeAt(0))], fileName!));
          return data;
        },
        [bytes, name],
      );
      await page.locator('.drop-zone').dispatchEvent('drop', { dataTransfer: transfer });
    };
    await drop('text.mp4');
    await page.getByText('This file is text, not a film.').waitFor();
    await drop('damaged_middle.mp4');
    await openedAnew(page);
    expect(await burnedCounter(page)).toBe(0);
    await choose(page, 'Add another part', filmPath('D.webm'));
    await page.getByRole('button', { name: 'part 2', pressed: true }).waitFor();
    await jumpTo(page, '300');
    await shownFrame(page, 300);
    expect(await burnedCounter(page)).toBe(300);
    await page.getByRole('button', { name: 'whole game', exact: true }).click();
    await shownFrame(page, 0);
  });
});

it('a film that is not on this machine is found again by its content', { timeout: 120_000 }, async () => {
  let address = '';
  await withPage(async page => {
    await openFilmFile(page, app.url, filmPath('D.webm'));
    address = page.url();
    await jumpTo(page, '12');
    await shownFrame(page, 12);
    for (const key of ['m', '2', 'x']) await page.keyboard.press(key);
    await page.locator('.moments tbody tr').first().waitFor();
    await page.keyboard.press('f');
    await page
      .getByText(/1 freeze/)
      .first()
      .waitFor();
    await page.locator('.strip').getByText(/^Kept/).waitFor();
  });
  await withPage(async page => {
    await toFilm(page, app.url);
    await page.goto(address);
    await page
      .getByText('This browser has no way to the film now: open its file again.')
      .waitFor({ timeout: 20_000 });
    // What was marked can be read without the film.
    expect(await page.locator('.moments tbody tr').allTextContents()).toEqual([
      expect.stringContaining('missed'),
    ]);
    expect(await page.locator('.freeze-list li').count()).toBe(1);
    // Nor is the way to other films of the game shut.
    expect(await page.getByRole('button', { name: 'Add another part' }).count()).toBe(1);
    await choose(page, 'Open it again', filmPath('C.mp4'));
    await page.getByText('C.mp4 is another film.').waitFor();
    await choose(page, 'Open it again', filmPath('D.webm'));
    await shownFrame(page, 0);
    expect(await burnedCounter(page)).toBe(0);
  });
});

it('keeps a copy on this machine when asked, and finds the film there from another browser', {
  timeout: 120_000,
}, async () => {
  let address = '';
  await withPage(async page => {
    await openFilmFile(page, app.url, brokenPath('damaged_middle.mp4'));
    address = page.url();
    await page.getByRole('button', { name: 'Keep a copy on this machine' }).click();
    await page.getByText('a copy is kept on this machine').waitFor({ timeout: 20_000 });
  });
  await withPage(async page => {
    await toFilm(page, app.url);
    await page.goto(address);
    await shownFrame(page, 0);
    expect(await burnedCounter(page)).toBe(0);
  });
});
