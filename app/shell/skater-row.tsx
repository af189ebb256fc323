import type { Skater } from '@icewright/book';
import { useEffect, useRef } from 'react';
import { Act } from '../parts/act.tsx';
import { ChoiceField, ValueField, WordsField } from '../parts/field.tsx';
import { edit, endStep } from './book.ts';

const POSITIONS = [
  { value: 'F', said: 'forward' },
  { value: 'D', said: 'defender' },
  { value: 'G', said: 'goalie' },
] as const;

export function SkaterRow(props: {
  readonly id: string;
  readonly skater: Skater;
  readonly teamId: string;
  /** Who else wears this number; allowed, and said. */
  readonly sameNumber: readonly string[];
  readonly isNew: boolean;
}) {
  const { id, skater, teamId, sameNumber, isNew } = props;
  const row = useRef<HTMLTableRowElement>(null);
  useEffect(() => {
    if (isNew) row.current?.querySelector('input')?.select();
  }, [isNew]);
  const editing = edit(teamId);
  const at = (key: string) => ['skaters', id, key];
  const who = skater.name === '' ? `number ${skater.number}` : skater.name;
  return (
    <tr ref={row}>
      <td>
        <ValueField
          type="number"
          label={`Number of ${who}`}
          labelHidden
          min={0}
          max={99}
          step={1}
          value={String(skater.number)}
          onChange={value => editing.set(at('number'), Number(value))}
        />
      </td>
      <td>
        <WordsField
          label={`Name of ${who}`}
          labelHidden
          placeholder="Name"
          value={skater.name}
          onChange={words => editing.text(at('name'), words)}
        />
        {sameNumber.length > 0 && (
          <span className="cap warm" role="status">
            Also number {skater.number}: {sameNumber.join(', ')}.
          </span>
        )}
      </td>
      <td>
        <ChoiceField
          label={`Position of ${who}`}
          labelHidden
          value={skater.position}
          choices={POSITIONS}
          onChange={value => editing.set(at('position'), value)}
        />
      </td>
      <td>
        <WordsField
          label={`Group of ${who}`}
          labelHidden
          placeholder="none"
          value={skater.group}
          onChange={words => editing.text(at('group'), words)}
        />
      </td>
      <td>
        <label className="check">
          <input
            type="checkbox"
            checked={skater.noContact}
            onChange={event => editing.set(at('noContact'), event.target.checked)}
          />
          <span className="vh">No contact for {who}</span>
          <span className="check-words" aria-hidden="true">
            no contact
          </span>
        </label>
      </td>
      <td className="r">
        <Act
          bare
          label={`Take out ${who}`}
          onPress={() => {
            endStep(teamId);
            editing.remove(['skaters', id]);
          }}
        >
          Take out
        </Act>
      </td>
    </tr>
  );
}
