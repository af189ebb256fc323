import type { Locator, Page } from 'playwright-core';

/** Presses Tab, or Shift and Tab where that is nearer, until the focus is there, as somebody without a mouse would. */
export async function tabTo(page: Page, wanted: Locator): Promise<void> {
  await wanted.waitFor();
  const isThere = () => wanted.evaluate(element => element === document.activeElement);
  const tried: string[] = [];
  // Once more from where the focus is: what comes late may have moved it, or the page, since the way was counted.
  for (let tries = 0; tries < 2; tries += 1) {
    const { key, most } = await nearerWay(wanted);
    tried.push(`${most} presses of ${key}`);
    for (let presses = 0; presses <= most; presses += 1) {
      if (await isThere()) return;
      await page.keyboard.press(key);
    }
  }
  const at = await page.evaluate(() => document.activeElement?.outerHTML.slice(0, 120));
  throw new Error(`${tried.join(' and ')} do not reach ${wanted}; the focus is on ${at}`);
}

/** Groups that take one Tab for many things make this a guess, so some presses are allowed beyond it. */
const nearerWay = (wanted: Locator): Promise<{ key: string; most: number }> =>
  wanted.evaluate(element => {
    const all = [
      ...document.querySelectorAll<HTMLElement>('a[href], button, input, select, textarea, [tabindex]'),
    ].filter(one => one.tabIndex >= 0);
    const by = all.indexOf(element as HTMLElement) - all.indexOf(document.activeElement as HTMLElement);
    return { key: by >= 0 ? 'Tab' : 'Shift+Tab', most: Math.abs(by) + 40 };
  });
