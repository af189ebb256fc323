import type { Page } from 'playwright-core';

/** The number burned into what a canvas or a video shows: 16 blocks, least bit first, above their complement. */
export const burnedNumber = (page: Page, selector: string, blockPx: number): Promise<number> =>
  page.evaluate(
    ({ selector, blockPx }) => {
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [16 * blockPx, 2 * blockPx];
      const pen = canvas.getContext('2d')!;
      pen.drawImage(document.querySelector<HTMLCanvasElement>(selector)!, 0, 0);
      const { data } = pen.getImageData(0, 0, canvas.width, canvas.height);
      const grey = (bit: number, row: number) =>
        data[4 * (Math.floor((row + 0.5) * blockPx) * canvas.width + Math.floor((bit + 0.5) * blockPx))]!;
      let number = 0;
      for (let bit = 0; bit < 16; bit++) {
        if (Math.abs(grey(bit, 0) - grey(bit, 1)) < 60) return -1;
        if (grey(bit, 0) > grey(bit, 1)) number += 2 ** bit;
      }
      return number;
    },
    { selector, blockPx },
  );
