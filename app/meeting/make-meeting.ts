import { emptyMeeting } from '@icewright/book';
import { NEXT_DAY, type Row, STRAIGHT_AFTER } from '@icewright/engine';
import { today } from '../parts/figures.ts';
import { createDocument } from '../shell/book.ts';

/** A meeting as coaches hold it: its name and its length, with where that length comes from. */
export interface MeetingForm {
  readonly title: string;
  readonly says: string;
  readonly length: Row;
}

export const MEETING_FORMS: readonly MeetingForm[] = [
  { title: 'Straight after the game', says: 'Ten minutes, straight after the game', length: STRAIGHT_AFTER },
  { title: 'The day after', says: 'Twenty minutes, the next day', length: NEXT_DAY },
];

/** A meeting of today in one of the two forms; gives its id. */
export function makeMeeting({ title, length }: MeetingForm): string {
  return createDocument('meeting', emptyMeeting({ title, day: today(), budgetMinutes: length.value }));
}
