import { drawKey } from '../drill/key.ts';
import { drawnMarks, type KeyEntry } from '../drill/used-marks.ts';
import { measuringPen } from '../pen/measuring-pen.ts';
import type { Pen } from '../pen/pen.ts';
import { drawBlockRow, wordsRowHeight } from './block-row.ts';
import { drawPeople, peopleHeight } from './card-people.ts';
import { type IceCard, STANDING_CAUTIONS } from './ice-card.ts';
import { mm, PAPERS, type Page, type Paper, TALLEST_ROW } from './page-measures.ts';
import { drawPaperHead } from './paper-head.ts';
import { type CautionBox, cautionBox, drawCautionBox, KEY_SCALE, keyOnPaper } from './paper-parts.ts';
import { wrapWords } from './wrap-words.ts';

/**
 * One page in points, A4 unless another is asked for, black only: head, what today is about, the blocks, the people, the cautions in their box, the
 * key of the marks used. Blocks share what the rest leaves, so the drawings shrink before anything falls off the page.
 */
export const drawIceCard = (pen: Pen, card: IceCard, paper: Paper = 'a4'): void => {
  const page = PAPERS[paper];
  pen.path('halo', sink => sink.rect(0, 0, page.width, page.height));
  const top = drawHead(pen, card, page);
  const foot = footOf(pen, card, page);
  const rows = card.blocks.map(block => (block.plan ? null : wordsRowHeight(pen, block, page)));
  const fixed = rows.reduce((sum: number, height) => sum + (height ?? 0), 0);
  const drawn = rows.filter(height => height === null).length;
  const room = page.bottom - foot.height - top - fixed;
  const rowHeight = drawn > 0 ? Math.min(TALLEST_ROW, room / drawn) : 0;
  let y = top;
  card.blocks.forEach((block, index) => {
    const height = rows[index] ?? rowHeight;
    drawRuleAt(pen, page, y);
    drawBlockRow(pen, block, page, y, height);
    y += height;
  });
  if (card.blocks.length > 0) drawRuleAt(pen, page, y);
  drawPeople(pen, card, page, y + mm(1.6));
  drawFoot(pen, foot, page);
};

const drawRuleAt = (pen: Pen, page: Page, y: number): void =>
  pen.path('cardRule', sink => {
    sink.moveTo(page.left, y);
    sink.lineTo(page.right, y);
  });

/** Team, title and the facts beside it, the graduated rule, what today is about. Returns where the blocks begin. */
const drawHead = (pen: Pen, card: IceCard, page: Page): number => {
  let y = drawPaperHead(pen, card, page);
  if (card.today !== '') {
    const lead = 'Today: ';
    const leadWidth = pen.measure('cardAimLead', lead);
    const lines = wrapWords(pen, 'cardAim', card.today, page.right - page.left - leadWidth, 2);
    y += mm(5.6);
    pen.text('cardAimLead', lead, page.left, y);
    lines.forEach((line, index) => {
      pen.text('cardAim', line, page.left + leadWidth, y + index * 15.5);
    });
    y += (lines.length - 1) * 15.5;
  }
  return y + mm(3);
};

interface Foot {
  readonly height: number;
  readonly cautions: CautionBox;
  readonly used: readonly KeyEntry[];
}

/** What stands below the blocks is measured first; it stands on the bottom edge. */
const footOf = (pen: Pen, card: IceCard, page: Page): Foot => {
  const used = drawnMarks(card.blocks);
  const keyHeight = used.length === 0 ? 0 : keyRows(pen, used, page) + mm(1.6);
  const cautions = cautionBox(pen, page, [...card.cautions, ...STANDING_CAUTIONS], page.bottom - keyHeight);
  return { height: peopleHeight(pen, card, page) + mm(2) + cautions.height + keyHeight, cautions, used };
};

const drawFoot = (pen: Pen, { cautions, used }: Foot, page: Page): void => {
  drawCautionBox(pen, page, cautions);
  if (used.length > 0) keyAt(pen, used, page, cautions.top + cautions.height + mm(1.6) + KEY_SCALE * 1.45);
};

const keyAt = (pen: Pen, used: Foot['used'], page: Page, y: number): number =>
  drawKey(pen, used, keyOnPaper(page, y));

/** Height of the key without drawing it. */
const keyRows = (pen: Pen, used: Foot['used'], page: Page): number => keyAt(measuringPen(pen), used, page, 0);
