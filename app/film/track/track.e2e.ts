import { expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import {
  clickFilm,
  distance,
  filmPath,
  jumpTo,
  onPage,
  openFilmFile,
  pinTwelve,
  shownFrame,
  truthOf,
  withFreshPage,
} from '../../../test/film-page.ts';

const app = appOfFile();

const frames = truthOf('B.json');
const truthAt = (frameIndex: number) => frames.find(one => one.i === frameIndex)!;
const skaterAt = (frameIndex: number, id: string) => truthAt(frameIndex).skaters.find(one => one.id === id)!;

it('follows two skaters from a freeze, is corrected by dragging, tells speed and gap with their ±, and makes a drill', {
  timeout: 400_000,
}, async () => {
  await withFreshPage(app, async page => {
    await openFilmFile(page, app.url, filmPath('B.mp4'));
    await jumpTo(page, '60');
    await shownFrame(page, 60);
    await page.keyboard.press('f');
    await pinTwelve(page, truthAt(60));
    await page.getByRole('button', { name: 'Place one of us' }).click();
    for (const id of ['L21', 'L14']) await clickFilm(page, skaterAt(60, id).foot);
    await page.getByRole('button', { name: '3 s each way' }).click();
    await page.getByTestId('carried-stretch').waitFor({ timeout: 240_000 });
    await page.getByRole('button', { name: 'Follow all 2' }).click();
    const followed = page.getByTestId('followed');
    const told = (name: string) => followed.getByRole('listitem').filter({ hasText: name });
    await expect
      .poll(() => told('F1').textContent(), { timeout: 120_000 })
      .toMatch(/0:00\.0 to 0:0[23].*1 set by hand/);

    // Two seconds on his feet are set by hand; halfway he is then where he was, with a ±.
    const ring = page.locator('.track-layer [data-role="F1"]');
    const at = async () =>
      [Number(await ring.getAttribute('data-x-m')), Number(await ring.getAttribute('data-y-m'))] as const;
    await jumpTo(page, '180');
    await shownFrame(page, 180);
    await followed.getByRole('button', { name: 'Set the feet of F1 here' }).click();
    await clickFilm(page, skaterAt(180, 'L21').foot);
    await expect.poll(() => told('F1').textContent(), { timeout: 120_000 }).toMatch(/2 set by hand/);
    await jumpTo(page, '120');
    await shownFrame(page, 120);
    await expect
      .poll(async () => distance(await at(), skaterAt(120, 'L21').ice), { timeout: 120_000 })
      .toBeLessThan(0.5);

    // Dragged on to his skates, the ring is set by hand too, and is surer for it.
    const from = (await ring.locator('.pm-dot').boundingBox())!;
    const to = await onPage(page, skaterAt(120, 'L21').foot);
    await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
    await page.mouse.down();
    await page.mouse.move(to.x - 4, to.y, { steps: 3 });
    await page.mouse.move(to.x, to.y);
    await page.mouse.up();
    await expect.poll(() => told('F1').textContent(), { timeout: 120_000 }).toMatch(/3 set by hand/);
    await expect
      .poll(async () => distance(await at(), skaterAt(120, 'L21').ice), { timeout: 120_000 })
      .toBeLessThan(0.25);
    await followed.getByRole('button', { name: 'F1' }).first().click();
    const charts = page.getByTestId('time-charts');
    expect(await charts.textContent()).toMatch(/Speed of F1 \d\.\d ± \d\.\d m\/s here/);
    await charts.getByRole('combobox').selectOption({ label: 'F2, us' });
    expect(await charts.textContent()).toMatch(/Gap of F1 to F2 \d+\.\d ± \d\.\d m here/);
    expect(await seriousViolations(page)).toEqual([]);

    // The hand is one step of undo.
    await page.keyboard.press('Control+z');
    await expect.poll(() => told('F1').textContent()).toMatch(/2 set by hand/);

    await page.getByRole('button', { name: 'Make a drill of this stretch' }).click();
    await page.waitForURL(/\/drills\//);
    await expect.poll(() => page.getByLabel(/^F1/).count()).toBeGreaterThan(0);
  });
});
