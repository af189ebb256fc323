import { PAGE } from '../card/page-measures.ts';
import { drawPaperHead } from '../card/paper-head.ts';
import { wrapWords } from '../card/wrap-words.ts';
import type { FreezeDrawn } from '../ice/freeze-at.ts';
import type { Pen } from '../pen/pen.ts';
import { FOOT_HEIGHT, HEAD_HEIGHT, type MeetingSheet } from './meeting-sheet.ts';

const MARK_SCALE = 7;

/** Team, title, the facts beside it, and the graduated rule, all within `HEAD_HEIGHT`. */
export const drawSheetHead = (pen: Pen, sheet: Pick<MeetingSheet, 'team' | 'title' | 'facts'>): void => {
  if (drawPaperHead(pen, sheet) > PAGE.top + HEAD_HEIGHT) throw new Error('the head is taller than its room');
};

/** What the marks on the small drawings mean; that they are estimates is said here too. */
export const drawFreezeKey = (pen: Pen, freezes: readonly FreezeDrawn[]): void => {
  const wants = freezes.some(({ people }) => people.some(({ wantedM }) => wantedM));
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
