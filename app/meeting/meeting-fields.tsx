import type { Meeting } from '@icewright/book';
import { Act } from '../parts/act.tsx';
import { ValueField } from '../parts/field.tsx';
import { Reading } from '../parts/reading.tsx';
import type { Editing } from '../shell/book.ts';
import { MEETING_FORMS } from './make-meeting.ts';

/** Day, length and what the team reads; the two lengths that coaches keep to, with where they come from. */
export function MeetingFields({
  meeting,
  editing,
}: {
  readonly meeting: Meeting;
  readonly editing: Editing;
}) {
  return (
    <section className="sec block-fields">
      <h2>This meeting</h2>
      <div className="pair">
        <ValueField
          type="date"
          label="Day"
          value={meeting.day}
          onChange={value => editing.set(['day'], value)}
        />
        <ValueField
          type="number"
          label="Time for it"
          unit="min"
          min={1}
          max={180}
          value={String(meeting.budgetMinutes)}
          onChange={value => editing.set(['budgetMinutes'], Number(value))}
        />
      </div>
      <ul className="forms">
        {MEETING_FORMS.map(({ says, length }) => (
          <li key={says}>
            <Act
              isOn={meeting.budgetMinutes === length.value}
              onPress={() => editing.set(['budgetMinutes'], length.value)}
            >
              {says}
            </Act>{' '}
            <Reading value={`${length.value} min`} why={`${length.name}. ${length.source}.`} />
          </li>
        ))}
      </ul>
      <p>
        <Act isOn={meeting.showsWords} onPress={() => editing.set(['showsWords'], !meeting.showsWords)}>
          The team reads what is said
        </Act>
      </p>
    </section>
  );
}
