import { COLUMN_GAP, mm, PAGE } from '../card/page-measures.ts';
import { wrapWords } from '../card/wrap-words.ts';
import { drawFreezeAt, freezeHeight } from '../ice/freeze-at.ts';
import type { LetteringName } from '../lettering.ts';
import type { Pen, Photo } from '../pen/pen.ts';
import {
  HEAD_HEIGHT,
  type MeetingSheet,
  type MeetingSheetItem,
  NOTES_LINE,
  rowHeight,
} from './meeting-sheet.ts';
import { drawFreezeKey, drawSheetHead } from './sheet-parts.ts';

const NUMBER_WIDTH = mm(13);
const DRAWING_WIDTH = mm(66);
const NOTES_WIDTH = mm(54);
const ROW_PAD = mm(2);

/**
 * One A4 page in points, black only: head, one row for each item with the freeze on the ice, the line, the question for the
 * group and room to write, and what the marks mean.
 */
export const drawMeetingSheet = (pen: Pen, sheet: MeetingSheet): void => {
  pen.path('halo', sink => sink.rect(0, 0, PAGE.width, PAGE.height));
  drawSheetHead(pen, sheet);
  // A place of its own: at the end of a long title it would be cut.
  if (sheet.page !== undefined)
    pen.text('cardTeam', sheet.page, PAGE.right - pen.measure('cardTeam', sheet.page), PAGE.top + 2);
  let y = PAGE.top + HEAD_HEIGHT;
  for (const item of sheet.items) {
    drawLineAt(pen, y);
    drawRow(pen, item, y);
    y += rowHeight(item);
  }
  drawLineAt(pen, y);
  const freezes = sheet.items.flatMap(({ freeze }) => freeze ?? []);
  if (freezes.length > 0) drawFreezeKey(pen, freezes);
};

const drawLineAt = (pen: Pen, y: number): void =>
  pen.path('cardRule', sink => {
    sink.moveTo(PAGE.left, y);
    sink.lineTo(PAGE.right, y);
  });

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
  } else if (item.photo) {
    if (item.photo !== 'comes') drawPhoto(pen, item.photo, left, top + ROW_PAD, height - 2 * ROW_PAD);
    left += DRAWING_WIDTH + COLUMN_GAP;
  }
  const notes = PAGE.right - NOTES_WIDTH;
  drawWords(pen, item, { left, width: notes - COLUMN_GAP - left, top, bottom: top + height - ROW_PAD });
  const box = top + ROW_PAD;
  pen.path('cardRule', sink => sink.rect(notes, box, NOTES_WIDTH, height - 2 * ROW_PAD));
  pen.text('cardFactName', item.notes ? 'The speaker’s notes' : 'Notes', notes + 4, box + 9);
  const most = Math.floor((height - 2 * ROW_PAD - 13) / NOTES_LINE);
  for (const [i, line] of wrapWords(pen, 'cardPoint', item.notes ?? '', NOTES_WIDTH - 8, most).entries())
    pen.text('cardPoint', line, notes + 4, box + 21 + i * NOTES_LINE);
};

/** As large as its room allows, with its own proportions. */
const drawPhoto = (pen: Pen, photo: Photo, left: number, top: number, room: number): void => {
  const scale = Math.min(DRAWING_WIDTH / photo.widthPx, room / photo.heightPx);
  pen.photo?.(photo, { left, top, width: photo.widthPx * scale, height: photo.heightPx * scale });
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
