import { drawKey } from '../drill/key.ts';
import { drawnMarks, type KeyEntry } from '../drill/used-marks.ts';
import type { Pen } from '../pen/pen.ts';
import { drawBlockRow, wordsRowHeight } from './block-row.ts';
import { type IceCard, STANDING_CAUTIONS } from './ice-card.ts';
import { mm, PAGE, TALLEST_ROW } from './page-measures.ts';
import { wrapWords } from './wrap-words.ts';

const KEY_SCALE = mm(1.2);
const CAUTION_LINE = 11.2;
const GROUP_LINE = 10.6;
const RULE_SEGMENTS = 15;
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
  const base = PAGE.top + mm(9.2);
  pen.text('cardTeam', card.team, PAGE.left, PAGE.top + 2);
  let x = PAGE.right;
  for (const fact of [...card.facts.slice(0, 3)].reverse()) {
    x -= Math.max(pen.measure('cardSmall', fact.small), pen.measure('cardStrong', fact.strong));
    pen.text('cardSmall', fact.small, x, base - 13.5);
    pen.text('cardStrong', fact.strong, x, base);
    x -= mm(8);
  }
  const [title = ''] = wrapWords(pen, 'cardTitle', card.title, x - PAGE.left, 1);
  pen.text('cardTitle', title, PAGE.left, base);
  const rule = base + mm(2.6);
  const each = (PAGE.right - PAGE.left) / RULE_SEGMENTS;
  for (let index = 0; index < RULE_SEGMENTS; index++) {
    pen.path(index % 2 === 0 ? 'cardFull' : 'cardOpen', sink =>
      sink.rect(PAGE.left + index * each, rule, each, mm(1.1)),
    );
  }
  let y = rule + mm(1.1);
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
  readonly cautionLines: readonly string[];
  readonly boxTop: number;
  readonly boxHeight: number;
  readonly keyHeight: number;
  readonly used: readonly KeyEntry[];
}

/** What stands below the blocks is measured first; it stands on the bottom edge. */
const footOf = (pen: Pen, card: IceCard): Foot => {
  const used = drawnMarks(card.blocks);
  const cautionLines = wrapWords(
    pen,
    'cardCaution',
    [...card.cautions, ...STANDING_CAUTIONS].join(' '),
    PAGE.right - PAGE.left - mm(27 + 3 + 4.8),
    6,
  );
  const boxHeight = mm(2.8) + Math.max(2, cautionLines.length) * CAUTION_LINE;
  const keyHeight = used.length === 0 ? 0 : keyRows(pen, used) + mm(1.6);
  const people = peopleHeight(pen, card);
  return {
    height: people + mm(2) + boxHeight + keyHeight,
    cautionLines,
    boxTop: PAGE.bottom - keyHeight - boxHeight,
    boxHeight,
    keyHeight,
    used,
  };
};

const drawFoot = (pen: Pen, foot: Foot): void => {
  pen.path('cardBox', sink => sink.rect(PAGE.left, foot.boxTop, PAGE.right - PAGE.left, foot.boxHeight));
  const first = foot.boxTop + mm(1.4) + 8.4;
  ['Before the first', 'whistle'].forEach((line, index) => {
    pen.text('cardCautionHead', line, PAGE.left + mm(2.4), first + index * CAUTION_LINE);
  });
  foot.cautionLines.forEach((line, index) => {
    pen.text('cardCaution', line, PAGE.left + mm(2.4 + 27 + 3), first + index * CAUTION_LINE);
  });
  if (foot.used.length > 0) keyAt(pen, foot.used, foot.boxTop + foot.boxHeight + mm(1.6) + KEY_SCALE * 1.45);
};

const keyAt = (pen: Pen, used: Foot['used'], y: number): number =>
  drawKey(pen, used, {
    x: PAGE.left,
    y,
    width: PAGE.right - PAGE.left,
    lettering: 'cardKey',
    scale: KEY_SCALE,
  });

/** Height of the key without drawing it: its rows are those of `drawKey` on a pen that only measures. */
const keyRows = (pen: Pen, used: Foot['used']): number => keyAt(measuringPen(pen), used, 0);

const measuringPen = (pen: Pen): Pen => ({
  k: 1,
  thinFloor: 0,
  turnRad: 0,
  measure: pen.measure,
  path: () => {},
  circle: () => {},
  text: () => {},
  group: () => {},
  place: () => {},
  clip: () => {},
});

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
