import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfEachTest } from '../../../test/app-of-file.ts';
import { dragFinger, type Place } from '../../../test/finger.ts';
import { withPage } from '../../../test/with-page.ts';

const app = appOfEachTest({ holdsReps: true });

const DRILL = '/drills/drill-middle-first';
const grab = (page: Page, name: RegExp | string) => page.locator('.board').getByRole('button', { name });
const body = (page: Page, role: string) => grab(page, new RegExp(`^${role}, one of`));
const points = (page: Page) => page.getByRole('button', { name: /point \d+ of the route$/ });

async function centreOf(page: Page, name: RegExp | string): Promise<Place> {
  const box = await grab(page, name).locator('.hit').boundingBox();
  if (box === null) throw new Error(`${name} is not on the board`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

type Drag = (from: Place, to: Place) => Promise<void>;

const byMouse =
  (page: Page): Drag =>
  async (from, to) => {
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 6 });
    await page.mouse.up();
  };

/** A pen on a screen, as the browser gets it: its pointer is no mouse and no finger. */
const byPen = (page: Page, context: BrowserContext): Drag => {
  return async (from, to) => {
    const line = await context.newCDPSession(page);
    const send = (type: 'mousePressed' | 'mouseMoved' | 'mouseReleased', at: Place) =>
      line.send('Input.dispatchMouseEvent', {
        type,
        ...at,
        button: 'left',
        buttons: type === 'mouseReleased' ? 0 : 1,
        clickCount: 1,
        pointerType: 'pen',
      });
    await send('mousePressed', from);
    for (let step = 1; step <= 6; step += 1)
      await send('mouseMoved', {
        x: from.x + ((to.x - from.x) * step) / 6,
        y: from.y + ((to.y - from.y) * step) / 6,
      });
    await send('mouseReleased', to);
    await line.detach();
  };
};

/** What a finger holds stands above it, so that it can be seen: so much further down it is where it would be by mouse. */
const LIFT_OF_26_PX = 35;

const byFinger =
  (page: Page, context: BrowserContext): Drag =>
  (from, to) =>
    dragFinger(page, context, from, { x: to.x, y: to.y + LIFT_OF_26_PX });

/** From each of these places of a disc, shares of its half width: the middle, and well away from it on every side. */
const WHERE = [
  [0, 0],
  [0, 0.6],
  [0, -0.6],
  [0.6, 0],
  [-0.6, 0],
] as const;

/** Who is chosen moves from wherever her disc is taken, and so does the end of her route; neither ever grows one. */
async function movesAsTaken(page: Page, drag: Drag): Promise<void> {
  const takes = async (name: RegExp | string, halfPx: number) => {
    const before = await points(page).count();
    await grab(page, name).scrollIntoViewIfNeeded();
    let byPx = 26;
    for (const [right, down] of WHERE) {
      const from = await centreOf(page, name);
      const at = { x: from.x + right * halfPx, y: from.y + down * halfPx };
      await drag(at, { x: at.x + byPx, y: at.y });
      await expect.poll(async () => Math.round((await centreOf(page, name)).x - from.x)).not.toBe(0);
      expect(await points(page).count()).toBe(before);
      byPx = -byPx;
    }
  };
  await body(page, 'F3').scrollIntoViewIfNeeded();
  const bodyPx = await body(page, 'F3').locator('.hit').boundingBox();
  await takes(/^F3, one of/, bodyPx!.width / 2);
  const last = `F3, point ${await points(page).count()} of the route`;
  const shown = await grab(page, last).locator('.shown').boundingBox();
  await takes(last, shown!.width / 2);
}

describe('each thing on the board has its own ground', () => {
  it('by mouse: a chosen skater and the end of her route are moved from wherever they are taken', () =>
    withPage(app, 'ground mouse', async page => {
      await page.goto(app.url + DRILL);
      await body(page, 'F3').locator('.hit').click();
      await movesAsTaken(page, byMouse(page));
    }));

  it('by pen', () =>
    withPage(app, 'ground pen', async (page, context) => {
      await page.goto(app.url + DRILL);
      await body(page, 'F3').locator('.hit').click();
      await movesAsTaken(page, byPen(page, context));
    }));

  it('by finger on a phone, where the disc and the handle beside it are 44 px wide each', () =>
    withPage(
      app,
      'ground finger',
      async (page, context) => {
        await page.goto(app.url + DRILL);
        await body(page, 'F3').locator('.hit').tap();
        const pull = await grab(page, 'Pull a route out of F3').locator('.hit').boundingBox();
        expect(pull!.width).toBeGreaterThanOrEqual(43.9);
        await movesAsTaken(page, byFinger(page, context));
      },
      { size: { width: 390, height: 844 }, touch: true },
    ));

  it('a skater set down a moment ago is moved, not drawn out, and a handle never lies over somebody else', () =>
    withPage(app, 'ground new', async page => {
      await page.goto(app.url + DRILL);
      await body(page, 'F3').waitFor();
      await page.getByRole('button', { name: 'One of us', exact: true }).click();
      const board = await page.locator('.board').boundingBox();
      const at = { x: board!.x + board!.width * 0.3, y: board!.y + board!.height * 0.6 };
      await page.mouse.click(at.x, at.y);
      const fresh = page.locator('.board [data-thing].is-chosen');
      await fresh.waitFor();
      const before = await fresh.locator('.hit').boundingBox();
      await byMouse(page)(at, { x: at.x + 60, y: at.y });
      await expect
        .poll(async () => Math.round((await fresh.locator('.hit').boundingBox())!.x - before!.x))
        .toBeGreaterThan(40);
      expect(await points(page).count()).toBe(0);
    }));
});

describe('what is chosen from beside the ice', () => {
  it('an act goes where the ice is pressed next, or to who is pressed; anything else pressed means something else', () =>
    withPage(app, 'aim', async page => {
      await page.goto(app.url + DRILL);
      await body(page, 'X2').locator('.hit').click();
      await page.locator('.hand-line').getByRole('button', { name: 'passes', exact: true }).click();
      await page.getByText('Press who gets the pass of X2').waitFor();
      await body(page, 'F3').locator('.hit').click();
      await page.locator('.act-row[aria-expanded=true]').getByText('passes to F3').waitFor();
      await page.keyboard.press('Control+z');

      await body(page, 'Co').locator('.hit').click();
      await page.locator('.hand-line').getByRole('button', { name: 'skates', exact: true }).click();
      await page.getByText('Press the ice where Co goes to').waitFor();
      const board = await page.locator('.board').boundingBox();
      const at = { x: board!.x + board!.width * 0.3, y: board!.y + board!.height * 0.8 };
      await page.mouse.click(at.x, at.y);
      const end = async () => (await centreOf(page, 'Co, point 1 of the route')).x - at.x;
      await expect.poll(async () => Math.abs(await end())).toBeLessThan(2);
      expect(await points(page).count()).toBe(1);
      await page.mouse.click(at.x, at.y - 60);
      await expect.poll(() => points(page).count()).toBe(0);

      // Set aside by a press beside the ice: the ice pressed after that lets go, as ever.
      await body(page, 'Co').locator('.hit').click();
      await page.locator('.hand-line').getByRole('button', { name: 'carries', exact: true }).click();
      const endBox = () => points(page).last().locator('.hit').boundingBox();
      const far = await endBox();
      await page.getByText('Set on the ice').click();
      await page.mouse.click(at.x, at.y - 60);
      await expect.poll(() => points(page).count()).toBe(0);
      await body(page, 'Co').locator('.hit').click();
      await points(page).last().waitFor();
      expect((await endBox())!.x).toBeCloseTo(far!.x, 0);
    }));

  it('by key: set down she has the keys, a pull by arrows is one point and one undo, and taken off the next has them', () =>
    withPage(app, 'keys stay', async page => {
      await page.goto(app.url + DRILL);
      await body(page, 'F3').waitFor();
      const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
      const key = (keys: string) => page.keyboard.press(keys);
      await page.getByRole('button', { name: 'One of us', exact: true }).press('Enter');
      await expect.poll(focused).toBe('F1, one of us');
      const before = await centreOf(page, /^F1, one of us/);
      await key('Shift+ArrowDown');
      await expect
        .poll(async () => Math.round((await centreOf(page, /^F1, one of us/)).y - before.y))
        .toBeGreaterThan(10);

      await key('p');
      await expect.poll(focused).toBe('Pull a route out of F1');
      for (let metres = 0; metres < 6; metres += 1) await key('Shift+ArrowRight');
      await key('ArrowUp');
      await expect.poll(() => points(page).count()).toBe(1);
      const from = await centreOf(page, /^F1, one of us/);
      const to = await centreOf(page, 'F1, point 1 of the route');
      const metrePx = (await page.locator('.board').boundingBox())!.width / 62;
      expect(Math.abs((to.x - from.x) / metrePx - 6)).toBeLessThan(0.4);
      await key('Enter');
      await page.locator('.acts-list .act-row').first().waitFor();
      await key('ArrowRight');
      await expect.poll(() => points(page).count()).toBe(2);
      await key('Control+z');
      await expect.poll(() => points(page).count()).toBe(1);
      await key('Control+z');
      await expect.poll(() => points(page).count()).toBe(0);
      expect(await body(page, 'F1').count()).toBe(1);

      await key('n');
      await body(page, 'F1').focus();
      await key('Delete');
      await expect.poll(() => body(page, 'F1').count()).toBe(0);
      await expect.poll(focused).toMatch(/, one of (us|them)$/);
      await key('?');
      await page
        .getByText('on a skater or anything else on the ice: move it 0.1 m, with Shift 1 m')
        .waitFor();
    }));
});

describe('what is held goes away', () => {
  const taken = async (page: Page, role: string) => {
    const from = await centreOf(page, new RegExp(`^${role}, one of`));
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x + 30, from.y + 10, { steps: 3 });
    return from;
  };

  it('by undo: the drag ends and the page stays', () =>
    withPage(app, 'gone by undo', async page => {
      await page.goto(app.url + DRILL);
      await body(page, 'F3').waitFor();
      await page.getByRole('button', { name: 'One of us', exact: true }).click();
      const board = await page.locator('.board').boundingBox();
      await page.mouse.click(board!.x + board!.width * 0.3, board!.y + board!.height * 0.6);
      const fresh = page.locator('.board [data-thing].is-chosen');
      const role = (await fresh.getAttribute('aria-label'))!.split(',')[0]!;
      const from = await taken(page, role);
      await page.keyboard.press('Control+z');
      await body(page, role).waitFor({ state: 'detached' });
      await page.mouse.move(from.x + 60, from.y + 20, { steps: 3 });
      await page.mouse.up();
      await body(page, 'F3').waitFor();
      expect(await body(page, role).count()).toBe(0);
      expect(await page.locator('.ghost-place').count()).toBe(0);
    }));

  it('by somebody in another window, from the ice and from the score: both pages stay, and she stays away', () =>
    // Two windows that are both seen: what is moved in a page behind another one waits a second for each step.
    withPage(app, 'gone by another', page =>
      withPage(app, 'who takes away', async other => {
        await page.goto(app.url + DRILL);
        await body(page, 'X1').waitFor();
        await other.goto(app.url + DRILL);
        await body(other, 'X1').locator('.hit').click();
        const from = await taken(page, 'X1');
        await other.keyboard.press('Delete');
        await body(page, 'X1').waitFor({ state: 'detached' });
        await page.mouse.move(from.x + 80, from.y + 20, { steps: 3 });
        await page.mouse.up();
        expect(await body(page, 'X1').count()).toBe(0);

        const name = page.locator('.score-name[aria-label^="F3"] .hit');
        await name.scrollIntoViewIfNeeded();
        const box = await name.boundingBox();
        await page.mouse.move(box!.x + 10, box!.y + 10);
        await page.mouse.down();
        await page.mouse.move(box!.x + 10, box!.y + 60, { steps: 4 });
        await body(other, 'F3').locator('.hit').click();
        await other.keyboard.press('Delete');
        await name.waitFor({ state: 'detached' });
        await page.mouse.move(box!.x + 10, box!.y + 90, { steps: 4 });
        await page.mouse.up();
        expect(await body(page, 'F3').count()).toBe(0);
        await page.getByRole('heading', { name: /^Score/ }).waitFor();
      }),
    ));
});
