import { COLUMN_GAP, mm, PAGE } from '../card/page-measures.ts';
import { drawPaperRule, PAPER_RULE_HEIGHT } from '../card/paper-parts.ts';
import { wrapWords } from '../card/wrap-words.ts';
import { drawFreezeAt, freezeHeight } from '../ice/freeze-at.ts';
import type { LetteringName } from '../lettering.ts';
import type { Pen } from '../pen/pen.ts';
import {
  FOOT_HEIGHT,
  HEAD_HEIGHT,
  type MeetingSheet,
  type MeetingSheetItem,
  rowHeight,
} from './meeting-sheet.ts';

const NUMBER_WIDTH = mm(13);
const DRAWING_WIDTH = mm(66);
const NOTES_WIDTH = mm(54);
const ROW_PAD = mm(2);
const MARK_SCALE = 7;

/**
 * One A4 page in points, black only: head, one row for each item with the freeze on the ice, the line, the question for the
 * group and room to write, and what the marks mean.
 */
export const drawMeetingSheet = (pen: Pen, sheet: MeetingSheet): void => {
  pen.path('halo', sink => sink.rect(0, 0, PAGE.width, PAGE.height));
  drawHead(pen, sheet);
  let y = PAGE.top + HEAD_HEIGHT;
  for (const item of sheet.items) {
    drawLineAt(pen, y);
    drawRow(pen, item, y);
    y += rowHeight(item);
  }
  drawLineAt(pen, y);
  if (sheet.items.some(({ freeze }) => freeze)) drawMarksKey(pen, sheet);
};

const drawLineAt = (pen: Pen, y: number): void =>
  pen.path('cardRule', sink => {
    sink.moveTo(PAGE.left, y);
    sink.lineTo(PAGE.right, y);
  });

const drawHead = (pen: Pen, sheet: MeetingSheet): void => {
  const base = PAGE.top + mm(9.2);
  pen.text('cardTeam', sheet.team, PAGE.left, PAGE.top + 2);
  let x = PAGE.right;
  for (const fact of [...sheet.facts.slice(0, 3)].reverse()) {
    x -= Math.max(pen.measure('cardSmall', fact.small), pen.measure('cardStrong', fact.strong));
    pen.text('cardSmall', fact.small, x, base - 13.5);
    pen.text('cardStrong', fact.strong, x, base);
    x -= mm(8);
  }
  const [title = ''] = wrapWords(pen, 'cardTitle', sheet.title, x - PAGE.left, 1);
  pen.text('cardTitle', title, PAGE.left, base);
  const rule = base + mm(2.6);
  drawPaperRule(pen, PAGE, rule);
  if (rule + PAPER_RULE_HEIGHT > PAGE.top + HEAD_HEIGHT) throw new Error('the head is taller than its room');
};

const drawRow = (pen: Pen, item: MeetingSheetItem, top: number): void => {
  const height = rowHeight(item);
  pen.text('cardClock', `${item.number}`, PAGE.left, top + ROW_PAD + 12);
  pen.text('cardClockSmall', item.clock, PAGE.left, top + ROW_PAD + 23);
  let left = PAGE.left + NUMBER_WIDTH;
  if (item.freeze) {
    const room = height - 2 * ROW_PAD;
    const width = Math.min(DRAWING_WIDTH, (DRAWING_WIDTH * room) / freezeHeight(item.freeze, DRAWING_WIDTH));
    drawFreezeAt(pen, item.freeze, { left, top: top + ROW_PAD, width });
    left += DRAWING_WIDTH + COLUMN_GAP;
  }
  const notes = PAGE.right - NOTES_WIDTH;
  drawWords(pen, item, { left, width: notes - COLUMN_GAP - left, top, bottom: top + height - ROW_PAD });
  const box = top + ROW_PAD;
  pen.path('cardRule', sink => sink.rect(notes, box, NOTES_WIDTH, height - 2 * ROW_PAD));
  pen.text('cardFactName', 'Notes', notes + 4, box + 9);
};

const drawWords = (
  pen: Pen,
  item: MeetingSheetItem,
  room: { readonly left: number; readonly width: number; readonly top: number; readonly bottom: number },
): void => {
  let y = room.top + ROW_PAD;
  const put = (lettering: LetteringName, words: string, line: number, mostLines: number) => {
    const most = Math.min(mostLines, Math.floor((room.bottom - y) / line));
    if (words === '' || most < 1) return;
    for (const one of wrapWords(pen, lettering, words, room.width, most)) {
      y += line;
      pen.text(lettering, one, room.left, y - line * 0.2);
    }
  };
  put('cardBlock', item.line, 16.5, 3);
  put('cardPoint', item.which, 11, 2);
  y += 4;
  put('cardCue', item.asks, 13, 4);
};

/** What the marks on the small drawings mean; that they are estimates is said here too. */
const drawMarksKey = (pen: Pen, sheet: MeetingSheet): void => {
  const wants = sheet.items.some(({ freeze }) => freeze?.people.some(({ wantedM }) => wantedM));
  const y = PAGE.bottom - FOOT_HEIGHT / 2 + 6;
  let x = PAGE.left + 3;
  for (const [mark, words] of [
    ['fixUs', 'ours'],
    ['fixThem', 'theirs'],
    ['puck', 'puck'],
  ] as const) {
    // The marks as large as on the drawings.
    pen.place({ x, y: y - 2.6, scale: MARK_SCALE, k: 1 }, () =>
      pen.circle(mark, 0, 0, mark === 'puck' ? 0.22 : 0.32),
    );
    pen.text('cardKey', words, x + 6, y);
    x += pen.measure('cardKey', words) + 20;
  }
  const rest = `${wants ? 'Dotted with a head: where she should have been. ' : ''}Broken edge: limit of the picture. Places are estimates from the picture.`;
  pen.text('cardKey', wrapWords(pen, 'cardKey', rest, PAGE.right - x, 1)[0] ?? '', x, y);
};
