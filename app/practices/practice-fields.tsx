import type { Practice } from '@icewright/book';
import { ClockField, WordsField } from '../parts/field.tsx';
import type { ClockFace } from '../parts/figures.ts';
import { DayField, MinutesField } from '../parts/when-fields.tsx';
import type { Editing } from '../shell/book.ts';

export function PracticeFields({
  practice,
  editing,
  face,
}: {
  readonly practice: Practice;
  readonly editing: Editing;
  readonly face: ClockFace;
}) {
  return (
    <section className="sec block-fields">
      <h2>This practice</h2>
      <WordsField
        label="Today, in one sentence"
        voice="words"
        rows={2}
        value={practice.today}
        onChange={value => editing.text(['today'], value)}
      />
      <div className="rows">
        <DayField value={practice.day} onChange={day => editing.set(['day'], day)} />
        <ClockField
          label="Ice from"
          face={face}
          value={practice.starts}
          onChange={value => editing.set(['starts'], value)}
        />
        <MinutesField
          label="Ice"
          least={10}
          most={240}
          value={practice.iceMinutes}
          onChange={minutes => editing.set(['iceMinutes'], minutes)}
        />
      </div>
      <WordsField label="Place" value={practice.place} onChange={value => editing.text(['place'], value)} />
      <WordsField
        label="Note"
        voice="words"
        rows={2}
        value={practice.note}
        onChange={value => editing.text(['note'], value)}
      />
    </section>
  );
}
