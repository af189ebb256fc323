import type { KeySetting } from '../drill/key.ts';
import type { Pen } from '../pen/pen.ts';
import { mm, type Page } from './page-measures.ts';
import { wrapWords } from './wrap-words.ts';

/** Parts that every printed sheet has: the graduated rule, the box of cautions, the key. */

const RULE_SEGMENTS = 15;
export const PAPER_RULE_HEIGHT = mm(1.1);
const CAUTION_LINE = 11.2;
const MOST_CAUTION_LINES = 6;
export const KEY_SCALE = mm(1.2);

export const drawPaperRule = (pen: Pen, page: Page, y: number): void => {
  const each = (page.right - page.left) / RULE_SEGMENTS;
  for (let index = 0; index < RULE_SEGMENTS; index++) {
    pen.path(index % 2 === 0 ? 'cardFull' : 'cardOpen', sink =>
      sink.rect(page.left + index * each, y, each, PAPER_RULE_HEIGHT),
    );
  }
};

/** Where the key's first row has its middle, and how wide it may be. */
export const keyOnPaper = (page: Page, y: number): KeySetting => ({
  x: page.left,
  y,
  width: page.right - page.left,
  lettering: 'cardKey',
  scale: KEY_SCALE,
});

export interface CautionBox {
  readonly top: number;
  readonly height: number;
  readonly lines: readonly string[];
}

/** The box of these cautions, standing on `bottom`. */
export const cautionBox = (pen: Pen, page: Page, cautions: readonly string[], bottom: number): CautionBox => {
  const width = page.right - page.left - mm(27 + 3 + 4.8);
  const lines = wrapWords(pen, 'cardCaution', cautions.join(' '), width, MOST_CAUTION_LINES);
  const height = mm(2.8) + Math.max(2, lines.length) * CAUTION_LINE;
  return { top: bottom - height, height, lines };
};

export const drawCautionBox = (pen: Pen, page: Page, box: CautionBox): void => {
  pen.path('cardBox', sink => sink.rect(page.left, box.top, page.right - page.left, box.height));
  const first = box.top + mm(1.4) + 8.4;
  ['Before the first', 'whistle'].forEach((line, index) => {
    pen.text('cardCautionHead', line, page.left + mm(2.4), first + index * CAUTION_LINE);
  });
  box.lines.forEach((line, index) => {
    pen.text('cardCaution', line, page.left + mm(2.4 + 27 + 3), first + index * CAUTION_LINE);
  });
};
