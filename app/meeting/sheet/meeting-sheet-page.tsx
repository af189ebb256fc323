import type { Meeting, Team } from '@icewright/book';
import { drawMeetingSheet, meetingPagesOf, type Pen } from '@icewright/picture';
import { useMemo, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { daySaid } from '../../parts/figures.ts';
import { named } from '../../parts/named.ts';
import { PaperPage } from '../../parts/paper-page.tsx';
import { addressOfMeeting } from '../../shell/addresses.ts';
import type { ShownItem } from '../shown-item.ts';
import { framesInstead, meetingSheetOf } from './meeting-sheet-of.ts';
import { useSheetPhotos } from './use-sheet-photos.ts';

/** The meeting on paper: for the wall of the room, and for those who write along. */
export function MeetingSheetPage(props: {
  readonly team: Team;
  readonly meetingId: string;
  readonly meeting: Meeting;
  readonly items: readonly ShownItem[];
}) {
  const { team, meeting, items } = props;
  const [withNotes, setWithNotes] = useState(false);
  const frames = useMemo(() => framesInstead(team, items), [team, items]);
  const [withPictures, setWithPictures] = useState(true);
  const photos = useSheetPhotos(frames, withPictures);
  const isReading = [...photos.values()].includes('comes');
  const pages = useMemo(
    () =>
      meetingPagesOf(meetingSheetOf(team, meeting, items, withNotes, photos)).map(page => ({
        title: page.title,
        draw: (pen: Pen) => drawMeetingSheet(pen, page),
      })),
    [team, meeting, items, withNotes, photos],
  );
  return (
    <PaperPage
      back={{ to: addressOfMeeting(props.meetingId), said: named(meeting.title, 'meeting') }}
      title="Sheet"
      titleWords={`Sheet, ${named(meeting.title, 'meeting')}`}
      day={daySaid(meeting.day)}
      pages={pages}
      acts={
        <>
          {frames.length > 0 && (
            <Act isOn={withPictures} onPress={() => setWithPictures(!withPictures)}>
              With pictures of the film
            </Act>
          )}
          <Act isOn={withNotes} onPress={() => setWithNotes(!withNotes)}>
            With the speaker’s notes
          </Act>
        </>
      }
      notYet={isReading ? 'pictures of the film are being read' : undefined}
      fileName={`${named(meeting.title, 'meeting')} ${meeting.day}${withNotes ? ', speaker' : ''}.pdf`}
    />
  );
}
