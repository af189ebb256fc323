import type { Game, Team } from '@icewright/book';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { Act } from '../parts/act.tsx';
import { countSaid, daySaid, fromToday, today } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { Slip } from '../parts/slip.tsx';
import { addressOfMeeting } from '../shell/addresses.ts';
import { documentWhenRead } from '../shell/document-when-read.ts';
import { entriesOf } from '../shell/season.ts';
import { MEETING_FORMS, makeMeeting } from './make-meeting.ts';
import { addItems, type Chosen } from './new-item.ts';

/** Puts moments or a freeze of this game at the end of a meeting: of a coming one, the last one held, or a new one. */
export function PutInMeeting(props: {
  readonly team: Team;
  readonly gameId: string;
  readonly game: Game;
  readonly chosen: readonly Chosen[];
  readonly says?: string;
}) {
  const { team, gameId, game, chosen } = props;
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <Act
        opens={isOpen}
        onPress={() => setOpen(!isOpen)}
        notNow={chosen.length === 0 ? 'no moment is shown' : undefined}
      >
        {props.says ?? 'Put in a meeting'}
      </Act>
      {isOpen && (
        <WhichMeeting
          team={team}
          count={chosen.length}
          onMeeting={async id => {
            const meeting = await documentWhenRead('meeting', id);
            if (meeting === null) return false;
            addItems(id, meeting, { gameId, game, team }, chosen);
            return true;
          }}
          onClose={() => setOpen(false)}
        />
      )}
    </>
  );
}

function WhichMeeting(props: {
  readonly team: Team;
  readonly count: number;
  readonly onMeeting: (id: string) => Promise<boolean>;
  readonly onClose: () => void;
}) {
  const [, go] = useLocation();
  const [failed, setFailed] = useState(false);
  const entries = entriesOf(props.team, 'meeting');
  const coming = entries.filter(([, entry]) => entry.day >= today()).reverse();
  const offered = coming.length > 0 ? coming : entries.slice(0, 1);
  const put = async (id: string) => {
    if (await props.onMeeting(id)) go(addressOfMeeting(id));
    else setFailed(true);
  };
  return (
    <Slip label="Put in a meeting" onClose={props.onClose}>
      {props.count > 1 && (
        <span className="q2">{countSaid(props.count, 'moment')}, in the order of the film.</span>
      )}
      <span className="slip-acts">
        {offered.map(([id, entry]) => (
          <Act key={id} onPress={() => void put(id)}>
            {named(entry.title, 'meeting')}, {daySaid(entry.day)}, {fromToday(entry.day)}
          </Act>
        ))}
        {MEETING_FORMS.map(form => (
          <Act key={form.says} onPress={() => void put(makeMeeting(form))}>
            New: {form.says.toLowerCase()}
          </Act>
        ))}
        <Act bare onPress={props.onClose}>
          Not now
        </Act>
      </span>
      {failed && (
        <span className="warm" role="alert">
          That meeting cannot be read here. Nothing was changed.
        </span>
      )}
    </Slip>
  );
}
