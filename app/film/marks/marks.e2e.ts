import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import {
  clickFilm,
  distance,
  jumpTo,
  onPage,
  shownFrame,
  toFilm,
  withFreshPage,
} from '../../../test/film-page.ts';

const app = appOfFile();

/** The picture's own pixels of a mark's middle. */
const markAt = (page: Page, nth: number): Promise<[number, number]> =>
  page
    .locator('.mark-grip')
    .nth(nth)
    .evaluate(one => {
      const box = (one as SVGGraphicsElement).getBBox();
      return [box.x + box.width / 2, box.y + box.height / 2];
    });

const act = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

it('lays marks on the ice of a frozen picture, moves them, keeps the picture, and stands there in playback', {
  timeout: 120_000,
}, async () => {
  await withFreshPage(app, async page => {
    await toFilm(page, app.url);
    await page
      .getByRole('link', { name: /Quillback Bay, away/ })
      .first()
      .click();
    await page.locator('.film-room').waitFor();
    // A picture that nothing ties to the ice takes no mark, and says why.
    await shownFrame(page, 0);
    await page.keyboard.press('Shift+m');
    await page.getByText('Marks lie on the ice in metres').first().waitFor();
    expect(await page.getByRole('button', { name: /^Ring/ }).getAttribute('aria-disabled')).toBe('true');
    // One press leads to where it is pinned.
    await page.getByRole('button', { name: 'To its pins' }).click();
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toMatch(/^Offer pins/);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await page.keyboard.press('Shift+m');

    await page.locator('.freeze-list button').first().click();
    await page.locator('.pm-person').first().waitFor();
    const frame = Number(await page.getByTestId('picture').getAttribute('data-frame'));
    const feet = await page
      .locator('.pm-person .pm-dot')
      .evaluateAll(all =>
        all.map(one => [Number(one.getAttribute('cx')), Number(one.getAttribute('cy'))] as const),
      );
    await page.keyboard.press('Shift+m');

    await act(page, 'Ring');
    await clickFilm(page, feet[4]!);
    await page.getByText(/while the freeze of .* stands/).waitFor();
    // With its first mark the freeze stands in playback, and undo takes back both.
    const stands = page.getByLabel('In playback it stands for');
    expect(await stands.inputValue()).toBe('3');
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('.mark-grip').count()).toBe(0);
    expect(await stands.inputValue()).toBe('0');
    await page.getByRole('button', { name: 'Redo', exact: true }).click();
    await page.getByText(/while the freeze of .* stands, 3 s in playback/).waitFor();
    const ring = await markAt(page, 0);
    expect(Math.hypot(ring[0] - feet[4]![0], ring[1] - feet[4]![1])).toBeLessThan(4);
    await page.getByLabel('Words').fill('late again');
    await expect.poll(() => page.locator('.marks-drawn text').allTextContents()).toContain('late again');

    // Two places in one pull: the distance is said with its ±.
    await act(page, 'Link');
    await pull(page, feet[4]!, feet[0]!);
    await expect
      .poll(() => page.locator('.marks-drawn text').allTextContents())
      .toEqual(expect.arrayContaining([expect.stringMatching(/^\d+\.\d ± \d\.\d m$/)]));
    expect(await page.locator('.marks-name').allTextContents()).toEqual(
      expect.arrayContaining(['seconds', expect.stringMatching(/^Link \S+ to \S+$/)]),
    );

    await dragBothEnds(page, feet);

    // A zone by keys alone: the crosshair to each corner, Enter; Enter once more at the last closes it.
    await act(page, 'Zone');
    await page.locator('.marks-layer').focus();
    for (const way of ['', 'Control+ArrowRight', 'Control+ArrowDown']) {
      for (let i = 0; i < 6 && way !== ''; i++) await page.keyboard.press(way);
      await page.keyboard.press('Enter');
    }
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.mark-grip').count()).toBe(3);
    const zone = page.getByRole('button', { name: /^Zone/, exact: false }).and(page.locator('.mark-grip'));
    await zone.focus();
    const before = await markAt(page, 2);
    await page.keyboard.press('Shift+ArrowRight');
    await expect.poll(async () => (await markAt(page, 2))[0]).toBeGreaterThan(before[0] + 10);
    await page.keyboard.press('Delete');
    await expect.poll(() => page.locator('.mark-grip').count()).toBe(2);
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('.mark-grip').count()).toBe(3);
    expect(await seriousViolations(page)).toEqual([]);
    // An arrow and a lane in one pull each, and then each of their ends by itself.
    for (const kind of ['Arrow', 'Lane']) {
      await act(page, kind);
      await pull(page, clearOf(feet, 0), clearOf(feet, 1));
      await dragBothEnds(page, feet);
    }

    // The picture as a file of the film's own size, with the marks in it.
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Keep as a picture' }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^Quillback Bay, away, .*\.png$/);
    const png = readFileSync(await download.path());
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([1280, 720]);
    const [dark, bare] = await inkRoundFeet(page, png.toString('base64'), feet[4]!);
    expect(dark).toBeGreaterThan(bare + 60);

    // Playback stands at the freeze as long as it says, and a press goes on.
    await page.getByLabel('In playback it stands for').fill('30');
    await page.keyboard.press('Tab');
    await act(page, 'Close the marks');
    await jumpTo(page, `${frame - 20}`);
    await shownFrame(page, frame - 20);
    await page.keyboard.press('l');
    const holds = page.getByTestId('holds');
    await holds.waitFor();
    await shownFrame(page, frame);
    expect(await holds.textContent()).toMatch(/stands (29|30) s, go on/);
    // Marks of the freeze are seen while it stands.
    await page.locator(`.marks-layer[data-frame="${frame}"] .mk-filmLine`).first().waitFor();
    await page.keyboard.press('k');
    await expect.poll(() => holds.count()).toBe(0);
    await jumpTo(page, `${frame - 8}`);
    await page.keyboard.press('l');
    await holds.click();
    await expect.poll(() => page.getByTestId('frame').textContent().then(Number)).toBeGreaterThan(frame + 3);
    await page.keyboard.press('k');
  });
});

type Px = readonly [number, number];

const pull = async (page: Page, from: Px, to: Px): Promise<void> => {
  const [a, b] = [await onPage(page, from), await onPage(page, to)];
  await page.mouse.move(a.x, a.y);
  await page.mouse.down();
  await page.mouse.move(b.x, b.y, { steps: 3 });
  await page.mouse.up();
};

/** Places on the ice of the picture with nobody near, each as far from the others as a mark is long. */
const clearOf = (feet: readonly Px[], nth: number): Px => {
  const found: Px[] = [];
  for (let y = 300; y <= 560; y += 65)
    for (let x = 200; x <= 1100; x += 60)
      if ([...feet, ...found].every(one => distance(one, [x, y]) > 110)) found.push([x, y]);
  return found[nth]!;
};

/** Pulls each end of the chosen mark to a free place: that end goes there, and the other one stays. */
const dragBothEnds = async (page: Page, feet: readonly Px[]): Promise<void> => {
  const handles = page.locator('.mark-handle');
  const places = () =>
    handles.evaluateAll(all =>
      all.map(one => [Number(one.getAttribute('cx')), Number(one.getAttribute('cy'))] as const),
    );
  await expect.poll(() => handles.count()).toBe(2);
  for (const end of [0, 1]) {
    const before = await places();
    const to = clearOf(feet, 2 + end);
    await pull(page, before[end]!, to);
    await expect.poll(async () => distance((await places())[end]!, to)).toBeLessThan(3);
    expect(distance((await places())[1 - end]!, before[1 - end]!)).toBeLessThan(1);
  }
};

/** How many clearly dark pixels lie round a place in a PNG, and in the film's own picture on the page. */
const inkRoundFeet = (
  page: Page,
  png: string,
  [x, y]: readonly [number, number],
): Promise<[number, number]> =>
  page.evaluate(
    async ([data, cx, cy]) => {
      const still = new Image();
      still.src = `data:image/png;base64,${data}`;
      await still.decode();
      const countIn = (source: CanvasImageSource) => {
        const canvas = new OffscreenCanvas(120, 60);
        const context = canvas.getContext('2d')!;
        context.drawImage(source, cx - 60, cy - 30, 120, 60, 0, 0, 120, 60);
        const { data: px } = context.getImageData(0, 0, 120, 60);
        let count = 0;
        for (let i = 0; i < px.length; i += 4) if (px[i]! < 40 && px[i + 1]! < 60 && px[i + 2]! < 90) count++;
        return count;
      };
      return [
        countIn(still),
        countIn(document.querySelector<HTMLCanvasElement>('canvas[data-testid="picture"]')!),
      ] as [number, number];
    },
    [png, x, y] as const,
  );
