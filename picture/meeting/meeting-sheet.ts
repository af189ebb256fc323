import { mm, PAGE } from '../card/page-measures.ts';
import type { FreezeDrawn } from '../ice/freeze-at.ts';
import type { Photo } from '../pen/pen.ts';

/** A meeting as it is printed: everything resolved to words. The speaker's own notes are in it only where they are wanted. */
export interface MeetingSheet {
  readonly team: string;
  readonly title: string;
  /** Beside the title: at most three. */
  readonly facts: readonly { readonly small: string; readonly strong: string }[];
  readonly items: readonly MeetingSheetItem[];
  /** 1 of 2; absent where there is one page only. */
  readonly page?: string;
}

export interface MeetingSheetItem {
  readonly number: number;
  /** When it begins, minutes and seconds after the meeting does. */
  readonly clock: string;
  readonly line: string;
  /** Which moment it is: game, clock, verdict. */
  readonly which: string;
  /** The question for the group; empty: none. */
  readonly asks: string;
  readonly freeze?: FreezeDrawn;
  /** The picture of the film, where there is no freeze to draw; its room is kept while it is still being read. */
  readonly photo?: Photo | 'comes';
  /** The speaker's notes, in the room to write: for himself alone. */
  readonly notes?: string;
}

/** Five to a page: a sixth would leave a drawing too little room. */
export const DRAWN_ROW = mm(49);
export const WORDS_ROW = mm(30);
/** Head and foot of a page. */
export const HEAD_HEIGHT = mm(19);
export const FOOT_HEIGHT = mm(10);

/** A row has room for its notes as they are written, up to half a page; what is longer ends in an ellipsis. */
export const rowHeight = ({ freeze, photo, notes = '' }: MeetingSheetItem): number =>
  Math.min(
    MOST_ROW,
    Math.max(
      freeze || photo ? DRAWN_ROW : WORDS_ROW,
      NOTES_TOP + NOTES_LINE * Math.ceil(notes.length / NOTES_LETTERS),
    ),
  );
/** A line of notes in points, and how many letters of the narrowest of its words it surely takes. */
export const NOTES_LINE = 11;
const NOTES_LETTERS = 26;
const NOTES_TOP = mm(9);
const MOST_ROW = mm(120);

/** As many items on a page as it holds, in their order; a meeting without any is one page. */
export function meetingPagesOf(sheet: MeetingSheet): readonly MeetingSheet[] {
  const room = PAGE.bottom - PAGE.top - HEAD_HEIGHT - FOOT_HEIGHT;
  const pages: MeetingSheetItem[][] = [[]];
  let used = 0;
  for (const item of sheet.items) {
    if (used + rowHeight(item) > room) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)!.push(item);
    used += rowHeight(item);
  }
  return pages.map((items, index) => ({
    ...sheet,
    ...(pages.length > 1 ? { page: `page ${index + 1} of ${pages.length}` } : {}),
    items,
  }));
}
