import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import {
  clickFilm,
  filmPath,
  frozenAndPinned,
  onPage,
  truthOf,
  withFreshPage,
} from '../../../test/film-page.ts';
import { burnedIn, greyAt, hasReelTools } from '../../../test/read-reel.ts';

const app = appOfFile();
const truth = truthOf('A.json').find(one => one.i === 180)!;
/** Somebody in clear view on bare ice. */
const [footX, footY] = truth.skaters.find(one => one.id === 'Q23')!.foot;
const ZONE = [
  [footX - 50, footY - 50],
  [footX + 50, footY - 50],
  [footX + 50, footY + 25],
  [footX - 50, footY + 25],
] as const;
/** Well inside of the zone, where nothing of its edge lies. */
const INSIDE = { left: footX - 34, top: footY - 40, right: footX + 34, bottom: footY + 12 };

/** Film A stands at frame 180, which is frozen and pinned, with a zone about one skater. */
const zoneOverSkater = async (page: Page): Promise<void> => {
  await frozenAndPinned(page, app.url, 'A.mp4', truth);
  await page.keyboard.press('Shift+m');
  await page.getByRole('button', { name: 'Zone', exact: true }).click();
  for (const corner of [...ZONE, ZONE[3]]) await clickFilm(page, corner);
  await page.locator('.marks-drawn [data-bodies="before"]').waitFor({ timeout: 60_000 });
};

it('draws a zone under a skater in the freeze and in the still, and over the ice round him', {
  timeout: 180_000,
}, async () => {
  await withFreshPage(app, async page => {
    await zoneOverSkater(page);

    // In the still: a PNG of the film's own size beside the film's own picture.
    const bare = await page.getByTestId('picture').evaluate(one => (one as HTMLCanvasElement).toDataURL());
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Keep as a picture' }).click(),
    ]);
    const still = `data:image/png;base64,${readFileSync(await download.path()).toString('base64')}`;
    const inStill = await changesIn(page, bare, still, INSIDE);
    expect(inStill.bodyCount).toBeGreaterThan(60);
    expect(inStill.bodyChanged / inStill.bodyCount).toBeLessThan(0.05);
    expect(inStill.iceChanged / inStill.iceCount).toBeGreaterThan(0.8);

    // Names in the freeze stand over the marks, not under their ground.
    const orderOf = (layer: string) =>
      page.locator(layer).evaluate(one => Number(getComputedStyle(one).zIndex) || 0);
    expect(await orderOf('.freeze-layer')).toBeGreaterThan(await orderOf('.marks-layer'));

    // On the page: the same with its marks, and with them hidden.
    await page.getByRole('button', { name: 'Close the marks' }).click();
    await page.locator('.marks-drawn [data-bodies="before"]').waitFor({ timeout: 60_000 });
    const [from, to] = [
      await onPage(page, [INSIDE.left, INSIDE.top]),
      await onPage(page, [INSIDE.right, INSIDE.bottom]),
    ];
    const clip = { x: from.x, y: from.y, width: to.x - from.x, height: to.y - from.y };
    const shot = async () => `data:image/png;base64,${(await page.screenshot({ clip })).toString('base64')}`;
    const withMarks = await shot();
    await page.evaluate(() => {
      for (const one of document.querySelectorAll<SVGElement>('.marks-layer'))
        one.style.visibility = 'hidden';
    });
    const without = await shot();
    const onScreen = await changesIn(page, without, withMarks);
    expect(onScreen.bodyCount).toBeGreaterThan(40);
    expect(onScreen.bodyChanged / onScreen.bodyCount).toBeLessThan(0.05);
    expect(onScreen.iceChanged / onScreen.iceCount).toBeGreaterThan(0.8);

    // In a spotlight he is as he was, and the ice round him is darker.
    await page.evaluate(() => {
      for (const one of document.querySelectorAll<SVGElement>('.marks-layer')) one.style.visibility = '';
    });
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await page.keyboard.press('Shift+m');
    await page.getByRole('button', { name: 'Spotlight', exact: true }).click();
    await clickFilm(page, [footX, footY]);
    await page.locator('.marks-drawn [data-bodies="before"]').waitFor({ timeout: 60_000 });
    const [lit] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Keep as a picture' }).click(),
    ]);
    const inLight = `data:image/png;base64,${readFileSync(await lit.path()).toString('base64')}`;
    const close = { left: footX - 16, top: footY - 40, right: footX + 16, bottom: footY };
    const inBeam = await changesIn(page, bare, inLight, close);
    expect(inBeam.bodyCount).toBeGreaterThan(40);
    expect(inBeam.bodyChanged / inBeam.bodyCount).toBeLessThan(0.05);
    // Close round him a rim of ice is taken for his.
    expect(inBeam.iceChanged / inBeam.iceCount).toBeGreaterThan(0.6);
  });
});

it('draws it under one whom nobody finds, once he is placed', { timeout: 180_000 }, async () => {
  const late = truthOf('A.json').find(one => one.i === 540)!;
  // White on white: he is missed.
  const [x, y] = late.skaters.find(one => one.id === 'Q23')!.foot;
  const around = { left: x - 30, top: y - 34, right: x + 12, bottom: y + 8 };
  await withFreshPage(app, async page => {
    await frozenAndPinned(page, app.url, 'A.mp4', late);
    const bare = await page.getByTestId('picture').evaluate(one => (one as HTMLCanvasElement).toDataURL());
    const changesWithZone = async () => {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Keep as a picture' }).click(),
      ]);
      const still = `data:image/png;base64,${readFileSync(await download.path()).toString('base64')}`;
      return changesIn(page, bare, still, around);
    };
    await page.keyboard.press('Shift+m');
    await page.getByRole('button', { name: 'Zone', exact: true }).click();
    const [left, top, right, bottom] = [x - 60, y - 50, x + 60, y + 22];
    for (const corner of [
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
      [left, bottom],
    ] as const)
      await clickFilm(page, corner);
    await page.locator('.marks-drawn [data-bodies="before"]').waitFor({ timeout: 60_000 });
    const before = await changesWithZone();
    expect(before.bodyCount).toBeGreaterThan(40);
    expect(before.bodyChanged / before.bodyCount).toBeGreaterThan(0.8);
    await page.getByRole('button', { name: 'Close the marks' }).click();
    await page.getByRole('button', { name: 'Place one of them' }).click();
    await clickFilm(page, [x, y]);
    await page.locator('.map-person').first().waitFor();
    await page.keyboard.press('Shift+m');
    const after = await changesWithZone();
    expect(after.bodyCount).toBe(before.bodyCount);
    expect(after.bodyChanged / after.bodyCount).toBeLessThan(0.1);
    // His jersey is as bright as ice, and is not tinted either.
    expect(after.iceChanged / after.iceCount).toBeGreaterThan(0.6);
  });
});

it.skipIf(!hasReelTools)('draws it under him in a reel', { timeout: 180_000 }, async () => {
  await withFreshPage(app, async page => {
    await page.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'));
    await zoneOverSkater(page);
    await page.getByRole('button', { name: 'Close the marks' }).click();
    await page.keyboard.press('m');
    await page.keyboard.press('x');
    await page.locator('.row-handle').first().click();
    for (const label of ['Seconds before', 'Seconds after']) await page.getByLabel(label).fill('0.2');
    await page.keyboard.press('Tab');
    await page.getByRole('button', { name: 'Make a reel of those shown' }).click();
    const panel = page.getByRole('region', { name: 'A reel' });
    await panel.getByLabel('a title before each').uncheck();
    const [download] = await Promise.all([
      page.waitForEvent('download', { timeout: 120_000 }),
      panel
        .getByRole('button', { name: /^(MP4|WebM)/ })
        .first()
        .click(),
    ]);
    const reel = await download.path();
    const nth = burnedIn(reel).findIndex(one => one.frame === 180);
    expect(nth).toBeGreaterThan(0);
    const size = { width: 1280, height: 720 };
    const [own, made] = [greyAt(filmPath('A.mp4'), 180, size), greyAt(reel, nth, size)];
    // Mean of how much lighter the zone has made what is dark, which is the skater, and how much darker its ruling the ice. A codec blurs both a little.
    const [body, ruled] = [[] as number[], [] as number[]];
    for (let y = Math.round(INSIDE.top); y < INSIDE.bottom; y++) {
      for (let x = Math.round(INSIDE.left); x < INSIDE.right; x++) {
        const at = y * size.width + x;
        if (own[at]! < 80) body.push(made[at]! - own[at]!);
        if (own[at]! > 200 && made[at]! < 140) ruled.push(at);
      }
    }
    expect(body.length).toBeGreaterThan(40);
    // Over him it would be a fifth of the way to white: 35 and more.
    expect(Math.abs(body.reduce((sum, one) => sum + one, 0) / body.length)).toBeLessThan(12);
    expect(ruled.length).toBeGreaterThan(40);
  });
});

/**
 * How many pixels of two pictures differ, of those that are dark in the first, which are the skater’s, and of those that are as bright as ice. What is between the
 * two may be either.
 */
const changesIn = (
  page: Page,
  before: string,
  after: string,
  box?: { left: number; top: number; right: number; bottom: number },
) =>
  page.evaluate(
    async ({ before, after, box }) => {
      const pixelsOf = async (address: string) => {
        const image = new Image();
        image.src = address;
        await image.decode();
        const [left, top] = [Math.round(box?.left ?? 0), Math.round(box?.top ?? 0)];
        const width = box ? Math.round(box.right) - left : image.width;
        const height = box ? Math.round(box.bottom) - top : image.height;
        const context = Object.assign(document.createElement('canvas'), { width, height }).getContext('2d')!;
        context.drawImage(image, -left, -top);
        return context.getImageData(0, 0, width, height).data;
      };
      const [a, b] = [await pixelsOf(before), await pixelsOf(after)];
      const counts = { bodyCount: 0, bodyChanged: 0, iceCount: 0, iceChanged: 0 };
      for (let at = 0; at < a.length; at += 4) {
        const light = a[at]! + a[at + 1]! + a[at + 2]!;
        const isChanged = Math.abs(b[at]! + b[at + 1]! + b[at + 2]! - light) > 2;
        if (light < 300) {
          counts.bodyCount++;
          if (isChanged) counts.bodyChanged++;
        } else if (light > 630) {
          counts.iceCount++;
          if (isChanged) counts.iceChanged++;
        }
      }
      return counts;
    },
    { before, after, box },
  );
