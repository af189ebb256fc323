import type { Locator, Page } from 'playwright-core';
import { onPage } from './film-page.ts';
import { tabTo } from './tab-to.ts';

/** What a coach does at the bench, whatever with. Each call is one step, and all are counted. */
export interface Hand {
  readonly page: Page;
  readonly stepCount: () => number;
  press(what: Locator): Promise<void>;
  write(field: Locator, words: string): Promise<void>;
  /** Takes a line of a menu by what it is kept as. */
  choose(menu: Locator, value: string): Promise<void>;
  /** A line of the drawer under a sentence. */
  take(option: Locator): Promise<void>;
  /** Presses the frozen picture at a pixel of the film. */
  pressFilm(px: readonly [number, number]): Promise<void>;
  /** Pulls a route out of a skater who is chosen, to the right. */
  pullRoute(role: string): Promise<void>;
}

/** With the mouse; words come from the keyboard, as they must. */
export function mouseHand(page: Page): Hand {
  let steps = 0;
  const step = async (work: Promise<unknown>) => {
    steps += 1;
    await work;
  };
  return {
    page,
    stepCount: () => steps,
    press: what => step(clickOn(what)),
    write: (field, words) => step(field.fill(words)),
    choose: (menu, value) => step(menu.selectOption(value)),
    take: option => step(option.click()),
    pressFilm: px => step(onPage(page, px).then(({ x, y }) => page.mouse.click(x, y))),
    pullRoute: role => step(dragPull(page, role)),
  };
}

/** With keys alone: Tab, arrows, Enter, letters. Nothing here touches the mouse, and nothing sets the focus by script. */
export function keysHand(page: Page): Hand {
  let steps = 0;
  const step = async (work: Promise<unknown>) => {
    steps += 1;
    await work;
  };
  return {
    page,
    stepCount: () => steps,
    press: what => step(tabTo(page, what).then(() => page.keyboard.press('Enter'))),
    write: (field, words) => step(writeByKeys(page, field, words)),
    choose: (menu, value) => step(chooseByKeys(page, menu, value)),
    take: option => step(takeByKeys(page, option)),
    pressFilm: px => step(pressFilmByKeys(page, px)),
    pullRoute: role => step(pullByKeys(page, role)),
  };
}

/** A thing on the ice or in the picture is taken where it can be hit: its letters may stand beside it. */
async function clickOn(what: Locator): Promise<void> {
  await what.waitFor();
  const hit = what.locator('.hit');
  await ((await hit.count()) === 0 ? what : hit).click();
}

async function dragPull(page: Page, role: string): Promise<void> {
  const pull = page.getByRole('button', { name: `Pull a route out of ${role}` }).locator('.shown');
  const from = await pull.boundingBox();
  if (from === null) throw new Error(`nothing to pull a route out of ${role} with`);
  await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
  await page.mouse.down();
  await page.mouse.move(from.x + 60, from.y + 20, { steps: 5 });
  await page.mouse.up();
}

async function writeByKeys(page: Page, field: Locator, words: string): Promise<void> {
  await tabTo(page, field);
  await page.keyboard.press('Control+a');
  await page.keyboard.type(words);
}

/** A closed menu moves by arrows; it opens nothing and asks nothing. */
async function chooseByKeys(page: Page, menu: Locator, value: string): Promise<void> {
  await tabTo(page, menu);
  const [at, wanted] = await menu.evaluate((element, value) => {
    const { options, selectedIndex } = element as HTMLSelectElement;
    return [selectedIndex, [...options].findIndex(option => option.value === value)] as const;
  }, value);
  if (wanted < 0) throw new Error(`the menu has no line kept as ${value}`);
  const key = wanted > at ? 'ArrowDown' : 'ArrowUp';
  for (let presses = Math.abs(wanted - at); presses > 0; presses -= 1) await page.keyboard.press(key);
}

async function takeByKeys(page: Page, option: Locator): Promise<void> {
  const list = page.getByRole('listbox').filter({ has: option });
  await tabTo(page, list.locator('[tabindex="0"]').or(list).last());
  await page.keyboard.press('Home');
  for (let presses = 0; presses < 40; presses += 1) {
    if (await option.evaluate(element => element === document.activeElement)) {
      await page.keyboard.press('Enter');
      return;
    }
    await page.keyboard.press('ArrowRight');
  }
  throw new Error('arrows do not reach this line of the drawer');
}

/** The crosshair goes twenty pixels at a time with Ctrl, one without. */
async function pressFilmByKeys(page: Page, px: readonly [number, number]): Promise<void> {
  await tabTo(page, page.locator('.freeze-layer'));
  for (const [axis, forwards, back] of [
    [0, 'ArrowRight', 'ArrowLeft'],
    [1, 'ArrowDown', 'ArrowUp'],
  ] as const) {
    const from = Number(await page.locator('.crosshair').getAttribute(axis === 0 ? 'data-x' : 'data-y'));
    const by = Math.round(px[axis] - from);
    const key = by > 0 ? forwards : back;
    for (let left = Math.floor(Math.abs(by) / 20); left > 0; left -= 1)
      await page.keyboard.press(`Control+${key}`);
    for (let left = Math.abs(by) % 20; left > 0; left -= 1) await page.keyboard.press(key);
  }
  await page.keyboard.press('Enter');
}

async function pullByKeys(page: Page, role: string): Promise<void> {
  await tabTo(page, page.getByRole('button', { name: `Pull a route out of ${role}` }));
  await page.keyboard.press('Shift+ArrowRight');
}
