import type { Page } from 'playwright-core';
import type { BenchRow } from '../../cli/bench-row.ts';
import type { RunningApp } from '../../test/browser.ts';
import { burnedNumber } from './burned-number.ts';
import { withPage } from './open-app.ts';
import { checkNumber } from './open-film.ts';
import { openPlainVideo, seekPlainVideo } from './plain-video.ts';
import { jumpInRoom } from './room-picture.ts';
import { atShare, median, short, spreadOf } from './rows.ts';
import type { NumberedFilm } from './some-films.ts';

/** How many jumps a figure is made of. */
export const JUMPS = 12;
/** What the page still does about the picture before must not slow the next one down, milliseconds. */
export const REST_MS = 800;
const CHECKED = 4;

/** After the coach asked for the whole film to be kept ready, and it is. */
export const keptReadyRow = async (
  app: RunningApp,
  room: Page,
  film: NumberedFilm,
  said: string,
): Promise<BenchRow> => {
  await room.bringToFront();
  const from = Date.now();
  await room.getByRole('button', { name: 'Keep the whole film ready' }).click();
  const line = room.locator('.whole-ready[data-state="ready"]');
  await line.waitFor({ timeout: 120_000 });
  const madeS = (Date.now() - from) / 1000;
  const took = `made at ${short(film.frameCount / madeS)} frames/s; ${await line.locator('span').first().textContent()}`;
  return jumpsRow(app, room, film, `${took} ${said}`, ' once all of it is kept ready');
};

/** Exact frames in the film room and in a plain video element, one after the other. */
export const jumpsRow = async (
  app: RunningApp,
  room: Page,
  film: NumberedFilm,
  said: string,
  when = '',
): Promise<BenchRow> => {
  const jumps = await withPage(app, async video => {
    await openPlainVideo(video, film);
    return jumpsOf(room, video, film);
  });
  const ratios = jumps.map(({ oursMs, theirsMs }) => oursMs / theirsMs);
  const ours = jumps.map(({ oursMs }) => oursMs);
  return {
    name: `film ${film.name}: exact frame, against a plain video element${when}`,
    bar: '≤ 0.8 ×',
    median: median(ratios),
    spread: spreadOf(ratios),
    unit: '×',
    meets: median(ratios) <= 0.8,
    note: `${short(median(ours))} ms (p95 ${short(atShare(ours, 0.95))}) against ${short(median(jumps.map(({ theirsMs }) => theirsMs)))} ms over ${JUMPS} jumps; ${said}`,
  };
};

const jumpsOf = async (
  room: Page,
  video: Page,
  film: NumberedFilm,
): Promise<{ oursMs: number; theirsMs: number }[]> => {
  const jumps: { oursMs: number; theirsMs: number }[] = [];
  for (let jump = 0; jump < JUMPS + 1; jump++) {
    // The golden ratio scatters them over the film; none is near the one before.
    const frameIndex = Math.floor(film.frameCount * ((0.31 + jump * 0.618034) % 1));
    await toFront(room);
    const oursMs = await jumpInRoom(room, frameIndex);
    // What the room still does about the frames before it must not slow the other one down.
    await room.waitForTimeout(REST_MS);
    await toFront(video);
    const theirsMs = await seekPlainVideo(video, (frameIndex + 0.5) / film.framesPerS);
    if (jump <= CHECKED) {
      await checkNumber(room, film, frameIndex);
      const theirs = await burnedNumber(video, 'video', film.blockPx);
      if (theirs !== frameIndex % film.numbersTo)
        throw new Error(`the video element shows ${theirs} for frame ${frameIndex}`);
    }
    // The first one warms both up.
    if (jump > 0) jumps.push({ oursMs, theirsMs });
  }
  return jumps;
};

/** A page that comes to the front draws all of itself anew; neither way to the frame is to wait for that. */
const toFront = async (page: Page): Promise<void> => {
  await page.bringToFront();
  await page.waitForTimeout(REST_MS);
};
