import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { RunningApp } from './browser.ts';

/** What the end-to-end tests of the film room do with a page. Only tests import this. */

export const filmPath = (name: string): string =>
  new URL(`../fixtures/film/${name}`, import.meta.url).pathname;
export const brokenPath = (name: string): string =>
  new URL(`../fixtures/broken/${name}`, import.meta.url).pathname;

/** A frame of a film whose every position is known; see fixtures/film-truth/README.md. */
export interface TruthFrame {
  readonly i: number;
  readonly landmarks: Readonly<Record<string, readonly [number, number]>>;
  readonly landmarksCovered: readonly string[];
  readonly skaters: readonly {
    readonly id: string;
    readonly ice: readonly [number, number];
    readonly foot: readonly [number, number];
    readonly footSeen?: boolean;
    readonly see: string;
  }[];
  readonly puck: { readonly ice: readonly [number, number]; readonly px: readonly [number, number] };
}

export const truthOf = (name: string): readonly TruthFrame[] =>
  (
    JSON.parse(readFileSync(new URL(`../fixtures/film-truth/${name}`, import.meta.url), 'utf8')) as {
      frames: TruthFrame[];
    }
  ).frames;

/** The list of games of the invented team; pickers are plain file fields, as in a browser without file handles. */
export const toFilm = async (page: Page, url: string): Promise<void> => {
  await page.addInitScript(() => Reflect.deleteProperty(window, 'showOpenFilePicker'));
  await page.goto(`${url}/film`);
  const lookRound = page.getByRole('button', { name: /^Look round/ });
  await lookRound
    .or(page.getByRole('button', { name: 'Open a film' }))
    .first()
    .waitFor();
  if (await lookRound.isVisible()) await lookRound.click();
  await page.getByRole('button', { name: 'Open a film' }).waitFor();
};

export const choose = async (page: Page, act: string, path: string): Promise<void> => {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: act }).click(),
  ]);
  await chooser.setFiles(path);
};

export const openFilmFile = async (page: Page, url: string, path: string): Promise<void> => {
  await toFilm(page, url);
  await choose(page, 'Open a film', path);
  await openedAnew(page);
};

/** Waits for the first frame of a film that was opened, in a game of its own: the invented team's own films are in one already. */
export const openedAnew = async (page: Page): Promise<void> => {
  const another = page.getByRole('button', { name: 'Make another game all the same' });
  await another.or(pictureOf(page, 0)).first().waitFor({ timeout: 30_000 });
  if (await another.isVisible()) await another.click();
  await shownFrame(page, 0);
};

/** Waits until the canvas holds this very frame. */
export const shownFrame = async (page: Page, frameIndex: number): Promise<void> => {
  await pictureOf(page, frameIndex).waitFor({ timeout: 30_000 });
};

const pictureOf = (page: Page, frameIndex: number) =>
  page.locator(`canvas[data-testid="picture"][data-frame="${frameIndex}"]`);

export const jumpTo = async (page: Page, typed: string): Promise<void> => {
  const field = page.getByLabel('Jump to a time or a frame');
  await field.fill(typed);
  await field.press('Enter');
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
};

/**
 * The number burned into the picture: 16 blocks of 8 × 8 px, least bit first, white = 1, the row below their complement;
 * −1 when a block is not clearly black or white.
 */
export const burnedCounter = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const canvas = document.querySelector<HTMLCanvasElement>('canvas[data-testid="picture"]')!;
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, 128, 16);
    const grey = (x: number, y: number) => data[(y * 128 + x) * 4]!;
    let number = 0;
    for (let bit = 0; bit < 16; bit++) {
      const above = grey(bit * 8 + 4, 4);
      const below = grey(bit * 8 + 4, 12);
      if (Math.abs(above - below) <= 60) return -1;
      if (above > below) number += 2 ** bit;
    }
    return number;
  });

/** Where a pixel of the film lies on the page. */
export const onPage = async (
  page: Page,
  px: readonly [number, number],
): Promise<{ x: number; y: number }> => {
  const canvas = page.getByTestId('picture');
  // The tools stand beside the picture and may have scrolled it away.
  await canvas.scrollIntoViewIfNeeded();
  const box = (await canvas.boundingBox())!;
  const [width, height] = await canvas.evaluate(one => [
    (one as HTMLCanvasElement).width,
    (one as HTMLCanvasElement).height,
  ]);
  return { x: box.x + (px[0] / width!) * box.width, y: box.y + (px[1] / height!) * box.height };
};

export const clickFilm = async (page: Page, px: readonly [number, number]): Promise<void> => {
  const { x, y } = await onPage(page, px);
  await page.mouse.click(x, y);
};

/** Twelve pins on marks of the frame that is frozen, spread over all that can be seen. */
export const pinTwelve = async (page: Page, { landmarks, landmarksCovered }: TruthFrame): Promise<void> => {
  const offered = await page
    .getByLabel('Next mark')
    .locator('option')
    .evaluateAll(all => all.map(one => (one as HTMLOptionElement).value));
  const seen = Object.keys(landmarks).filter(id => !landmarksCovered.includes(id) && offered.includes(id));
  const chosen = seen.filter((_, i) => i % Math.max(1, Math.floor(seen.length / 12)) === 0).slice(0, 12);
  for (const [i, landmark] of chosen.entries()) {
    await page.getByLabel('Next mark').selectOption(landmark);
    await clickFilm(page, landmarks[landmark]!);
    await page.locator('.pm-pin').nth(i).waitFor();
  }
  await page.getByTestId('held').waitFor();
};

/** The film is opened, stands at the truth's frame, and is frozen there. */
export const frozenAt = async (page: Page, url: string, film: string, truth: TruthFrame): Promise<void> => {
  await openFilmFile(page, url, filmPath(film));
  await jumpTo(page, `${truth.i}`);
  await shownFrame(page, truth.i);
  await page.keyboard.press('f');
};

/** A film opened in a game of its own, frozen at this picture and pinned there. */
export const frozenAndPinned = async (
  page: Page,
  url: string,
  film: string,
  truth: TruthFrame,
): Promise<void> => {
  await frozenAt(page, url, film, truth);
  await pinTwelve(page, truth);
};

export const placedAt = async (page: Page, role: string): Promise<readonly [number, number]> => {
  const fix = page.locator(`.map-person[data-role="${role}"]`);
  return [Number(await fix.getAttribute('data-x-m')), Number(await fix.getAttribute('data-y-m'))];
};

export const distance = (a: readonly [number, number], b: readonly [number, number]): number =>
  Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Work in a page of its own, in which no script may fail. */
export const withFreshPage = async (app: RunningApp, work: (page: Page) => Promise<void>): Promise<void> => {
  const { page, context } = await app.newPage();
  const wrong: string[] = [];
  page.on('pageerror', error => wrong.push(error.message));
  try {
    await work(page);
    expect(wrong).toEqual([]);
  } finally {
    await context.close();
  }
};
