import { useMemo } from 'react';
import { ActLink } from '../parts/act.tsx';
import { Failure } from '../parts/empty.tsx';
import { useDocument, useDocuments, useTeam } from '../shell/book.ts';
import { RunningHead } from '../shell/running-head.tsx';
import '../film/moments/moments.css';
import '../film/picture.css';
import '../film/film-room.css';
import './meeting.css';
import './meeting-items.css';
import { MeetingPage } from './meeting-page.tsx';
import './run/run.css';
import { SpeakPage } from './run/speak-page.tsx';
import { MeetingSheetPage } from './sheet/meeting-sheet-page.tsx';
import { gamesOf, shownItemsOf } from './shown-item.ts';

/** A meeting: its plan, what the speaker has before him, or its sheet. */
export function MeetingPlace({
  meetingId,
  view,
}: {
  readonly meetingId: string;
  readonly view: 'plan' | 'speak' | 'sheet';
}) {
  const { value: team } = useTeam();
  const { state, value: meeting, issues } = useDocument('meeting', meetingId);
  const games = useDocuments('game', gamesOf(meeting));
  const items = useMemo(() => (meeting === undefined ? [] : shownItemsOf(meeting, games)), [meeting, games]);
  if (team === undefined || state === 'loading') return <p className="vh">Opening</p>;
  if (meeting === undefined) return <NoMeeting isRefused={state === 'refused'} />;
  if (view === 'speak')
    return <SpeakPage team={team} meetingId={meetingId} meeting={meeting} items={items} />;
  if (view === 'sheet')
    return <MeetingSheetPage team={team} meetingId={meetingId} meeting={meeting} items={items} />;
  return (
    <MeetingPage
      team={team}
      meetingId={meetingId}
      meeting={meeting}
      items={items}
      unfitCount={issues.length}
    />
  );
}

function NoMeeting({ isRefused }: { readonly isRefused: boolean }) {
  return (
    <>
      <RunningHead back={{ to: '/film', said: 'Film' }} title="No meeting" titleWords="No meeting" />
      <Failure
        where="Meeting"
        what={isRefused ? 'This meeting cannot be read by this Icewright.' : 'This meeting is not here.'}
        lost={
          isRefused
            ? 'It was written by a newer one, or is damaged. Nothing in it was changed.'
            : 'It may lie on another machine that has not been connected since.'
        }
      >
        <ActLink to="/film">To the film</ActLink>
      </Failure>
    </>
  );
}
