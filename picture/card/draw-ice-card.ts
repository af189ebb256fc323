import { drawKey } from '../drill/key.ts';
import { drawnMarks, type KeyEntry } from '../drill/used-marks.ts';
import { measuringPen } from '../pen/measuring-pen.ts';
import type { Pen } from '../pen/pen.ts';
import { drawBlockRow, wordsRowHeight } from './block-row.ts';
import { type IceCard, STANDING_CAUTIONS } from './ice-card.ts';
import { mm, PAGE, TALLEST_ROW } from './page-measures.ts';
import { drawPaperHead } from './paper-head.ts';
import { type CautionBox, cautionBox, drawCautionBox, KEY_SCALE, keyOnPaper } from './paper-parts.ts';
import { wrapWords } from './wrap-words.ts';

const GROUP_LINE = 10.6;
/** More people a group than this many lines are cut: the card must stay one page. */
const GROUP_LINES = 2;

/**
 * One A4 page in points, black only: head, what today is about, the blocks, the people, the cautions in their box, the
 * key of the marks used. Blocks share what the rest leaves, so the drawings shrink before anything falls off the page.
 */
export const drawIceCard = (pen: Pen, card: IceCard): void => {
  pen.path('halo', sink => sink.rect(0, 0, PAGE.width, PAGE.height));
  const top = drawHead(pen, card);
  const foot = footOf(pen, card);
  const rows = card.blocks.map(block => (block.plan ? null : wordsRowHeight(pen, block)));
  const fixed = rows.reduce((sum: number, height) => sum + (height ?? 0), 0);
  const drawn = rows.filter(height => height === null).length;
  const room = PAGE.bottom - foot.height - top - fixed;
  const rowHeight = drawn > 0 ? Math.min(TALLEST_ROW, room / drawn) : 0;
  let y = top;
  card.blocks.forEach((block, index) => {
    const height = rows[index] ?? rowHeight;
    drawRuleAt(pen, y);
    drawBlockRow(pen, block, y, height);
    y += height;
  });
  drawRuleAt(pen, y);
  drawPeople(pen, card, y + mm(1.6));
  drawFoot(pen, foot);
};

const drawRuleAt = (pen: Pen, y: number): void =>
  pen.path('cardRule', sink => {
    sink.moveTo(PAGE.left, y);
    sink.lineTo(PAGE.right, y);
  });

/** Team, title and the facts beside it, the graduated rule, what today is about. Returns where the blocks begin. */
const drawHead = (pen: Pen, card: IceCard): number => {
  let y = drawPaperHead(pen, card);
  if (card.today !== '') {
    const lead = 'Today: ';
    const leadWidth = pen.measure('cardAimLead', lead);
    const lines = wrapWords(pen, 'cardAim', card.today, PAGE.right - PAGE.left - leadWidth, 2);
    y += mm(5.6);
    pen.text('cardAimLead', lead, PAGE.left, y);
    lines.forEach((line, index) => {
      pen.text('cardAim', line, PAGE.left + leadWidth, y + index * 15.5);
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
const footOf = (pen: Pen, card: IceCard): Foot => {
  const used = drawnMarks(card.blocks);
  const keyHeight = used.length === 0 ? 0 : keyRows(pen, used) + mm(1.6);
  const cautions = cautionBox(pen, PAGE, [...card.cautions, ...STANDING_CAUTIONS], PAGE.bottom - keyHeight);
  return { height: peopleHeight(pen, card) + mm(2) + cautions.height + keyHeight, cautions, used };
};

const drawFoot = (pen: Pen, { cautions, used }: Foot): void => {
  drawCautionBox(pen, PAGE, cautions);
  if (used.length > 0) keyAt(pen, used, cautions.top + cautions.height + mm(1.6) + KEY_SCALE * 1.45);
};

const keyAt = (pen: Pen, used: Foot['used'], y: number): number => drawKey(pen, used, keyOnPaper(PAGE, y));

/** Height of the key without drawing it. */
const keyRows = (pen: Pen, used: Foot['used']): number => keyAt(measuringPen(pen), used, 0);

const peopleColumns = (pen: Pen, card: IceCard) => {
  const width = (PAGE.right - PAGE.left - mm(6)) / 2;
  const nameWidth = mm(15);
  const groups = card.groups.map(group => ({
    name: wrapWords(pen, 'cardGroup', group.name, nameWidth - mm(1), 1)[0] ?? '',
    lines: wrapWords(pen, 'cardPoint', group.people, width - nameWidth, GROUP_LINES),
  }));
  const half = Math.ceil(groups.length / 2);
  return { columns: [groups.slice(0, half), groups.slice(half)], width, nameWidth };
};

const linesIn = (groups: readonly { readonly lines: readonly string[] }[]): number =>
  groups.reduce((sum, group) => sum + Math.max(1, group.lines.length), 0);

const peopleHeight = (pen: Pen, card: IceCard): number => {
  const most = Math.max(...peopleColumns(pen, card).columns.map(linesIn));
  const noteLines =
    card.note === '' ? 0 : wrapWords(pen, 'cardPoint', card.note, PAGE.right - PAGE.left, 2).length;
  return most + noteLines > 0 ? mm(1.6) + (most + noteLines) * GROUP_LINE + mm(0.8) : 0;
};

const drawPeople = (pen: Pen, card: IceCard, top: number): void => {
  const { columns, width, nameWidth } = peopleColumns(pen, card);
  columns.forEach((groups, column) => {
    const x = PAGE.left + column * (width + mm(6));
    let y = top + 8.4;
    for (const group of groups) {
      pen.text('cardGroup', group.name, x, y);
      group.lines.forEach((line, index) => {
        pen.text('cardPoint', line, x + nameWidth, y + index * GROUP_LINE);
      });
      y += Math.max(1, group.lines.length) * GROUP_LINE;
    }
  });
  const noteTop = top + 8.4 + Math.max(...columns.map(linesIn)) * GROUP_LINE + mm(0.5);
  wrapWords(pen, 'cardPoint', card.note, PAGE.right - PAGE.left, 2).forEach((line, index) => {
    pen.text('cardPoint', line, PAGE.left, noteTop + index * GROUP_LINE);
  });
};
