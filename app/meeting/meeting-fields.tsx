import type { Meeting } from '@icewright/book';
import { Act } from '../parts/act.tsx';
import { Reading } from '../parts/reading.tsx';
import { StateField } from '../parts/state-field.tsx';
import { DayField, MinutesField } from '../parts/when-fields.tsx';
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
        <DayField value={meeting.day} onChange={day => editing.set(['day'], day)} />
        <MinutesField
          label="Time for it"
          least={1}
          most={180}
          value={meeting.budgetMinutes}
          onChange={minutes => editing.set(['budgetMinutes'], minutes)}
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
        <StateField
          says="Under the picture the team"
          isOn={meeting.showsWords}
          on="reads the line"
          off="reads nothing"
          onChange={showsWords => editing.set(['showsWords'], showsWords)}
        />
      </p>
    </section>
  );
}
