import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import {
  clickFilm,
  distance,
  frozenAt,
  openFilmFile,
  placedAt,
  truthOf,
  withFreshPage,
} from '../../../test/film-page.ts';

const app = appOfFile();
const truth = truthOf('A.json').find(one => one.i === 180)!;

const frozen = async (page: Page): Promise<void> => {
  await frozenAt(page, app.url, 'A.mp4', truth);
  await page.getByRole('button', { name: /^Offer pins/ }).waitFor();
};
const offered = (page: Page) => page.locator('.offer-pin');
const pins = (page: Page) => page.locator('.pm-pin');
const names = (page: Page) =>
  offered(page).evaluateAll(all => all.map(one => one.getAttribute('data-landmark')!));

/** How far every candidate lies from its mark in the truth, pixels of the film. */
const missesPx = (page: Page, of = truth, called = (id: string) => id): Promise<number[]> =>
  offered(page)
    .evaluateAll(all =>
      all.map(one => {
        const hit = one.querySelector('.hit')!;
        return {
          landmark: one.getAttribute('data-landmark')!,
          at: [Number(hit.getAttribute('cx')), Number(hit.getAttribute('cy'))] as const,
        };
      }),
    )
    .then(all =>
      all.map(({ landmark, at }) => distance(at, of.landmarks[called(landmark)] ?? [Infinity, 0])),
    );

const plusMinus = (text: string | null): string[] => text?.match(/± \d+\.\d+/g) ?? [];

it('offers pins that lie on their marks, writes nothing before they are accepted, and takes all of them back in one step', {
  timeout: 180_000,
}, async () => {
  await withFreshPage(app, async page => {
    await frozen(page);
    await page.getByRole('button', { name: /^Offer pins/ }).click();
    const panel = page.getByTestId('pins-offer');
    await panel.waitFor({ timeout: 60_000 });
    const count = await offered(page).count();
    expect(count).toBeGreaterThanOrEqual(8);
    for (const miss of await missesPx(page)) expect(miss).toBeLessThan(2);
    // The lines as they would lie are drawn; nothing holds the picture yet.
    expect((await page.locator('.offer-paint').getAttribute('d'))!.length).toBeGreaterThan(1000);
    expect(await pins(page).count()).toBe(0);
    expect(await page.getByTestId('held').count()).toBe(0);
    expect(await seriousViolations(page)).toEqual([]);

    // Turned round, the same crosses have the names of the other end.
    const before = await names(page);
    const onMap = () => page.getByTestId('map-pins-offered').getAttribute('d');
    const mapBefore = await onMap();
    await panel.getByRole('button', { name: 'Turn the ends round' }).click();
    expect(await onMap()).not.toBe(mapBefore);
    expect(await panel.textContent()).toMatch(/what is near in the picture is named far/);
    const turned = await names(page);
    expect(new Set([...before, ...turned]).size).toBeGreaterThan(before.length);
    await panel.getByRole('button', { name: 'Turn the ends round' }).click();
    expect(await names(page)).toEqual(before);

    // One is left out, the others are accepted together.
    await panel
      .getByRole('button', { name: /^Leave out/ })
      .first()
      .click();
    const before95 = plusMinus(await panel.getByTestId('would-hold').textContent());
    await panel.getByRole('button', { name: `Accept these ${count - 1}` }).click();
    await expect.poll(() => pins(page).count()).toBe(count - 1);
    await page.getByTestId('held').waitFor();
    // What was told before is what stands now: along, across, and at the worst place in view.
    expect(before95.length).toBe(3);
    expect(plusMinus(await page.getByTestId('held').textContent())).toEqual(before95);
    expect(await offered(page).count()).toBe(0);

    // They hold the picture: a skater stands where the truth has him.
    const one = truth.skaters.find(
      ({ see, footSeen, id }) => see === 'clear' && footSeen && id.startsWith('L'),
    )!;
    await page.getByRole('button', { name: 'Place one of us' }).click();
    await clickFilm(page, one.foot);
    expect(distance(await placedAt(page, 'F1'), one.ice)).toBeLessThan(0.4);
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('.map-person').count()).toBe(0);
    await page.keyboard.press('Control+z');
    await expect.poll(() => pins(page).count()).toBe(0);
  });
});

it('does it by keys, adds to pins that are there, and names the one that disagrees', {
  timeout: 180_000,
}, async () => {
  await withFreshPage(app, async page => {
    await frozen(page);
    const put = async (landmark: string, [x, y]: readonly [number, number]) => {
      const there = await pins(page).count();
      await page.getByLabel('Next mark').selectOption(landmark);
      await clickFilm(page, [x, y]);
      await pins(page).nth(there).waitFor();
    };
    await put('endSpot-x+y', truth.landmarks['endSpot-x+y']!);
    await put('endSpot+x+y', truth.landmarks['endSpot+x+y']!);
    // Put on the wrong place by eighty pixels.
    const [x, y] = truth.landmarks['neutralSpot-x-y']!;
    await put('neutralSpot-x-y', [x + 80, y]);
    await page.keyboard.press('Shift+p');
    const panel = page.getByTestId('pins-offer');
    await panel.waitFor({ timeout: 60_000 });
    expect(await page.getByTestId('offer-disagrees').textContent()).toMatch(
      /Your pin 3 does not go with what was found/,
    );
    expect(await panel.textContent()).toMatch(/The ends are as your pins have them/);
    const before = await names(page);
    expect(before).not.toContain('endSpot-x+y');
    // By keys alone: Delete leaves one out and takes it back, Enter accepts one.
    await offered(page).first().focus();
    await page.keyboard.press('Delete');
    expect(await offered(page).first().getAttribute('class')).toMatch(/out/);
    await page.keyboard.press('Delete');
    await page.keyboard.press('Enter');
    await expect.poll(() => pins(page).count()).toBe(4);
    expect(await names(page)).toEqual(before.slice(1));
    await page.keyboard.press('Shift+p');
    await expect.poll(() => offered(page).count()).toBe(0);
    expect(await pins(page).count()).toBe(4);
    await page.keyboard.press('Control+z');
    await expect.poll(() => pins(page).count()).toBe(3);
  });
});

it('offers none for a picture without a sheet in it, and says why', { timeout: 120_000 }, async () => {
  await withFreshPage(app, async page => {
    // The stands alone: the top left corner of the same film.
    await openFilmFile(
      page,
      app.url,
      new URL('../../../fixtures/film-kinds/vp8.webm', import.meta.url).pathname,
    );
    await page.getByRole('button', { name: /^Freeze/ }).click();
    await page.getByRole('button', { name: /^Offer pins/ }).click();
    const none = page.getByTestId('no-pins-offered');
    await none.waitFor({ timeout: 60_000 });
    await page.getByRole('button', { name: /^Put this away/ }).waitFor();
    expect(await none.textContent()).toMatch(/Try a frame/);
    expect(await none.textContent()).toMatch(/No pins are offered\. (No ice was found|Found: .* too little)/);
    expect(await offered(page).count()).toBe(0);
    expect(await page.locator('.offer-paint').count()).toBe(0);
    expect(await seriousViolations(page)).toEqual([]);
  });
});

it('takes one pin of the coach as given where by itself it offered none', { timeout: 120_000 }, async () => {
  await withFreshPage(app, async page => {
    const few = truthOf('B.json').find(one => one.i === 840)!;
    await frozenAt(page, app.url, 'B.mp4', few);
    await page.getByRole('button', { name: /^Offer pins/ }).click();
    const none = page.getByTestId('no-pins-offered');
    await none.waitFor({ timeout: 60_000 });
    expect(await none.textContent()).toMatch(/Name one or two marks by hand, then look again/);
    const again = page.getByRole('button', { name: 'Look again from your pins' });
    expect(await again.count()).toBe(0);
    await page.getByLabel('Next mark').selectOption('centreSpot');
    await clickFilm(page, few.landmarks.centreSpot!);
    await again.click();
    await offered(page).first().waitFor({ timeout: 60_000 });
    // The centre spot leaves open which end is which.
    const turned = (id: string) => id.replace(/[+-](?=[xy])/g, sign => (sign === '+' ? '-' : '+'));
    const worst = (misses: readonly number[]) => Math.max(...misses);
    const asOffered = worst(await missesPx(page, few));
    expect(Math.min(asOffered, worst(await missesPx(page, few, turned)))).toBeLessThan(2);
  });
});
