import type { Meeting, Team } from '@icewright/book';
import type { MeetingSheet, MeetingSheetItem } from '@icewright/picture';
import { personWords } from '../../film/people-words.ts';
import { daySaid } from '../../parts/figures.ts';
import { named } from '../../parts/named.ts';
import { meetingClock, meetingTimesOf } from '../meeting-times.ts';
import { lineOf, type ShownItem, whichOf } from '../shown-item.ts';
import { freezeDrawnOf } from './freeze-drawn.ts';
import type { SheetPhotos } from './use-sheet-photos.ts';

/** The meeting as it is printed, without what is hidden: for the group, or with the speaker's notes for himself. */
export function meetingSheetOf(
  team: Team,
  meeting: Meeting,
  all: readonly ShownItem[],
  withNotes: boolean,
  photos: SheetPhotos,
): MeetingSheet {
  const items = all.filter(({ item }) => !item.hidden);
  const times = meetingTimesOf(meeting, items);
  return {
    team: team.name,
    title: named(meeting.title, 'meeting'),
    facts: [
      { small: 'day', strong: daySaid(meeting.day) },
      { small: 'time for it', strong: `${meeting.budgetMinutes} min` },
      { small: 'moments', strong: `${items.length}` },
    ],
    items: items.map(
      (shown, index): MeetingSheetItem => ({
        number: index + 1,
        clock: meetingClock(times.of.get(shown.id)?.startS ?? 0),
        line: lineOf(shown, team),
        which: whichOf(shown, team),
        asks: shown.item.asks,
        ...(withNotes && shown.item.notes !== '' ? { notes: shown.item.notes } : {}),
        ...(photos.has(shown.id) ? { photo: photos.get(shown.id)! } : freezeOf(shown, team)),
      }),
    ),
  };
}

/** Items whose freeze cannot be drawn, and the frame of the film that is shown instead. */
export const framesInstead = (
  team: Team,
  all: readonly ShownItem[],
): { readonly id: string; readonly hash: string; readonly frameIndex: number }[] =>
  all.flatMap(shown =>
    shown.state !== 'there' || shown.item.hidden || freezeOf(shown, team).freeze
      ? []
      : [
          {
            id: shown.id,
            hash: shown.part.hash,
            frameIndex: shown.item.stop?.frameIndex ?? shown.frameIndex,
          },
        ],
  );

function freezeOf(shown: ShownItem, team: Team): Pick<MeetingSheetItem, 'freeze'> {
  const kept = shown.state === 'there' && shown.freezeId ? shown.game.freezes[shown.freezeId] : undefined;
  if (shown.state !== 'there' || kept === undefined) return {};
  const freeze = freezeDrawnOf(kept, shown.game, team, placed => personWords(placed, team));
  return freeze === undefined ? {} : { freeze };
}
