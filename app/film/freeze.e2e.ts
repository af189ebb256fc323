import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { appOfFile } from '../../test/app-of-file.ts';
import { seriousViolations } from '../../test/axe.ts';
import {
  clickFilm,
  distance,
  filmPath,
  jumpTo,
  onPage,
  openFilmFile,
  placedAt,
  shownFrame,
  toFilm,
  truthOf,
  withFreshPage,
} from '../../test/film-page.ts';
import { landmarkWords } from './landmark-words.ts';

const app = appOfFile();

const withPage = (work: (page: Page) => Promise<void>) => withFreshPage(app, work);

// Ten marks, spread over the sheet, none with a skater in front (frame 180 of film A).
const TEN = [
  'endSpot-x+y',
  'endSpot-x-y',
  'endSpot+x+y',
  'endSpot+x-y',
  'neutralSpot-x+y',
  'neutralSpot+x-y',
  'neutralSpot+x+y',
  'centreLine.boards+y',
  'blueLineInner-x.boards+y',
  'blueLineInner+x.boards+y',
];
const truth = truthOf('A.json').find(one => one.i === 180)!;
const seen = truth.skaters.filter(one => one.see === 'clear' && one.footSeen && !one.id.startsWith('O'));
const ours = seen.filter(one => one.id.startsWith('L') && one.id !== 'L31');
const theirs = seen.filter(one => one.id.startsWith('Q') && one.id !== 'Q30');
const truthApart = () => distance(ours[0]!.ice, theirs[0]!.ice);

const measuredGap = async (page: Page): Promise<{ value: number; plusMinus: number }> => {
  const words = (await page.locator('[data-testid="measured"] td.r').textContent()) ?? '';
  const figure = /(\d+\.\d)[^±]*± (\d+\.\d) m/.exec(words);
  if (!figure) throw new Error(`no figure with its ± in "${words}"`);
  return { value: Number(figure[1]), plusMinus: Number(figure[2]) };
};

it('pins ten marks by clicking, places skaters within 0.4 m, and measures a gap within its ±', {
  timeout: 180_000,
}, async () => {
  await withPage(async page => {
    await openFilmFile(page, app.url, filmPath('A.mp4'));
    await jumpTo(page, '180');
    await shownFrame(page, 180);
    await page.keyboard.press('f');
    // What cannot be done yet stays readable under the pointer: no ground of an act that can.
    const drill = page.getByRole('button', { name: 'Make a drill of this freeze' });
    await drill.hover();
    await expect
      .poll(() => drill.evaluate(one => getComputedStyle(one).backgroundColor))
      .toBe('rgba(0, 0, 0, 0)');
    const next = page.getByLabel('Next mark');
    for (const [i, landmark] of TEN.entries()) {
      await next.selectOption(landmark);
      await clickFilm(page, truth.landmarks[landmark]!);
      await page.locator('.pm-pin').nth(i).waitFor();
      if (i === 0) expect(await page.getByTestId('refused').textContent()).toMatch(/One pin cannot hold/);
    }
    await page.getByTestId('held').waitFor();
    await page.getByRole('button', { name: 'Place one of us' }).click();
    for (const one of ours) await clickFilm(page, one.foot);
    await page.getByRole('button', { name: 'Place one of them' }).click();
    for (const one of theirs) await clickFilm(page, one.foot);
    const roles = { us: ['F1', 'F2', 'F3', 'D1', 'D2'], them: ['X1', 'X2', 'X3', 'X4', 'X5'] };
    expect(await page.locator('.map-person').count()).toBe(ours.length + theirs.length);
    for (const [i, one] of ours.entries()) {
      expect(distance(await placedAt(page, roles.us[i]!), one.ice)).toBeLessThan(0.4);
    }
    for (const [i, one] of theirs.entries()) {
      expect(distance(await placedAt(page, roles.them[i]!), one.ice)).toBeLessThan(0.4);
    }
    await page.getByRole('button', { name: 'Measure' }).click();
    await clickFilm(page, ours[0]!.foot);
    await clickFilm(page, theirs[0]!.foot);
    const { value, plusMinus } = await measuredGap(page);
    expect(Math.abs(value - truthApart())).toBeLessThanOrEqual(plusMinus + 0.05);
    // The puck goes where it is pressed, though somebody stands there; then no press is waited for, nor after Escape.
    const puck = page.getByRole('button', { name: 'Puck', exact: true });
    const isArmed = () => puck.getAttribute('aria-pressed');
    await puck.click();
    await clickFilm(page, [ours[0]!.foot[0] + 4, ours[0]!.foot[1] + 3]);
    await page.locator('.pm-puck').waitFor();
    await expect.poll(isArmed).toBe('false');
    await puck.click();
    await page.keyboard.press('Escape');
    await expect.poll(isArmed).toBe('false');
    // Drawing puts it away too, and to take it up again ends the drawing.
    const draw = page.getByRole('button', { name: /^Draw/ });
    await puck.click();
    await draw.click();
    await expect.poll(isArmed).toBe('false');
    await puck.click();
    await expect.poll(() => draw.getAttribute('aria-pressed')).toBe('false');
    await page.keyboard.press('Escape');
    // Whether one of us may be there without a mark is said, and taken back, by one who looks.
    const without = page.getByLabel('Of us without a mark');
    await without.selectOption('nobody in the picture');
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(() => without.inputValue()).toBe('');
    // Each change is one step back.
    const pins = page.locator('.pm-pin');
    await pins.first().focus();
    await page.keyboard.press('Delete');
    await expect.poll(() => pins.count()).toBe(9);
    await page.keyboard.press('Control+z');
    await expect.poll(() => pins.count()).toBe(10);
    await page.getByRole('button', { name: 'Redo' }).click();
    await expect.poll(() => pins.count()).toBe(9);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => pins.count()).toBe(10);
    expect(await seriousViolations(page)).toEqual([]);
  });
});

it('asks which sheet it is when the pins fit another one, and measures on that', {
  timeout: 180_000,
}, async () => {
  await withPage(async page => {
    await openFilmFile(page, app.url, filmPath('A.mp4'));
    // A new game is not named after the file, and what is pressed goes to the film, not into its name.
    expect(await page.evaluate(() => document.activeElement?.tagName)).not.toBe('INPUT');
    expect(await page.getByLabel('Opponent').inputValue()).toBe('');
    // Dated today, but there is film of it: it is not the next game.
    expect(await page.locator('.next-game').filter({ hasText: 'without a name' }).count()).toBe(0);
    await page.getByLabel('Sheet').selectOption('60x30m');
    await jumpTo(page, '180');
    await shownFrame(page, 180);
    await page.keyboard.press('f');
    for (const [i, landmark] of TEN.entries()) {
      await page.getByLabel('Next mark').selectOption(landmark);
      await clickFilm(page, truth.landmarks[landmark]!);
      await page.locator('.pm-pin').nth(i).waitFor();
    }
    const asks = page.getByTestId('which-sheet');
    await expect.poll(() => asks.textContent()).toMatch(/fit 200 × 85 ft far better than 60 × 30 m/);
    expect(await seriousViolations(page)).toEqual([]);
    await asks.getByRole('button', { name: 'It is 200 × 85 ft' }).click();
    await expect.poll(() => asks.count()).toBe(0);
    await page.getByRole('button', { name: 'Place one of us' }).click();
    await clickFilm(page, ours[0]!.foot);
    expect(distance(await placedAt(page, 'F1'), ours[0]!.ice)).toBeLessThan(0.4);
  });
});

it('does the same by keys alone', { timeout: 240_000 }, async () => {
  await withPage(async page => {
    await openFilmFile(page, app.url, filmPath('A.mp4'));
    await tabTo(page, '.jump-entry');
    await page.keyboard.type('180');
    await page.keyboard.press('Enter');
    await shownFrame(page, 180);
    await tabTo(page, '.pulse');
    await page.keyboard.press('f');
    for (const landmark of TEN.slice(0, 6)) {
      await tabTo(page, '.landmark-select select');
      await page.keyboard.type(landmarkWords(landmark));
      await expect.poll(() => page.locator('.landmark-select select').inputValue()).toBe(landmark);
      await pressFilm(page, truth.landmarks[landmark]!);
    }
    await expect.poll(() => page.locator('.pm-pin').count()).toBe(6);
    for (const [act, who] of [
      ['Place one of us', ours[0]!],
      ['Place one of them', theirs[0]!],
    ] as const) {
      await tabTo(page, `button:text("${act}")`);
      await page.keyboard.press('Enter');
      await pressFilm(page, who.foot);
    }
    expect(distance(await placedAt(page, 'F1'), ours[0]!.ice)).toBeLessThan(0.4);
    expect(distance(await placedAt(page, 'X1'), theirs[0]!.ice)).toBeLessThan(0.4);
    await tabTo(page, 'button:text-is("Measure")');
    await page.keyboard.press('Enter');
    for (const side of ['us', 'them']) {
      await tabTo(page, `.pm-person.${side}`);
      await page.keyboard.press('Enter');
    }
    const { value, plusMinus } = await measuredGap(page);
    expect(Math.abs(value - truthApart())).toBeLessThanOrEqual(plusMinus + 0.05);
  });
});

it('marks a moment in three presses, and gives it back when it was taken out', {
  timeout: 120_000,
}, async () => {
  await withPage(async page => {
    await openFilmFile(page, app.url, filmPath('A.mp4'));
    await jumpTo(page, '4.0');
    await shownFrame(page, 120);
    await page.keyboard.press('m');
    await page.keyboard.press('2');
    // In haste M is pressed twice: that says nothing.
    await page.keyboard.press('m');
    await page.keyboard.press('x');
    const rows = page.locator('.moments tbody tr:not(.moment-edit)');
    await expect.poll(() => rows.count()).toBe(1);
    expect(await rows.first().textContent()).toMatch(/0:04\.0[\s\S]*missed/);
    await page.getByRole('button', { name: 'Take out' }).click();
    await expect.poll(() => rows.count()).toBe(0);
    await page.getByRole('button', { name: 'Put it back' }).click();
    await expect.poll(() => rows.count()).toBe(1);
    expect(await seriousViolations(page)).toEqual([]);
  });
});

it('draws what the carrier can do, keeps a wanted place, and makes a drill that leads back', {
  timeout: 120_000,
}, async () => {
  await withPage(async page => {
    await openFreezeOfDemo(page);
    const options = await page.locator('.options tbody tr').allTextContents();
    expect(options.some(one => one.startsWith('skates it'))).toBe(true);
    expect(options.some(one => one.startsWith('off the boards to'))).toBe(true);
    const chances = options.map(one => Number(/(\d+)\u2009%/.exec(one)?.[1]));
    expect([...chances].sort((a, b) => b - a)).toEqual(chances);
    await page.locator('.pm-lane .pm-pass').first().waitFor();
    expect(await page.getByTestId('verdict').getAttribute('data-answer')).toMatch(/^(yes|no|cannotTell)$/);
    // A reading answers when it is asked why.
    await page.locator('.readings td.r button.why').first().click();
    expect(await page.locator('.readings .slip').first().textContent()).toMatch(
      /Measured on the ice through 10 pins/,
    );

    const [x, y] = await placedAt(page, 'C');
    await page.getByRole('button', { name: 'Wanted place' }).click();
    await page.locator('.pm-person.us[aria-label^="C,"] .hit').click();
    const ghost = page.locator('.map-wanted');
    const { x: left, y: top } = await onPage(page, [560, 345]);
    await page.mouse.click(left, top);
    await ghost.waitFor();
    await ghost.focus();
    for (let i = 0; i < 5; i++) await page.keyboard.press('Shift+ArrowLeft');
    expect(await page.locator('.pm-wanted').textContent()).toMatch(/C here, \d+\.\d m/);
    expect(await seriousViolations(page)).toEqual([]);

    await page.getByRole('button', { name: 'Make a drill of this freeze' }).click();
    await page.waitForURL(/\/drills\//);
    const back = page.locator('a[href*="?freeze="]').first();
    await back.waitFor();
    await back.click();
    await shownFrame(page, 234);
    expect(distance(await placedAt(page, 'C'), [x, y])).toBeLessThan(1e-6);
  });
});

it('pins by finger on a phone, with nothing wider than the page', { timeout: 120_000 }, async () => {
  const { page, context } = await app.newPage({ width: 390, height: 844 }, true);
  await openFilmFile(page, app.url, filmPath('A.mp4'));
  // The film begins in the upper half: what the game is called can be said later.
  expect((await page.getByTestId('picture').boundingBox())!.y).toBeLessThan(320);
  await jumpTo(page, '180');
  await shownFrame(page, 180);
  await page.getByRole('button', { name: /^Freeze/ }).tap();
  for (const [i, landmark] of TEN.entries()) {
    await page.getByLabel('Next mark').selectOption(landmark);
    await page.getByTestId('picture').scrollIntoViewIfNeeded();
    const { x, y } = await onPage(page, truth.landmarks[landmark]!);
    await page.touchscreen.tap(x, y);
    await page.locator('.pm-pin').nth(i).waitFor();
  }
  await page.getByTestId('held').waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  expect(await seriousViolations(page)).toEqual([]);
  await context.close();
});

/** Presses Tab until the focus is there, as somebody without a mouse would. */
const tabTo = async (page: Page, selector: string): Promise<void> => {
  const wanted = page.locator(selector).first();
  await wanted.waitFor();
  for (let presses = 0; presses < 150; presses++) {
    if (await wanted.evaluate(element => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`150 presses of Tab do not reach ${selector}`);
};

/** Moves the crosshair there by arrows, twenty pixels at a time with Ctrl, and presses Enter. */
const pressFilm = async (page: Page, px: readonly [number, number]): Promise<void> => {
  await tabTo(page, '.freeze-layer');
  for (const [axis, forwards, back] of [
    [0, 'ArrowRight', 'ArrowLeft'],
    [1, 'ArrowDown', 'ArrowUp'],
  ] as const) {
    const cross = page.locator('.crosshair');
    const from = Number(await cross.getAttribute(axis === 0 ? 'data-x' : 'data-y'));
    const by = Math.round(px[axis] - from);
    const key = by > 0 ? forwards : back;
    for (let i = 0; i < Math.floor(Math.abs(by) / 20); i++) await page.keyboard.press(`Control+${key}`);
    for (let i = 0; i < Math.abs(by) % 20; i++) await page.keyboard.press(key);
  }
  await page.keyboard.press('Enter');
};

it('the open freeze has an address: Back from its drill, a reload and a link open it again', {
  timeout: 120_000,
}, async () => {
  await withPage(async page => {
    const isOpen = () => page.getByTestId('options').waitFor();
    await openFreezeOfDemo(page);
    await expect.poll(() => new URL(page.url()).search).toMatch(/^\?freeze=.+/);
    const address = page.url();
    await page.reload();
    await isOpen();
    expect(page.url()).toBe(address);
    await page.getByRole('button', { name: 'Make a drill of this freeze' }).click();
    await page.waitForURL(/\/drills\//);
    await page.goBack();
    await isOpen();
    expect(page.url()).toBe(address);
  });
});

/** A freeze of the demo from the list of its moments, with what the carrier can do. */
const openFreezeOfDemo = async (page: Page): Promise<void> => {
  await toFilm(page, app.url);
  await page.getByRole('link', { name: 'Quillback Bay, at home' }).click();
  await shownFrame(page, 0);
  await page
    .getByRole('row', { name: /chases the puck/ })
    .getByRole('button', { name: 'freeze' })
    .click();
  await page.getByTestId('options').waitFor();
};
