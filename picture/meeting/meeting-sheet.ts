import { mm, PAGE } from '../card/page-measures.ts';
import type { FreezeDrawn } from '../ice/freeze-at.ts';

/** A meeting as it is printed for the group: everything resolved to words. The speaker's own notes are not in it. */
export interface MeetingSheet {
  readonly team: string;
  readonly title: string;
  /** Beside the title: at most three. */
  readonly facts: readonly { readonly small: string; readonly strong: string }[];
  readonly items: readonly MeetingSheetItem[];
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
}

export const DRAWN_ROW = mm(50);
export const WORDS_ROW = mm(30);
/** Head and foot of a page. */
export const HEAD_HEIGHT = mm(19);
export const FOOT_HEIGHT = mm(10);

export const rowHeight = ({ freeze }: MeetingSheetItem): number => (freeze ? DRAWN_ROW : WORDS_ROW);

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
    title: pages.length > 1 ? `${sheet.title}, page ${index + 1} of ${pages.length}` : sheet.title,
    items,
  }));
}
