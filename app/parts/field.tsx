import { type HTMLInputTypeAttribute, useEffect, useId, useState } from 'react';
import { type ClockFace, clockSaid, findClock } from './figures.ts';

interface Common {
  readonly label: string;
  /** Seen only by those who hear the page. */
  readonly labelHidden?: boolean;
  readonly hint?: string;
}

/** Words. Every stroke goes into the document, so that two people can write in one field and nothing waits to be kept. */
export function WordsField(
  props: Common & {
    readonly value: string;
    readonly onChange: (words: string) => void;
    readonly rows?: number;
    readonly voice?: 'words' | 'figures';
    readonly maxLength?: number;
    readonly placeholder?: string;
  },
) {
  const id = useId();
  const common = {
    id,
    value: props.value,
    maxLength: props.maxLength ?? (props.rows === undefined ? 200 : 4000),
    placeholder: props.placeholder,
    'data-book': 'words',
    className: props.voice === 'words' ? 'entry w' : 'entry',
    onChange: (event: { target: { value: string } }) => props.onChange(event.target.value),
  };
  return (
    <div className="field">
      <FieldLabel id={id} {...props} />
      {props.rows === undefined ? (
        <input type="text" {...common} />
      ) : (
        <textarea rows={props.rows} {...common} />
      )}
    </div>
  );
}

/** A number or a day: goes into the document when it is whole and allowed; else says what is allowed. */
export function ValueField(
  props: Common & {
    readonly type: HTMLInputTypeAttribute & ('number' | 'date');
    readonly value: string;
    readonly onChange: (value: string) => void;
    readonly min?: number;
    readonly max?: number;
    readonly step?: number;
    readonly unit?: string;
  },
) {
  const id = useId();
  const [draft, setDraft] = useState(props.value);
  const [wrong, setWrong] = useState(false);
  /** What was typed last and not kept; said until the next change. */
  const [refused, setRefused] = useState<string | null>(null);
  useEffect(() => {
    setDraft(props.value);
    setRefused(null);
  }, [props.value]);
  const allowed = allowedSaid(props);
  return (
    <div className="field">
      <FieldLabel id={id} {...props} />
      <span className="entry-unit">
        <input
          id={id}
          className={`entry ${props.type}`}
          type={props.type}
          value={draft}
          min={props.min}
          max={props.max}
          step={props.step ?? 'any'}
          aria-invalid={wrong || undefined}
          onChange={event => {
            const { value, validity } = event.target;
            setDraft(value);
            setRefused(null);
            const isWhole = validity.valid && value !== '';
            setWrong(!isWhole && (value !== '' || validity.badInput));
            if (isWhole && value !== props.value) props.onChange(value);
          }}
          onBlur={() => {
            setRefused(wrong ? draft : null);
            setDraft(props.value);
            setWrong(false);
          }}
        />
        {props.unit !== undefined && <span className="q3"> {props.unit}</span>}
      </span>
      {(wrong || refused !== null) && (
        <span className="cap warm" role="alert">
          {refused !== null
            ? `${refused === '' ? 'What was typed' : refused} is not kept${allowed === null ? '' : `: ${allowed}`}.`
            : allowed === null
              ? 'Not a value that can be kept.'
              : `From ${allowed}.`}
        </span>
      )}
    </div>
  );
}

function allowedSaid({
  min,
  max,
  step,
}: {
  readonly min?: number;
  readonly max?: number;
  readonly step?: number;
}): string | null {
  if (min === undefined || max === undefined) return null;
  return `${min} to ${max}${step === 1 ? ', whole' : ''}`;
}

/** A clock time in either face: 19:40, 7:40 pm. Kept as 19:40. */
export function ClockField(
  props: Common & {
    readonly value: string;
    readonly face: ClockFace;
    readonly onChange: (clock: string) => void;
  },
) {
  const id = useId();
  const shown = clockSaid(props.value, props.face);
  const [draft, setDraft] = useState(shown);
  const [refused, setRefused] = useState<string | null>(null);
  useEffect(() => {
    setDraft(shown);
    setRefused(null);
  }, [shown]);
  const isWrong = findClock(draft) === null;
  return (
    <div className="field">
      <FieldLabel id={id} {...props} />
      <input
        id={id}
        className="entry time"
        value={draft}
        aria-invalid={isWrong || undefined}
        onChange={event => {
          setDraft(event.target.value);
          setRefused(null);
        }}
        onBlur={() => {
          const clock = findClock(draft);
          setRefused(clock === null ? draft : null);
          setDraft(clock === null ? shown : clockSaid(clock, props.face));
          if (clock !== null && clock !== props.value) props.onChange(clock);
        }}
        onKeyDown={event => event.key === 'Enter' && event.currentTarget.blur()}
      />
      {(isWrong || refused !== null) && (
        <span className="cap warm" role="alert">
          {refused === null
            ? 'As 19:40 or 7:40 pm.'
            : `${refused === '' ? 'Nothing' : refused} is not kept: as 19:40 or 7:40 pm.`}
        </span>
      )}
    </div>
  );
}

export function ChoiceField<Value extends string>(
  props: Common & {
    readonly value: Value;
    readonly choices: readonly { readonly value: Value; readonly said: string }[];
    readonly onChange: (value: Value) => void;
  },
) {
  const id = useId();
  return (
    <div className="field">
      <FieldLabel id={id} {...props} />
      <select
        id={id}
        className="entry"
        value={props.value}
        onChange={event => props.onChange(event.target.value as Value)}
      >
        {props.choices.map(choice => (
          <option key={choice.value} value={choice.value}>
            {choice.said}
          </option>
        ))}
      </select>
    </div>
  );
}

function FieldLabel({ id, label, labelHidden, hint }: Common & { readonly id: string }) {
  return (
    <label htmlFor={id} className={labelHidden ? 'vh' : 'label'}>
      {label}
      {hint !== undefined && <span className="cap"> {hint}</span>}
    </label>
  );
}
