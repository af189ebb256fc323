import './state-field.css';

/** A state of which there are two, with the one that holds said in words: nothing that reads as something to be done. */
export function StateField({
  says,
  isOn,
  on,
  off,
  onChange,
}: {
  /** What the state is of. */
  readonly says: string;
  readonly isOn: boolean;
  readonly on: string;
  readonly off: string;
  readonly onChange: (isOn: boolean) => void;
}) {
  return (
    <label className="state-field">
      <input type="checkbox" checked={isOn} onChange={event => onChange(event.target.checked)} />
      <span>
        <span className="q2">{says}:</span> <span className="b">{isOn ? on : off}</span>
      </span>
    </label>
  );
}
