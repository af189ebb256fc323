import type { BrowserContext, Page } from 'playwright-core';

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** One finger from place to place, as the browser gets it from a touch screen; first it may rest where it came down. */
export async function dragFinger(
  page: Page,
  context: BrowserContext,
  from: Place,
  to: Place,
  { restMs = 0 }: { readonly restMs?: number } = {},
): Promise<void> {
  const line = await context.newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: Place) =>
    line.send('Input.dispatchTouchEvent', { type, touchPoints: at === undefined ? [] : [{ ...at }] });
  await touch('touchStart', from);
  if (restMs > 0) await page.waitForTimeout(restMs);
  for (let step = 1; step <= 8; step += 1)
    await touch('touchMove', {
      x: from.x + ((to.x - from.x) * step) / 8,
      y: from.y + ((to.y - from.y) * step) / 8,
    });
  await touch('touchEnd');
  await line.detach();
}
