import type { Drawing, Pen } from '../pen/pen.ts';

/** Things one below the other, from page to page: what does not fit above the foot of a page begins the next one. */
export interface SheetFlow {
  /** Where the next thing begins, points from the top of its page. */
  readonly y: number;
  /** What is left above the foot of the page. */
  readonly room: number;
  /** From 0. */
  readonly pageIndex: number;
  /** Leaves so much free, where something stands above. */
  skip(height: number): void;
  /** Begins a new page unless so much fits on this one. */
  need(height: number): void;
  /** Puts a thing of this height. */
  put(height: number, draw: (pen: Pen, y: number) => void): void;
  /** Puts a thing beside what follows: it takes no height. */
  beside(draw: (pen: Pen, y: number) => void): void;
  /** Goes down to `y` where that is on the page `pageIndex` that is still open. */
  clear(pageIndex: number, y: number): void;
  readonly pages: readonly Drawing[];
}

/** `first` and `next`: where things begin on the first page and on every other; `bottom`: the foot of all. Points. */
export const sheetFlow = (of: {
  readonly first: number;
  readonly next: number;
  readonly bottom: number;
}): SheetFlow => {
  const pages: ((pen: Pen) => void)[][] = [[]];
  let y = of.first;
  const isAtTop = () => y === (pages.length === 1 ? of.first : of.next);
  const put = (height: number, draw: (pen: Pen, y: number) => void) => {
    flow.need(height);
    const at = y;
    pages.at(-1)!.push(pen => draw(pen, at));
    y += height;
  };
  const flow: SheetFlow = {
    get y() {
      return y;
    },
    get room() {
      return of.bottom - y;
    },
    get pageIndex() {
      return pages.length - 1;
    },
    skip: height => {
      if (!isAtTop()) y += height;
    },
    need: height => {
      if (isAtTop() || y + height <= of.bottom) return;
      pages.push([]);
      y = of.next;
    },
    put,
    beside: draw => {
      const at = y;
      pages.at(-1)!.push(pen => draw(pen, at));
    },
    clear: (pageIndex, least) => {
      if (pageIndex === pages.length - 1) y = Math.max(y, least);
    },
    get pages() {
      return pages.map(things => (pen: Pen) => {
        for (const draw of things) draw(pen);
      });
    },
  };
  return flow;
};
