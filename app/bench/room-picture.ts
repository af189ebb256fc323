import type { Page } from 'playwright-core';

/** The film room's picture, asked and timed inside the page. */

/** Milliseconds from the jump's entry until that very frame is on the canvas. */
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
    return performance.now() - from;
  }, frameIndex);

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
