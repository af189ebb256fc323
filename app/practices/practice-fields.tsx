import type { Practice } from '@icewright/book';
import { ClockField, ValueField, WordsField } from '../parts/field.tsx';
import type { ClockFace } from '../parts/figures.ts';
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
        <ValueField
          type="date"
          label="Day"
          value={practice.day}
          onChange={value => editing.set(['day'], value)}
        />
        <ClockField
          label="Ice from"
          face={face}
          value={practice.starts}
          onChange={value => editing.set(['starts'], value)}
        />
        <ValueField
          type="number"
          label="Ice"
          unit="min"
          min={10}
          max={240}
          value={String(practice.iceMinutes)}
          onChange={value => editing.set(['iceMinutes'], Number(value))}
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
