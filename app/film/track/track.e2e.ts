import type { Locator } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import {
  clickFilm,
  distance,
  frozenAndPinned,
  jumpTo,
  onPage,
  shownFrame,
  truthOf,
  withFreshPage,
} from '../../../test/film-page.ts';

const app = appOfFile();

const frames = truthOf('B.json');
const truthAt = (frameIndex: number) => frames.find(one => one.i === frameIndex)!;
const skaterAt = (frameIndex: number, id: string) => truthAt(frameIndex).skaters.find(one => one.id === id)!;

/** When he was over the red line, film seconds: between two frames of the truth he goes straight. */
const overRedS = (id: string): number => {
  const [before, after] = [skaterAt(360, id).ice[0], skaterAt(419, id).ice[0]];
  return ((360 + (59 * -before) / (after - before)) * 1001) / 60_000;
};

/** Following two for six seconds may be over before a hand of Playwright is at the act: Stop is pressed in the page, as soon as it stands there. */
const stoppedAtOnce = (again: Locator): Promise<void> =>
  again.evaluate(
    act =>
      new Promise<void>(resolve => {
        const room = act.closest('[data-testid="followed"]')!;
        const watch = new MutationObserver(() => {
          const stop = [...room.querySelectorAll('button')].find(one => one.textContent?.trim() === 'Stop');
          if (!stop) return;
          watch.disconnect();
          stop.click();
          resolve();
        });
        watch.observe(room, { subtree: true, childList: true, characterData: true });
        (act as HTMLButtonElement).click();
      }),
  );

it('follows two skaters from a freeze, is corrected by dragging, tells speed and gap with their ±, and makes a drill', {
  timeout: 400_000,
}, async () => {
  await withFreshPage(app, async page => {
    await frozenAndPinned(page, app.url, 'B.mp4', truthAt(300));
    await page.getByRole('button', { name: 'Place one of us' }).click();
    for (const id of ['L21', 'L14']) await clickFilm(page, skaterAt(300, id).foot);
    // A ring laid now goes with him once he is followed.
    await page.keyboard.press('Escape');
    await page.keyboard.press('Shift+m');
    await page.getByRole('button', { name: 'Ring', exact: true }).click();
    await clickFilm(page, skaterAt(300, 'L21').foot);
    await page.getByText(/while the freeze of .* stands/).waitFor();
    await page.keyboard.press('Shift+m');
    await page.getByRole('button', { name: '3 s each way' }).click();
    await page.getByTestId('carried-stretch').waitFor({ timeout: 240_000 });
    await page.getByRole('button', { name: 'Follow all 2' }).click();
    const followed = page.getByTestId('followed');
    const told = (name: string) => followed.getByRole('listitem').filter({ hasText: name });
    await expect
      .poll(() => told('F1').textContent(), { timeout: 120_000 })
      .toMatch(/0:0[23].* to 0:0\d.*1 set by hand/);

    // Two seconds on his feet are set by hand; halfway he is then where he was, with a ±.
    const ring = page.locator('.track-layer [data-role="F1"]');
    const at = async () =>
      [Number(await ring.getAttribute('data-x-m')), Number(await ring.getAttribute('data-y-m'))] as const;
    await jumpTo(page, '420');
    await shownFrame(page, 420);
    await followed.getByRole('button', { name: 'Set the feet of F1 here' }).click();
    await clickFilm(page, skaterAt(420, 'L21').foot);
    await followed.getByRole('button', { name: 'F2' }).first().click();
    await followed.getByRole('button', { name: 'Set the feet of F2 here' }).click();
    await clickFilm(page, skaterAt(420, 'L14').foot);
    for (const one of ['F1', 'F2'])
      await expect.poll(() => told(one).textContent(), { timeout: 120_000 }).toMatch(/2 set by hand/);
    await jumpTo(page, '360');
    await shownFrame(page, 360);
    await expect
      .poll(async () => distance(await at(), skaterAt(360, 'L21').ice), { timeout: 120_000 })
      .toBeLessThan(0.5);

    const ringPx = () =>
      page
        .locator('.marks-drawn path')
        .last()
        .evaluate(one => {
          const box = (one as SVGGraphicsElement).getBBox();
          return [box.x + box.width / 2, box.y + box.height / 2] as const;
        });
    await expect.poll(async () => distance(await ringPx(), skaterAt(360, 'L21').foot)).toBeLessThan(25);

    // Dragged on to his skates, the ring is set by hand too, and is surer for it.
    const from = (await ring.locator('.pm-dot').boundingBox())!;
    const to = await onPage(page, skaterAt(360, 'L21').foot);
    await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
    await page.mouse.down();
    await page.mouse.move(to.x - 4, to.y, { steps: 3 });
    await page.mouse.move(to.x, to.y);
    await page.mouse.up();
    await expect.poll(() => told('F1').textContent(), { timeout: 120_000 }).toMatch(/3 set by hand/);
    await expect
      .poll(async () => distance(await at(), skaterAt(360, 'L21').ice), { timeout: 120_000 })
      .toBeLessThan(0.25);
    await followed.getByRole('button', { name: 'F1' }).first().click();
    const charts = page.getByTestId('time-charts');
    await expect.poll(() => charts.textContent()).toMatch(/Speed of F1 \d\.\d ± \d\.\d m\/s here/);
    await charts.getByRole('combobox').selectOption({ label: 'F2, us' });
    await expect.poll(() => charts.textContent()).toMatch(/Gap of F1 to F2 \d+\.\d ± \d\.\d m here/);
    expect(await seriousViolations(page)).toEqual([]);

    // The hand is one step of undo.
    await page.keyboard.press('Control+z');
    await expect.poll(() => told('F1').textContent()).toMatch(/2 set by hand/);

    // Who was over a line first: said only where the lead is larger than its ±; else that it cannot be told.
    const readings = page.locator('.track-readings');
    await readings.getByLabel('Line').selectOption({ label: 'the red line' });
    await readings.getByText('none of them crossed it in this stretch').waitFor();
    await readings.getByLabel('Which way').selectOption({ label: 'going forward' });
    const over = page.getByTestId('over-line');
    await expect.poll(() => over.textContent()).toMatch(/cannot tell who was first|F2 first/);
    const [, leadS, plusMinusS] = /(0\.\d\d),.*?± (\d\.\d\d) s/.exec((await over.textContent())!)!;
    expect(Math.abs(Number(leadS) - (overRedS('L21') - overRedS('L14')))).toBeLessThan(Number(plusMinusS));

    // From loss to regain, as marked.
    await jumpTo(page, '330');
    await shownFrame(page, 330);
    await page.keyboard.press('n');
    await page.getByText('What came of it').waitFor();
    for (const [frame, key] of [
      [340, '1'],
      [400, '3'],
    ] as const) {
      await jumpTo(page, `${frame}`);
      await shownFrame(page, frame);
      await page.keyboard.press(key);
    }
    await expect
      .poll(() => readings.getByRole('row').filter({ hasText: 'From loss to regain' }).textContent())
      .toMatch(/1\.00.*± 0\.01 s/);

    // Following is stopped by a press: what was found stays as it was.
    const kept = await told('F2').textContent();
    await stoppedAtOnce(followed.getByRole('button', { name: 'Follow all again' }));
    await expect.poll(() => followed.getByRole('progressbar').count()).toBe(0);
    await expect.poll(() => told('F2').textContent()).toBe(kept);

    // Moved in the freeze he is followed from, his hand there moves with him.
    await jumpTo(page, '300');
    await shownFrame(page, 300);
    const placed = page.locator('.freeze-layer [data-thing="skater"]').nth(1);
    const dotX = (of: Locator) => of.locator('.pm-dot').getAttribute('cx').then(Number);
    const before = await dotX(placed);
    await placed.focus();
    await page.keyboard.press('Shift+ArrowRight');
    await expect.poll(() => dotX(placed)).toBeGreaterThan(before);
    const after = await dotX(placed);
    await page.getByRole('button', { name: 'Close the freeze' }).click();
    await expect.poll(() => dotX(page.locator('.track-layer [data-role="F2"]'))).toBeCloseTo(after, 1);

    // And the other way: his hand dragged there moves him in the freeze, and one step takes both back.
    const his = page.locator('.track-layer [data-role="F2"]');
    const grip = (await his.locator('.pm-dot').boundingBox())!;
    await page.mouse.move(grip.x + grip.width / 2, grip.y + grip.height / 2);
    await page.mouse.down();
    await page.mouse.move(grip.x + 30, grip.y, { steps: 4 });
    await page.mouse.up();
    await expect.poll(() => dotX(his)).toBeGreaterThan(after + 10);
    const dragged = await dotX(his);
    const inFreeze = async (): Promise<number> => {
      await page.locator('.freeze-list button').first().click();
      const x = await dotX(placed);
      await page.getByRole('button', { name: 'Close the freeze' }).click();
      await his.waitFor();
      return x;
    };
    expect(await inFreeze()).toBeCloseTo(dragged, 1);
    await page.keyboard.press('Control+z');
    await expect.poll(() => dotX(his)).toBeCloseTo(after, 1);
    expect(await inFreeze()).toBeCloseTo(after, 1);

    await page.getByRole('button', { name: 'Make a drill of this stretch' }).click();
    await page.waitForURL(/\/drills\//);
    await expect.poll(() => page.getByLabel(/^F1/).count()).toBeGreaterThan(0);
  });
});
