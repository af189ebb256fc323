import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../test/app-of-file.ts';
import { seriousViolations } from '../../test/axe.ts';

const app = appOfFile();

const titles = (page: Page) => page.locator('[data-item] .block-title').allTextContents();
const head = (page: Page, title: string) =>
  page.locator('[data-item]', { hasText: title }).locator('.block-head');

describe('a practice', () => {
  it('is planned from nothing: blocks, minutes, clock times, and what is left of the ice', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/practices`);
    await page.getByRole('button', { name: 'Plan a practice' }).click();
    await page.getByText('An empty sheet of ice', { exact: false }).waitFor();
    // The highest of the demo is 31.
    expect(await page.getByRole('textbox', { name: 'Name of the practice' }).inputValue()).toBe(
      'Practice 32',
    );
    expect(await seriousViolations(page)).toEqual([]);
    for (const drill of ['Gap ladder', 'Second puck']) {
      await page.keyboard.press('a');
      await page.getByRole('button', { name: new RegExp(`^${drill}`) }).click();
      await head(page, drill).waitFor();
    }
    const minutes = page.getByRole('spinbutton', { name: 'Minutes', exact: true });
    await minutes.fill('20');
    await expect.poll(async () => (await head(page, 'Second puck').textContent()) ?? '').toContain('20 min');
    await page.getByText(/min left\.$/).waitFor();
    await page.reload();
    await head(page, 'Second puck').waitFor();
    expect(await titles(page)).toEqual(['Gap ladder', 'Second puck']);
    await context.close();
  });

  it('takes a drill in before the closing talk, opens it and says where it went', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/drills/drill-off-the-boards`);
    await page.getByRole('button', { name: 'Put in a practice' }).click();
    await page.getByRole('button', { name: /^Practice 31/ }).click();
    await head(page, 'Off the boards').waitFor();
    expect((await titles(page)).slice(-2)).toEqual(['Off the boards', 'Talk']);
    expect(await page.getByRole('textbox', { name: 'Name', exact: true }).inputValue()).toBe(
      'Off the boards',
    );
    await page.getByText(/^Put in: Off the boards, \d+ min from [\d:]+, before Talk\.$/).waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    // With another drill it has that one's name; a name of the coach's own stays.
    const drill = page.getByLabel('Drill', { exact: true });
    await drill.selectOption({ label: 'Gap ladder' });
    await head(page, 'Gap ladder').last().waitFor();
    expect(await head(page, 'Off the boards').count()).toBe(0);
    await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Our own');
    await drill.selectOption({ label: 'Second puck' });
    await page.locator('.way-back').getByRole('link', { name: 'Second puck' }).waitFor();
    await head(page, 'Our own').waitFor();
    await context.close();
  });

  it('is put in another order by key and by mouse, and undo takes each step back', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/practices/practice-2`);
    await head(page, 'Five together').waitFor();
    const before = await titles(page);
    await head(page, 'Five together').focus();
    await page.keyboard.press('Alt+ArrowLeft');
    await expect.poll(() => titles(page)).toEqual(swapped(before, 1));

    const hand = await head(page, 'Four corners').boundingBox();
    const goal = await head(page, 'Three on the heels').boundingBox();
    if (hand === null || goal === null) throw new Error('a block is not on the page');
    await page.mouse.move(hand.x + 20, hand.y + 10);
    await page.mouse.down();
    await page.mouse.move(goal.x + goal.width - 4, goal.y + 10, { steps: 8 });
    await page.mouse.up();
    await expect.poll(async () => (await titles(page)).indexOf('Four corners')).toBe(4);

    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await expect.poll(() => titles(page)).toEqual(before);
    await context.close();
  });

  it('lets a finger hold a block and carry it, and scroll by it when it does not hold', async () => {
    const { page, context } = await app.newPage({ width: 390, height: 844 }, true);
    await page.goto(`${app.url}/practices/practice-1`);
    await head(page, 'Four corners').waitFor();
    const finger = await context.newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', y?: number) =>
      finger.send('Input.dispatchTouchEvent', { type, touchPoints: y === undefined ? [] : [{ x: 60, y }] });
    const from = await head(page, 'Four corners').boundingBox();
    const to = await head(page, 'Gap ladder').boundingBox();
    if (from === null || to === null) throw new Error('a block is not on the page');
    await touch('touchStart', from.y + 20);
    await page.locator('.in-hand').waitFor();
    for (let step = 1; step <= 8; step += 1) {
      await touch('touchMove', from.y + 20 + ((to.y + to.height - from.y) * step) / 8);
    }
    await touch('touchEnd');
    await expect.poll(async () => (await titles(page)).indexOf('Four corners')).toBe(2);
    const before = await titles(page);
    await page.evaluate(() => window.scrollTo(0, 0));
    await touch('touchStart', 600);
    for (let step = 1; step <= 6; step += 1) await touch('touchMove', 600 - 50 * step);
    await touch('touchEnd');
    await expect.poll(() => page.evaluate(() => window.scrollY)).toBeGreaterThan(100);
    expect(await titles(page)).toEqual(before);
    await context.close();
  });

  it('knows who is missing, on the page and on the card', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/practices/practice-3`);
    const nakatani = page.getByRole('button', { name: '14 Nakatani' });
    await nakatani.click();
    await page.getByText('1 missing').waitFor();
    await page.getByText(/17 skaters, 2 goalies/).waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await page.getByRole('link', { name: 'Ice card' }).click();
    const card = page.getByRole('img', { name: /as it is printed/ });
    await card.waitFor();
    const words = (await card.textContent()) ?? '';
    expect(words).toContain('Missing: 14.');
    expect(words).not.toContain('Nakatani');
    expect(words).toContain('head knock');
    await context.close();
  });

  it('is printed on one page of lines and letters, A4 or letter', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/practices/practice-1/card`);
    await page.getByRole('img', { name: /as it is printed/ }).waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Download the PDF' }).click(),
    ]);
    const pdf = readFileSync(await download.path()).toString('latin1');
    expect(pdf.startsWith('%PDF-')).toBe(true);
    expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(1);
    expect(pdf).toMatch(/\/MediaBox \[0 0 595\.28 841\.89\]/);
    expect(pdf).not.toMatch(/\/Subtype \/Image/);
    // On letter paper too, from the file and from the browser's own print.
    await page.getByLabel('paper').selectOption('letter');
    await page.getByText('one page letter, black only').waitFor();
    const printed = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(printed.match(/\/Type \/Page\b/g)).toHaveLength(1);
    expect(printed).toMatch(/\/MediaBox \[0 0 612 792\]/);
    await context.close();
  });

  it.each([1440, 1024])('draws a habit’s minutes under their block, %i wide', async width => {
    const { page, context } = await app.newPage({ width, height: 900 });
    await page.goto(`${app.url}/practices/practice-3`);
    await page.locator('.served-line i').first().waitFor();
    const spansOf = (selector: string) =>
      page.locator(selector).evaluateAll(all =>
        all.map(one => {
          const { left, right } = one.getBoundingClientRect();
          return [Math.round(left), Math.round(right)].join();
        }),
      );
    const blocks = await spansOf('.plan .block');
    for (const bar of await spansOf('.served-line i')) expect(blocks).toContain(bar);
    await context.close();
  });

  it('has larger words everywhere when the browser’s letters are twice as large', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/practices/practice-3`);
    const sizes = async () => {
      await page.locator('.block-title').first().waitFor();
      return page.evaluate(() =>
        ['.strip .name', '.strip li a', '.block-title', '.served-name'].map(selector =>
          Number.parseFloat(getComputedStyle(document.querySelector(selector)!).fontSize),
        ),
      );
    };
    const usual = await sizes();
    const browser = await context.newCDPSession(page);
    await browser.send('Page.setFontSizes', { fontSizes: { standard: 32 } });
    await expect.poll(sizes).toEqual(usual.map(size => 2 * size));
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    await context.close();
  });

  it('leads back from a block to its drill', async () => {
    const { page, context } = await app.newPage();
    await page.goto(`${app.url}/practices/practice-3`);
    await head(page, 'Middle first').click();
    await page.locator('.way-back').getByRole('link', { name: 'Middle first' }).click();
    await page.waitForURL(/\/drills\/drill-middle-first/);
    await context.close();
  });

  it('has room for a finger on a phone', async () => {
    const { page, context } = await app.newPage({ width: 390, height: 844 }, true);
    await page.goto(`${app.url}/practices/practice-3`);
    await head(page, 'Middle first').waitFor();
    const small = await page
      .locator('main button:visible, a.act:visible')
      .evaluateAll(acts =>
        acts.filter(act => act.getBoundingClientRect().height < 44).map(act => act.textContent),
      );
    expect(small).toEqual([]);
    await context.close();
  });
});

function swapped(list: readonly string[], first: number): string[] {
  const copy = [...list];
  [copy[first], copy[first + 1]] = [copy[first + 1]!, copy[first]!];
  return copy;
}
