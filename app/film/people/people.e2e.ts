import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import { clickFilm, frozenAt, pinTwelve, truthOf, withFreshPage } from '../../../test/film-page.ts';

const app = appOfFile();
const truth = truthOf('A.json').find(one => one.i === 180)!;

const frozen = (page: Page) => frozenAt(page, app.url, 'A.mp4', truth);

const rings = (page: Page) => page.locator('.offer-ring');
const fixes = (page: Page) => page.locator('.map-person');
/** One in clear view, far from the others, and not among the first two that are found. */
const HAND = 'L31';
const seen = truth.skaters.filter(one => one.see !== 'outside');

/** How far each fix on the map lies from the nearest skater of the truth, metres. */
const missesOf = async (page: Page): Promise<number[]> => {
  const places = await fixes(page).evaluateAll(all =>
    all.map(one => [Number(one.getAttribute('data-x-m')), Number(one.getAttribute('data-y-m'))] as const),
  );
  return places.map(([x, y]) => Math.min(...seen.map(({ ice }) => Math.hypot(ice[0] - x, ice[1] - y))));
};

it('offers the people of a freeze by what they wear, takes a dress and one by one, and takes it back', {
  timeout: 180_000,
}, async () => {
  await withFreshPage(app, async page => {
    await frozen(page);
    const act = page.getByRole('button', { name: /^Offer people/ });
    expect(await act.textContent()).toMatch(/Not now: the pins must hold the picture first/);
    await pinTwelve(page, truth);
    await act.click();
    await page.getByTestId('offer').waitFor({ timeout: 60_000 });
    const offered = await rings(page).count();
    // Nothing is taken by itself.
    expect(await fixes(page).count()).toBe(0);
    expect(offered).toBeGreaterThan(seen.length / 2);
    expect(await seriousViolations(page)).toEqual([]);

    const dress = page.locator('.offer-group').first();
    const alike = await page.locator('.offer-ring[data-group="a"]').count();
    await dress.getByRole('button', { name: /are ours/ }).click();
    await expect.poll(() => fixes(page).count()).toBe(alike);
    await expect.poll(() => rings(page).count()).toBe(offered - alike);
    for (const missM of await missesOf(page)) expect(missM).toBeLessThan(1.2);

    // A ring that is pressed while somebody is placed is that one.
    await page.getByRole('button', { name: 'Place one of them' }).click();
    await rings(page).first().locator('.hit').click();
    await expect.poll(() => fixes(page).count()).toBe(alike + 1);
    await page.keyboard.press('Control+z');
    await expect.poll(() => fixes(page).count()).toBe(alike);
    await page.keyboard.press('Control+z');
    await expect.poll(() => fixes(page).count()).toBe(0);
    await expect.poll(() => rings(page).count()).toBe(offered);

    // Officials go without a trace in the game, and come again.
    const last = page.locator('.offer-group').last();
    await last.getByRole('button', { name: /officials/ }).click();
    await expect.poll(() => rings(page).count()).toBeLessThan(offered);
    await page.getByRole('button', { name: 'Offer them again' }).click();
    await expect.poll(() => rings(page).count()).toBe(offered);
    expect(await fixes(page).count()).toBe(0);
  });
});

it('takes by keys alone, and does not offer who was placed by hand', { timeout: 180_000 }, async () => {
  await withFreshPage(app, async page => {
    await frozen(page);
    await pinTwelve(page, truth);
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await page.keyboard.press('Shift+E');
    await page.getByTestId('offer').waitFor({ timeout: 60_000 });
    const offered = await rings(page).count();
    await rings(page).first().focus();
    await page.keyboard.press('u');
    await expect.poll(() => fixes(page).count()).toBe(1);
    await page.keyboard.press('t');
    await expect.poll(() => fixes(page).count()).toBe(2);
    await page.keyboard.press('Delete');
    await expect.poll(() => rings(page).count()).toBe(offered - 3);
    expect(await page.locator('.map-person.us').count()).toBe(1);
    // Nothing tells yet whether he is a forward.
    expect(await page.locator('.map-person.us').getAttribute('data-role')).toBe('U1');
    expect(await page.locator('.map-person.them').count()).toBe(1);
    await page.keyboard.press('Shift+E');
    await expect.poll(() => rings(page).count()).toBe(0);
    expect(await fixes(page).count()).toBe(2);
    // One more is set by hand: neither he nor the two are offered when it is looked again.
    const by = seen.find(one => one.id === HAND)!;
    await page.getByRole('button', { name: 'Place one of us' }).click();
    await clickFilm(page, by.foot);
    await expect.poll(() => fixes(page).count()).toBe(3);
    await page.getByRole('button', { name: /^Offer people/ }).click();
    await page.getByTestId('offer').waitFor({ timeout: 60_000 });
    expect(await rings(page).count()).toBe(offered - 3);
    // A dress taken by keys leaves the focus on the next one, or where people are offered.
    await page.locator('.offer-group button').first().focus();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect.poll(() => fixes(page).count()).toBeGreaterThan(3);
    const goesOn = () =>
      page.evaluate(() => document.activeElement?.closest('.offer-group, [data-act="offer-people"]') != null);
    await expect.poll(goesOn).toBe(true);
  });
});

it('is worked by finger on a phone', { timeout: 180_000 }, async () => {
  const { page, context } = await app.newPage({ width: 390, height: 844 }, true);
  await frozen(page);
  await pinTwelve(page, truth);
  await page.getByRole('button', { name: /^Offer people/ }).tap();
  await page.getByTestId('offer').waitFor({ timeout: 60_000 });
  const offered = await rings(page).count();
  for (const label of ['One by one', 'Ours', 'Theirs', 'Nobody we need']) {
    const act = page.getByTestId('offer').getByRole('button', { name: label, exact: true });
    expect((await act.boundingBox())!.height).toBeGreaterThanOrEqual(44);
    await act.tap();
  }
  await expect.poll(() => fixes(page).count()).toBe(2);
  await expect.poll(() => rings(page).count()).toBe(offered - 3);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  expect(await seriousViolations(page)).toEqual([]);
  await context.close();
});

it('says so when everybody who was found is placed', { timeout: 180_000 }, async () => {
  await withFreshPage(app, async page => {
    await frozen(page);
    await pinTwelve(page, truth);
    await page.getByRole('button', { name: /^Offer people/ }).click();
    await page.getByTestId('offer').waitFor({ timeout: 60_000 });
    while ((await page.locator('.offer-group').count()) > 0) {
      const before = await rings(page).count();
      await page
        .locator('.offer-group')
        .first()
        .getByRole('button', { name: /are theirs/ })
        .click();
      await expect.poll(() => rings(page).count()).toBeLessThan(before);
    }
    // Whose dress does not tell is in no dress, and taken alone.
    for (let left = await rings(page).count(); left > 0; left--) {
      await page.getByTestId('dress-not-clear').waitFor();
      await page.getByTestId('offer').getByRole('button', { name: 'One by one', exact: true }).click();
      await page.getByTestId('offer').getByRole('button', { name: 'Theirs', exact: true }).click();
      await expect.poll(() => rings(page).count()).toBe(left - 1);
    }
    expect(await page.getByTestId('offer').textContent()).toBe('Nobody was found who is not placed already.');
  });
});
