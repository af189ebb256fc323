import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../test/app-of-file.ts';
import { seriousViolations } from '../../test/axe.ts';

const app = appOfFile();

const open = async (size?: { width: number; height: number }, touch = false) => {
  const { page, context } = await app.newPage(size, touch);
  await page.goto(`${app.url}/drills/drill-middle-first`);
  await now(page).waitFor();
  return { page, context };
};

const now = (page: Page) => page.getByRole('slider', { name: 'Time of the rep' });
const nowS = async (page: Page) => Number(await now(page).getAttribute('aria-valuenow'));
const act = (page: Page, said: RegExp) => page.getByRole('button', { name: said });
const F3_SKATES = /^F3 skates, /;

/** When an act starts, read where a screen reader reads it. */
const startOf = async (page: Page, said: RegExp): Promise<number> => {
  const name = await act(page, said).getAttribute('aria-label');
  return Number(/(?:, |at )([\d.]+)(?: to| s)/.exec(name ?? '')?.[1]);
};

const middleOf = async (page: Page, said: RegExp) => {
  await act(page, said).scrollIntoViewIfNeeded();
  let box = await act(page, said).locator('.hit').boundingBox();
  // What comes into view has its mends looked for, whose words take more lines or fewer.
  for (let before = Number.NaN; before !== box?.y; ) {
    before = box?.y ?? Number.NaN;
    await page.waitForTimeout(300);
    box = await act(page, said).locator('.hit').boundingBox();
  }
  if (box === null) throw new Error(`${said} is not in the score`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2, width: box.width, height: box.height };
};

const undo = (page: Page) => page.getByRole('button', { name: 'Undo' }).click();

describe('the score', () => {
  it('by mouse: an act is drawn along and starts later, in words and by one step of undo', async () => {
    const { page, context } = await open();
    const before = await startOf(page, F3_SKATES);
    const at = await middleOf(page, F3_SKATES);
    await page.mouse.move(at.x, at.y);
    await page.mouse.down();
    await page.mouse.move(at.x + 60, at.y, { steps: 6 });
    const said = page.locator('.score-says [role=status]');
    await expect
      .poll(() => said.textContent())
      .toMatch(/^F3 waits [\d.]+ s more, when X2 receives: at [\d.]+ s\.$/);
    await page.mouse.up();
    await expect.poll(() => startOf(page, F3_SKATES)).toBeGreaterThan(before + 0.3);
    await act(page, /^F3 holds, .* starts when X2 receives$/).waitFor();
    await undo(page);
    await expect.poll(() => startOf(page, F3_SKATES)).toBe(before);
    await context.close();
  });

  it('by key: an act starts a tenth later, is taken out, and comes back; without an act the same keys move the play', async () => {
    const { page, context } = await open();
    const PASS = /^Co passes to X2, /;
    const before = await startOf(page, PASS);
    await act(page, PASS).press('Shift+ArrowRight');
    await expect.poll(() => startOf(page, PASS)).toBeCloseTo(before + 1, 1);
    await act(page, PASS).press('ArrowRight');
    await expect.poll(() => startOf(page, PASS)).toBeCloseTo(before + 1.1, 1);
    await act(page, /^F3 skates/).press('Delete');
    await act(page, F3_SKATES).waitFor({ state: 'detached' });
    await undo(page);
    await act(page, F3_SKATES).waitFor();
    await now(page).press('ArrowRight');
    await now(page).press('ArrowRight');
    expect(await nowS(page)).toBeCloseTo(0.2, 6);
    await context.close();
  });

  it('by finger at 390 wide: an act is drawn along, everything to take is as large as a finger', async () => {
    const { page, context } = await open({ width: 390, height: 844 }, true);
    // The ice begins in the first third of a phone.
    expect((await page.locator('.board').boundingBox())?.y).toBeLessThan(844 / 3 + 8);
    const before = await startOf(page, F3_SKATES);
    const at = await middleOf(page, F3_SKATES);
    expect(Math.min(at.width, at.height)).toBeGreaterThanOrEqual(44);
    const finger = await context.newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', x: number) =>
      finger.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x, y: at.y }],
      });
    await touch('touchStart', at.x);
    for (let step = 1; step <= 8; step++) await touch('touchMove', at.x + 6 * step);
    await touch('touchEnd', at.x);
    await expect.poll(() => startOf(page, F3_SKATES)).toBeGreaterThan(before + 0.5);
    const small = await page.locator('.score [role=button] .hit, .score .loop-end .hit').evaluateAll(parts =>
      parts
        .map(part => part.getBoundingClientRect())
        .filter(box => box.width < 43.9 || box.height < 43.9)
        .map(box => `${box.width} × ${box.height}`),
    );
    expect(small).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    await context.close();
  });

  it('chooses on the ice what is chosen here, and here what is chosen there', async () => {
    const { page, context } = await open();
    await act(page, F3_SKATES).press('Enter');
    await page.getByRole('heading', { name: /^F3/ }).waitFor();
    await page.getByRole('button', { name: 'F3, point 1 of the route' }).waitFor();
    expect(await act(page, F3_SKATES).getAttribute('aria-pressed')).toBe('true');
    await page.getByRole('button', { name: /^X1, one of/ }).press('Enter');
    await expect.poll(() => act(page, /^X1, stave/).getAttribute('aria-pressed')).toBe('true');
    expect(await act(page, F3_SKATES).getAttribute('aria-pressed')).toBe('false');
    await context.close();
  });

  it('lays a lozenge on another stave, by mouse and by key: somebody else gives the cue', async () => {
    const { page, context } = await open();
    await page.locator('.score-says').scrollIntoViewIfNeeded();
    const to = await middleOf(page, /^X2, stave/);
    const from = await middleOf(page, /^D1 waits for cue/);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x, to.y, { steps: 8 });
    await page.mouse.up();
    await act(page, /^D1 keeps the gap to X1, .* starts when X2 receives$/).waitFor();
    await undo(page);
    await act(page, /^D1 keeps the gap to X1, .* starts when X1 receives$/).waitFor();
    await act(page, /^D1 waits for cue/).press('ArrowDown');
    await act(page, /^D1 keeps the gap to X1, .* starts when X2 receives$/).waitFor();
    await context.close();
  });

  it('lays a stave elsewhere, and adds what somebody does next', async () => {
    const { page, context } = await open();
    await act(page, /^F3, stave 5 of 6/).press('ArrowUp');
    await act(page, /^F3, stave 4 of 6/).waitFor();
    await act(page, /^F3, stave 4 of 6/).press('+');
    await page.waitForFunction(() => document.activeElement?.textContent === 'skates');
    await page.locator('.hand-line').getByRole('button', { name: 'More' }).press('Enter');
    await page.getByRole('button', { name: 'turns tight' }).press('Enter');
    await act(page, /^F3 turns 180° to the (left|right), /).waitFor();
    await context.close();
  });

  it('has the figures of an act and of its cue typed, beside the ice', async () => {
    const { page, context } = await open();
    await act(page, /^F3, stave/).press('Enter');
    await page.locator('.hand-line').getByRole('button', { name: 'More' }).press('Enter');
    await page.getByRole('button', { name: 'turns tight' }).press('Enter');
    await page.getByLabel('through', { exact: true }).fill('90');
    await page.getByLabel('to the', { exact: true }).selectOption('right');
    await act(page, /^F3 turns 90° to the right, /).waitFor();
    await page.getByLabel('starts', { exact: true }).selectOption({ label: 'when … comes to a place' });
    await page.getByLabel('from the red line').fill('6.5');
    await page.getByLabel('within', { exact: true }).fill('2');
    await expect.poll(() => page.locator('.drill-drawing .mk-place').getAttribute('cx')).toBe('6.5');
    expect(await page.locator('.drill-drawing .mk-place').getAttribute('r')).toBe('2');
    await context.close();
  });

  it('plays a stretch again and again, at the speed that was asked, in a browser that wants little motion', async () => {
    const { page, context } = await open();
    await page.getByRole('button', { name: 'Double speed' }).click();
    await page.getByRole('button', { name: 'Loop', exact: true }).click();
    const to = page.getByRole('slider', { name: 'Loop to' });
    for (let step = 0; step < 12 && Number(await to.getAttribute('aria-valuenow')) > 1.2; step++)
      await to.press('Shift+ArrowLeft');
    const endS = Number(await to.getAttribute('aria-valuenow'));
    expect(endS).toBeLessThan(2);
    await page
      .getByRole('heading', { level: 1 })
      .click({ position: { x: 0, y: 0 }, force: true })
      .catch(() => {});
    await page.getByRole('button', { name: /^Run/ }).click();
    const seen: number[] = [];
    const startMs = Date.now();
    while (Date.now() - startMs < 2500) {
      seen.push(await nowS(page));
      await page.waitForTimeout(30);
    }
    expect(Math.max(...seen)).toBeLessThanOrEqual(endS + 0.05);
    const rounds = seen.filter((timeS, index) => index > 0 && timeS < seen[index - 1]! - 0.3).length;
    expect(rounds).toBeGreaterThanOrEqual(2);
    // Less motion is asked for by this browser: nothing of the score moves but time itself.
    const moving = await page.locator('.score, .score *').evaluateAll(
      parts =>
        parts.filter(part => {
          const style = getComputedStyle(part);
          return style.animationName !== 'none' || Number.parseFloat(style.transitionDuration) > 0;
        }).length,
    );
    expect(moving).toBe(0);
    await page.getByRole('button', { name: /^Stop/ }).click();
    await context.close();
  });

  it('can be read and worked by everybody', async () => {
    const { page, context } = await open();
    await act(page, F3_SKATES).press('Enter');
    await page.getByRole('button', { name: 'Loop', exact: true }).click();
    expect(await seriousViolations(page)).toEqual([]);
    await context.close();
  });
});
