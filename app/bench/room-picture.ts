import type { Page } from 'playwright-core';

/** The film room's picture, asked and timed inside the page. */

/** Milliseconds from the jump's entry until that very frame is on the canvas and handed to the screen with the page's next picture. */
export const jumpInRoom = (page: Page, frameIndex: number): Promise<number> =>
  page.evaluate(async target => {
    const field = document.querySelector<HTMLInputElement>('.jump-entry')!;
    const write = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!;
    write.call(field, `${target}`);
    field.dispatchEvent(new Event('input', { bubbles: true }));
    await new Promise(resolve => setTimeout(resolve, 30));
    const canvas = document.querySelector<HTMLElement>('canvas[data-testid="picture"]')!;
    const shown = new Promise<void>((resolve, reject) => {
      setTimeout(() => reject(new Error(`frame ${target} is not on the canvas after 20 s`)), 20_000);
      const isThere = () => canvas.dataset.frame === `${target}`;
      const watch = new MutationObserver(() => {
        if (!isThere()) return;
        watch.disconnect();
        resolve();
      });
      watch.observe(canvas, { attributes: true, attributeFilter: ['data-frame'] });
    });
    const from = performance.now();
    field.form!.requestSubmit();
    await shown;
    await new Promise(requestAnimationFrame);
    return performance.now() - from;
  }, frameIndex);

/**
 * The same, and the number burned into the picture that came first for that frame, whether it was a copy's, and how long the
 * film's own took.
 */
export const jumpRead = async (
  page: Page,
  frameIndex: number,
  blockPx: number,
): Promise<{ ms: number; ownMs: number; number: number; isCopy: boolean }> => {
  await page.evaluate(blockPx => {
    const canvas = document.querySelector<HTMLCanvasElement>('canvas[data-testid="picture"]')!;
    const found = { number: -1, isCopy: false, firstMs: 0, ownMs: 0, frame: '' };
    (window as unknown as { found: typeof found }).found = found;
    const watch = new MutationObserver(() => {
      if (canvas.dataset.frame !== found.frame) return;
      if (found.firstMs === 0) {
        found.firstMs = performance.now();
        found.isCopy = canvas.dataset.copy === 'true';
        const { data } = canvas.getContext('2d')!.getImageData(0, 0, 16 * blockPx, 2 * blockPx);
        const grey = (bit: number, row: number) =>
          data[4 * (Math.floor((row + 0.5) * blockPx) * 16 * blockPx + Math.floor((bit + 0.5) * blockPx))]!;
        found.number = 0;
        for (let bit = 0; bit < 16; bit++) {
          if (Math.abs(grey(bit, 0) - grey(bit, 1)) < 60) found.number = Number.NaN;
          if (grey(bit, 0) > grey(bit, 1)) found.number += 2 ** bit;
        }
      }
      if (canvas.dataset.copy === 'true') return;
      found.ownMs = performance.now();
      watch.disconnect();
    });
    watch.observe(canvas, { attributes: true });
  }, blockPx);
  await page.evaluate(target => {
    (window as unknown as { found: { frame: string } }).found.frame = `${target}`;
  }, frameIndex);
  const ms = await jumpInRoom(page, frameIndex);
  await page
    .locator(`canvas[data-testid="picture"][data-frame="${frameIndex}"]:not([data-copy])`)
    .waitFor({ timeout: 20_000 });
  const found = await page.evaluate(
    () =>
      (window as unknown as { found: { number: number; isCopy: boolean; firstMs: number; ownMs: number } })
        .found,
  );
  return { ms, ownMs: ms + found.ownMs - found.firstMs, number: found.number, isCopy: found.isCopy };
};

/** Milliseconds from the arrow key until the next frame, or the one before, is on the canvas. */
export const stepInRoom = (page: Page, by: 1 | -1): Promise<number> =>
  page.evaluate(async step => {
    const canvas = document.querySelector<HTMLElement>('canvas[data-testid="picture"]')!;
    const target = `${Number(canvas.dataset.frame) + step}`;
    const shown = new Promise<void>((resolve, reject) => {
      setTimeout(() => reject(new Error(`frame ${target} is not on the canvas after 20 s`)), 20_000);
      const watch = new MutationObserver(() => {
        if (canvas.dataset.frame !== target) return;
        watch.disconnect();
        resolve();
      });
      watch.observe(canvas, { attributes: true, attributeFilter: ['data-frame'] });
    });
    (document.activeElement as HTMLElement | null)?.blur();
    const from = performance.now();
    const key = step > 0 ? 'ArrowRight' : 'ArrowLeft';
    document.body.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
    await shown;
    return performance.now() - from;
  }, by);

/** When this frame first stands on the canvas, by the machine's clock, in milliseconds; ask before what leads to it. */
export const waitForFrame = (page: Page, frameIndex: number): Promise<number> =>
  page.evaluate(
    target =>
      new Promise<number>(resolve => {
        const look = () => {
          if (document.querySelector(`canvas[data-testid="picture"][data-frame="${target}"]`) === null)
            return;
          watch.disconnect();
          resolve(performance.timeOrigin + performance.now());
        };
        const watch = new MutationObserver(look);
        watch.observe(document.documentElement, { subtree: true, childList: true, attributes: true });
      }),
    frameIndex,
  );
