import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import {
  clickFilm,
  distance,
  filmPath,
  frozenAndPinned,
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

/** A marking that is seen in both pictures, with nobody near it. */
const clearIn = (...which: number[]): string =>
  Object.keys(truthAt(which[0]!).landmarks).find(id =>
    which.every(frameIndex => {
      const { landmarks, landmarksCovered, skaters } = truthAt(frameIndex);
      const at = landmarks[id];
      return (
        at !== undefined &&
        !landmarksCovered.includes(id) &&
        skaters.every(one => distance(one.foot, at) > 60)
      );
    }),
  )!;

/** The middle of the ring as it is seen. */
const ringAt = async (page: Page): Promise<[number, number]> => {
  const grip = page.locator('.mark-grip').first();
  await grip.waitFor();
  return grip.evaluate(one => {
    const box = (one as SVGGraphicsElement).getBBox();
    return [box.x + box.width / 2, box.y + box.height / 2];
  });
};

it('carries the pins of one frame through a pan, places skaters there, and keeps that with the game', {
  timeout: 400_000,
}, async () => {
  await withFreshPage(app, async page => {
    await frozenAndPinned(page, app.url, 'B.mp4', truthAt(240));
    await page.getByRole('button', { name: '3 s each way' }).click();
    await page.getByText(/Following the camera: \d+ of 360 frames/).waitFor();
    // It goes on beside a freeze that is closed, and says how long it takes still.
    await page.getByRole('button', { name: 'Close the freeze' }).click();
    await page.getByText(/of 360 frames, about \d+ s left/).waitFor();
    await page.getByRole('button', { name: 'Stop', exact: true }).click();
    await page.locator('.freeze-list button').first().click();
    expect(await page.getByTestId('carried-stretch').count()).toBe(0);
    await page.getByRole('button', { name: '3 s each way' }).click();
    const stretch = page.getByTestId('carried-stretch');
    await stretch.waitFor({ timeout: 240_000 });
    expect(await stretch.textContent()).toMatch(/± \d+\.\d\d\sm at .*± \d+\.\d\d\sm at/);
    expect(await seriousViolations(page)).toEqual([]);

    // A ring laid on a marking of the ice goes with it through the pan.
    const landmark = clearIn(240, 360);
    await page.keyboard.press('Shift+m');
    await page.getByRole('button', { name: 'Ring', exact: true }).click();
    await clickFilm(page, truthAt(240).landmarks[landmark]!);
    await page.locator('.mark-grip').waitFor();
    await jumpTo(page, '360');
    await shownFrame(page, 360);
    expect(distance(await ringAt(page), truthAt(360).landmarks[landmark]!)).toBeLessThan(6);
    await page.keyboard.press('Shift+m');
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
    // The freeze that was open stands in the address and opens again.
    await expect.poll(() => page.locator('.map-person').count()).toBeGreaterThan(1);
    // So is the way of the camera: the ring still lies on its marking in a picture without pins.
    await jumpTo(page, '300');
    await shownFrame(page, 300);
    await page.keyboard.press('Shift+m');
    expect(distance(await ringAt(page), truthAt(300).landmarks[landmark]!)).toBeLessThan(6);
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
