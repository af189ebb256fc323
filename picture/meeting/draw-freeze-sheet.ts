import { mm, PAGE } from '../card/page-measures.ts';
import { wrapWords } from '../card/wrap-words.ts';
import { drawFreezeAt, type FreezeDrawn, freezeHeight } from '../ice/freeze-at.ts';
import type { Pen } from '../pen/pen.ts';
import { FOOT_HEIGHT, HEAD_HEIGHT, type MeetingSheet } from './meeting-sheet.ts';
import { drawFreezeKey, drawSheetHead } from './sheet-parts.ts';

/** One freeze as it is printed: where everybody stood, what it is about, and room to write. */
export interface FreezeSheet extends Pick<MeetingSheet, 'team' | 'title' | 'facts'> {
  /** What the skaters hear. */
  readonly says: string;
  readonly freeze: FreezeDrawn;
}

/** Read at arm's length. */
const LETTER_PT = 11;

/** One A4 page in points, black only. */
export const drawFreezeSheet = (pen: Pen, sheet: FreezeSheet): void => {
  pen.path('halo', sink => sink.rect(0, 0, PAGE.width, PAGE.height));
  drawSheetHead(pen, sheet);
  const width = PAGE.right - PAGE.left;
  let y = PAGE.top + HEAD_HEIGHT;
  for (const line of wrapWords(pen, 'cardAimLead', sheet.says, width, 2)) {
    y += 14;
    pen.text('cardAimLead', line, PAGE.left, y);
  }
  y += mm(4);
  drawFreezeAt(pen, sheet.freeze, { left: PAGE.left, top: y, width, letterPt: LETTER_PT });
  y += freezeHeight(sheet.freeze, width) + mm(6);
  const bottom = PAGE.bottom - FOOT_HEIGHT;
  pen.path('cardRule', sink => sink.rect(PAGE.left, y, width, bottom - y));
  pen.text('cardFactName', 'Notes', PAGE.left + 4, y + 9);
  drawFreezeKey(pen, [sheet.freeze]);
};
