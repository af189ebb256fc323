import { useMemo } from 'react';
import { useDocument, useDocuments, useTeam } from '../shell/book.ts';
import { DocumentNotHere } from '../shell/document-not-here.tsx';
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
  if (meeting === undefined)
    return (
      <DocumentNotHere
        what="meeting"
        isRefused={state === 'refused'}
        back={{ to: '/film', said: 'Film' }}
        to="To the film"
      />
    );
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
