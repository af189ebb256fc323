import type { Team } from '@icewright/book';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { GoneFromList } from '../film/gone-from-list.tsx';
import { Act } from '../parts/act.tsx';
import { countSaid, daySaid, fromToday } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { Slip } from '../parts/slip.tsx';
import { addressOfMeeting } from '../shell/addresses.ts';
import { setRemoved, useDocuments } from '../shell/book.ts';
import { entriesOf } from '../shell/season.ts';
import { MEETING_FORMS, makeMeeting } from './make-meeting.ts';
import './meeting.css';

/** The meetings of the team below its games, and the two forms in which one begins. */
export function MeetingsSection({ team }: { readonly team: Team }) {
  const [, go] = useLocation();
  const [isMaking, setMaking] = useState(false);
  const [gone, setGone] = useState<string>();
  const entries = entriesOf(team, 'meeting');
  const meetings = useDocuments(
    'meeting',
    entries.map(([id]) => id),
  );
  return (
    <section className="sec meetings" aria-label="Meetings">
      <h2>
        Meetings <span className="q3">moments in an order, with words, against the time there is</span>
      </h2>
      {entries.length > 0 && (
        <ul className="meeting-list">
          {entries.map(([id, entry]) => {
            const meeting = meetings.get(id)?.value;
            return (
              <li key={id}>
                <span className="nw">
                  {daySaid(entry.day)} <span className="q3">{fromToday(entry.day)}</span>
                </span>
                <Link href={addressOfMeeting(id)} className="w meeting-title">
                  {named(entry.title, 'meeting')}
                </Link>
                <span className="q2">
                  {meeting === undefined
                    ? 'not read yet'
                    : `${countSaid(Object.keys(meeting.items).length, 'moment')}, ${meeting.budgetMinutes} min`}
                </span>
                <Act
                  bare
                  label={`Take ${named(entry.title, 'meeting')}, ${daySaid(entry.day)}, out of the list`}
                  onPress={() => {
                    setRemoved(id, true);
                    setGone(id);
                  }}
                >
                  Take out
                </Act>
              </li>
            );
          })}
        </ul>
      )}
      <GoneFromList team={team} what="meeting" id={gone} onBack={() => setGone(undefined)} />
      <Act opens={isMaking} onPress={() => setMaking(!isMaking)}>
        Plan a meeting
      </Act>
      {isMaking && (
        <Slip label="Plan a meeting" onClose={() => setMaking(false)}>
          <span className="slip-acts">
            {MEETING_FORMS.map(form => (
              <Act key={form.says} onPress={() => go(addressOfMeeting(makeMeeting(form)))}>
                {form.says}
              </Act>
            ))}
            <Act bare onPress={() => setMaking(false)}>
              Not now
            </Act>
          </span>
        </Slip>
      )}
    </section>
  );
}
