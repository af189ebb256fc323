import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfEachTest } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import { dragFinger } from '../../../test/finger.ts';
import { withPage } from '../../../test/with-page.ts';

const app = appOfEachTest({ holdsReps: true });

const DRILL = '/drills/drill-middle-first';
const things = (page: Page) => page.locator('.board [data-thing]');
const picked = (page: Page) => page.locator('.board .grab.is-chosen');
const act = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const spot = (page: Page, role: string) => page.getByRole('button', { name: new RegExp(`^${role}, one of`) });

interface Place {
  readonly x: number;
  readonly y: number;
}

async function centreOf(page: Page, role: string): Promise<Place> {
  const box = await spot(page, role).locator('.hit').boundingBox();
  if (box === null) throw new Error(`${role} is not on the board`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** A place of the sheet by shares of its length and width, from the corner at the top left of the screen. */
async function placeOn(page: Page, across: number, down: number): Promise<Place> {
  const box = await page.locator('.board').boundingBox();
  if (box === null) throw new Error('no board');
  return { x: box.x + across * box.width, y: box.y + down * box.height };
}

async function dragMouse(page: Page, from: Place, to: Place): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 6 });
}

const iceOf = (page: Page, role: string): Promise<string | null> =>
  spot(page, role).getAttribute('transform');

describe('many things at once on the board', () => {
  it('by mouse: all in a rectangle, mirrored, copied to the other end, each one step of undo', () =>
    withPage(app, 'many by mouse', async page => {
      await page.goto(app.url + DRILL);
      await spot(page, 'F3').waitFor();
      const before = await iceOf(page, 'X1');
      const count = await things(page).count();
      await dragMouse(page, await placeOn(page, 0.42, 0.06), await placeOn(page, 0.78, 0.66));
      await page.mouse.up();
      await expect.poll(() => picked(page).count()).toBe(4);
      await page.getByText('4 things selected').waitFor();

      await act(page, 'Mirror').click();
      await expect
        .poll(() => iceOf(page, 'X1'))
        .toBe(before?.replace(/ (-?)([\d.]+)\)/, (_, sign, y) => ` ${sign === '-' ? '' : '-'}${y})`));
      await page.keyboard.press('Control+z');
      await expect.poll(() => iceOf(page, 'X1')).toBe(before);

      await act(page, 'Copy to the other end').click();
      await expect.poll(() => things(page).count()).toBe(count + 4);
      await page.getByText(/Ours stay ours, and play towards the other end/).waitFor();
      await spot(page, 'X3').waitFor();
      await page.keyboard.press('Control+z');
      await expect.poll(() => things(page).count()).toBe(count);
    }));

  it('by mouse: the hand is drawn to the red line, Alt lets it go free, Esc gives back, and over the boards nobody stands', () =>
    withPage(app, 'one by mouse', async page => {
      await page.goto(app.url + DRILL);
      await spot(page, 'F3').waitFor();
      const start = await iceOf(page, 'F3');
      const middle = await placeOn(page, 0.5, 0.9);
      await dragMouse(page, await centreOf(page, 'F3'), { x: middle.x + 3, y: middle.y });
      await page.getByText('on the red line').waitFor();
      await expect.poll(() => iceOf(page, 'F3')).toMatch(/^translate\(0 /);
      await expect.poll(() => page.locator('.ghost-place').count()).toBe(1);
      await page.keyboard.down('Alt');
      await page.mouse.move(middle.x + 4, middle.y);
      await expect.poll(() => iceOf(page, 'F3')).not.toMatch(/^translate\(0 /);
      await page.keyboard.up('Alt');
      await page.keyboard.press('Escape');
      await page.mouse.move(middle.x + 40, middle.y);
      await page.mouse.up();
      expect(await iceOf(page, 'F3')).toBe(start);
      expect(await picked(page).count()).toBe(1);

      const board = await placeOn(page, 0.4, 0);
      await dragMouse(page, await centreOf(page, 'F3'), { x: board.x, y: board.y - 40 });
      await page.locator('.refused-place').waitFor();
      await page.mouse.up();
      await page.getByText('It went back: F3 would be off the ice.').waitFor();
      expect(await iceOf(page, 'F3')).toBe(start);
    }));

  it('by mouse: a lozenge is pulled to who starts the act, a line of the drawing opens its act, two presses split it', () =>
    withPage(app, 'cue by mouse', async page => {
      await page.goto(app.url + DRILL);
      await spot(page, 'F3').locator('.hit').click();
      const point = await page
        .getByRole('button', { name: 'F3, point 2 of the route' })
        .locator('.hit')
        .boundingBox();
      await page.mouse.click(point!.x + point!.width / 2, point!.y + point!.height / 2);
      const lozenge = await page.locator('.cue-handle .hit').boundingBox();
      await dragMouse(
        page,
        { x: lozenge!.x + lozenge!.width / 2, y: lozenge!.y + lozenge!.height / 2 },
        await centreOf(page, 'X1'),
      );
      await page.getByText('when X1 receives').first().waitFor();
      await page.mouse.up();
      await expect.poll(() => act(page, 'when X1 receives').getAttribute('aria-pressed')).toBe('true');
      await act(page, 'when X1 shoots').click();
      await expect.poll(() => page.locator('.acts-list').textContent()).toContain('when X1 shoots');
      await page.getByRole('button', { name: 'F3, point 2 of the route' }).locator('.hit').dblclick();
      await expect.poll(() => page.locator('.acts-list > li').count()).toBe(2);
      await page.locator('.acts-list .act-row').first().click();
      await act(page, 'Join with the next route').click();
      await expect.poll(() => page.locator('.acts-list > li').count()).toBe(1);
    }));

  it('by key alone: next, add, mirror, copy and paste, what starts an act, take off, undo', () =>
    withPage(app, 'many by key', async page => {
      await page.goto(app.url + DRILL);
      await spot(page, 'F3').waitFor();
      const count = await things(page).count();
      const key = (keys: string) => page.keyboard.press(keys);
      const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
      while (!(await focused())?.startsWith('X1')) await key('n');
      await key('Enter');
      await key('n');
      await key('Shift+Enter');
      await expect.poll(() => picked(page).count()).toBe(2);
      const start = await iceOf(page, 'X1');
      await key('Shift+ArrowLeft');
      await expect.poll(() => iceOf(page, 'X1')).not.toBe(start);
      await key('Control+z');
      await expect.poll(() => iceOf(page, 'X1')).toBe(start);
      await key('m');
      await expect.poll(() => iceOf(page, 'X1')).not.toBe(start);
      await key('Control+z');
      await expect.poll(() => iceOf(page, 'X1')).toBe(start);
      await key('Control+c');
      await key('Control+v');
      await expect.poll(() => things(page).count()).toBe(count + 2);
      await key('Delete');
      await expect.poll(() => things(page).count()).toBe(count);
      await key('Control+z');
      await key('Control+z');
      await expect.poll(() => things(page).count()).toBe(count);
      await key('Escape');

      while (!(await focused())?.startsWith('F3')) await key('n');
      await key('Enter');
      await key('p');
      expect(await focused()).toBe('Pull a route out of F3');
      await key('Shift+ArrowDown');
      const open = page.getByRole('button', { name: 'F3, point 1 of the route' });
      await open.focus();
      await key('Enter');
      await key('c');
      expect(await focused()).toBe('What starts this act of F3');
      await key('ArrowRight');
      await page.locator('.cue-way').waitFor();
      await key('Escape');
      await page.locator('.cue-way').waitFor({ state: 'detached' });
      await key('ArrowRight');
      await key('Enter');
      await expect.poll(() => page.locator('.acts-list').textContent()).toMatch(/when /);
    }));

  it('a bad paste is refused in one sentence and changes nothing; a part from elsewhere is taken', () =>
    withPage(app, 'paste', async (page, context) => {
      await context.grantPermissions(['clipboard-read', 'clipboard-write']);
      await page.goto(app.url + DRILL);
      await spot(page, 'F3').waitFor();
      const count = await things(page).count();
      const paste = async (text: string) => {
        await page.evaluate(words => navigator.clipboard.writeText(words), text);
        await page.keyboard.press('Control+v');
      };
      await paste('{"icewright":"part of a drill","schema":1,"spots":{"a":{"rank":"x"}}}');
      await page
        .getByText(/^What was copied is a part of a drill that cannot be read: .*\(spots\.a/)
        .waitFor();
      await paste('hello');
      await page.getByText('What was copied is not a part of a drill.').waitFor();
      expect(await things(page).count()).toBe(count);
      const pylon = { kind: 'pylon', atM: { xM: 1, yM: 2 }, facingRad: 0 };
      await paste(
        JSON.stringify({
          icewright: 'part of a drill',
          schema: 1,
          spots: {},
          pucks: {},
          gear: { g: pylon },
          games: {},
          acts: [],
          outside: {},
        }),
      );
      await expect.poll(() => things(page).count()).toBe(count + 1);
    }));

  it('the freeze a drill was made from lies faint under it when asked', () =>
    withPage(app, 'ghosts', async page => {
      await page.goto(app.url + DRILL);
      await spot(page, 'F3').waitFor();
      expect(await page.locator('.freeze-ghosts').count()).toBe(0);
      await act(page, 'Ghosts of the freeze').click();
      await expect.poll(() => page.locator('.freeze-ghosts .mk-discGhost').count()).toBeGreaterThan(3);
      expect(await seriousViolations(page)).toEqual([]);
    }));

  it('by finger: a rest and a drag select, one of them moves all, and the page stays where it is', () =>
    withPage(
      app,
      'many by finger',
      async (page, context) => {
        await page.goto(app.url + DRILL);
        await spot(page, 'F3').waitFor();
        await page.locator('.board').scrollIntoViewIfNeeded();
        const x1 = await centreOf(page, 'X1');
        const x2 = await centreOf(page, 'X2');
        const from = { x: Math.min(x1.x, x2.x) - 16, y: Math.min(x1.y, x2.y) - 40 };
        const to = { x: Math.max(x1.x, x2.x) + 30, y: Math.max(x1.y, x2.y) + 16 };
        const slid = await page.evaluate(() => window.scrollY);
        await dragFinger(page, context, from, to, { restMs: 600 });
        await expect.poll(() => picked(page).count()).toBe(2);
        expect(await page.evaluate(() => window.scrollY)).toBe(slid);
        await dragFinger(page, context, x1, { x: x1.x + 60, y: x1.y + 60 });
        await expect.poll(async () => (await centreOf(page, 'X2')).x - x2.x).toBeGreaterThan(40);
        const apart = async () => (await centreOf(page, 'X2')).x - (await centreOf(page, 'X1')).x;
        expect(Math.abs((await apart()) - (x2.x - x1.x))).toBeLessThan(1);
        await act(page, 'Undo').click();
        await expect.poll(async () => Math.round((await centreOf(page, 'X2')).x - x2.x)).toBe(0);
        expect(await seriousViolations(page)).toEqual([]);
        const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        expect(over).toBeLessThanOrEqual(0);
      },
      { size: { width: 390, height: 844 }, touch: true },
    ));
});
