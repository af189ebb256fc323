import type { Page } from 'playwright-core';
import type { RunningApp } from '../../test/browser.ts';
import { choose, toFilm } from '../../test/film-page.ts';
import { burnedNumber } from './burned-number.ts';
import { waitForFrame } from './room-picture.ts';
import type { NumberedFilm } from './some-films.ts';

/** Milliseconds from the choice of a file, by the machine's own clock, to its first frame on the canvas. */
export const openTimed = async (app: RunningApp, page: Page, film: NumberedFilm): Promise<number> => {
  await toFilm(page, app.url);
  const shownAt = waitForFrame(page, 0);
  const from = Date.now();
  await choose(page, 'Open a film', film.path);
  const ms = (await shownAt) - from;
  await checkNumber(page, film, 0);
  return ms;
};

/** Throws unless the number burned into the picture shown is this frame's. */
export const checkNumber = async (page: Page, film: NumberedFilm, frameIndex: number): Promise<void> => {
  const number = await burnedNumber(page, 'canvas[data-testid="picture"]', film.blockPx);
  if (number !== frameIndex % film.numbersTo)
    throw new Error(`${film.name}: the room shows picture ${number} for frame ${frameIndex}`);
};
