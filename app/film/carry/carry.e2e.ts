import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import {
  clickFilm,
  distance,
  filmPath,
  jumpTo,
  openFilmFile,
  placedAt,
  shownFrame,
  truthOf,
  withFreshPage,
} from '../../../test/film-page.ts';

const app = appOfFile();

const frames = truthOf('B.json');
const truthAt = (frameIndex: number) => frames.find(one => one.i === frameIndex)!;

const pinTwelve = async (page: Page, frameIndex: number): Promise<void> => {
  const { landmarks, landmarksCovered } = truthAt(frameIndex);
  const offered = await page
    .getByLabel('Next mark')
    .locator('option')
    .evaluateAll(all => all.map(one => (one as HTMLOptionElement).value));
  const seen = Object.keys(landmarks).filter(id => !landmarksCovered.includes(id) && offered.includes(id));
  // Spread over all that can be seen: every so many of them.
  const chosen = seen.filter((_, i) => i % Math.max(1, Math.floor(seen.length / 12)) === 0).slice(0, 12);
  for (const [i, landmark] of chosen.entries()) {
    await page.getByLabel('Next mark').selectOption(landmark);
    await clickFilm(page, landmarks[landmark]!);
    await page.locator('.pm-pin').nth(i).waitFor();
  }
  await page.getByTestId('held').waitFor();
};

it('carries the pins of one frame through a pan, places skaters there, and keeps that with the game', {
  timeout: 400_000,
}, async () => {
  await withFreshPage(app, async page => {
    await openFilmFile(page, app.url, filmPath('B.mp4'));
    await jumpTo(page, '240');
    await shownFrame(page, 240);
    await page.keyboard.press('f');
    await pinTwelve(page, 240);
    await page.getByRole('button', { name: '3 s each way' }).click();
    await page.getByText(/Following the camera: \d+ of 360 frames/).waitFor();
    await page.getByRole('button', { name: 'Stop' }).click();
    expect(await page.getByTestId('carried-stretch').count()).toBe(0);
    await page.getByRole('button', { name: '3 s each way' }).click();
    const stretch = page.getByTestId('carried-stretch');
    await stretch.waitFor({ timeout: 240_000 });
    expect(await stretch.textContent()).toMatch(/± \d+\.\d\d\sm at .*± \d+\.\d\d\sm at/);
    expect(await seriousViolations(page)).toEqual([]);

    await jumpTo(page, '360');
    await shownFrame(page, 360);
    const here = page.getByTestId('carried-here');
    await expect.poll(() => here.textContent()).toMatch(/Carried from frame 240, ± \d+\.\d\d\sm/);
    await here.getByRole('button', { name: 'Freeze it' }).click();
    await page.getByTestId('carried').waitFor();
    expect(await page.getByTestId('held').textContent()).toMatch(/carried from frame 240/);
    const truth = truthAt(360);
    const seen = truth.skaters.filter(one => one.see === 'clear' && one.footSeen && one.id.startsWith('L'));
    expect(seen.length).toBeGreaterThan(1);
    await page.getByRole('button', { name: 'Place one of us' }).click();
    for (const one of seen.slice(0, 3)) await clickFilm(page, one.foot);
    for (const [i, one] of seen.slice(0, 3).entries()) {
      expect(distance(await placedAt(page, ['F1', 'F2', 'F3'][i]!), one.ice)).toBeLessThan(0.6);
    }
    expect(await seriousViolations(page)).toEqual([]);

    // It is kept with the game: after a new start the frame still stands on the ice.
    await page.reload();
    await page.locator('.film-room').waitFor();
    await page.getByRole('button', { name: /^0:06\.0/ }).click();
    await expect.poll(() => page.locator('.map-person').count()).toBeGreaterThan(1);
  });
});

it('says beyond the stretch that the frame must be pinned again', { timeout: 400_000 }, async () => {
  await withFreshPage(app, async page => {
    await openFilmFile(page, app.url, filmPath('A.mp4'));
    await jumpTo(page, '180');
    await shownFrame(page, 180);
    await page.keyboard.press('f');
    const truth = truthOf('A.json').find(one => one.i === 180)!;
    for (const [i, landmark] of ['endSpot-x+y', 'endSpot+x-y', 'endSpot-x-y', 'endSpot+x+y'].entries()) {
      await page.getByLabel('Next mark').selectOption(landmark);
      await clickFilm(page, truth.landmarks[landmark]!);
      await page.locator('.pm-pin').nth(i).waitFor();
    }
    await page.getByRole('button', { name: '3 s each way' }).click();
    await page.getByTestId('carried-stretch').waitFor({ timeout: 240_000 });
    await jumpTo(page, '400');
    await shownFrame(page, 400);
    const here = page.getByTestId('carried-here');
    await expect.poll(() => here.textContent()).toMatch(/not followed here: pin this frame again/);
    await jumpTo(page, '260');
    await expect.poll(() => here.textContent()).toMatch(/Carried from frame 180/);
  });
});
