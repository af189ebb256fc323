import { ValueField } from './field.tsx';

/** The day of something. */
export const DayField = ({
  value,
  onChange,
}: {
  readonly value: string;
  readonly onChange: (day: string) => void;
}) => <ValueField type="date" label="Day" value={value} onChange={onChange} />;

/** How long it takes, in whole minutes. */
export const MinutesField = ({
  label,
  value,
  least,
  most,
  onChange,
}: {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly onChange: (minutes: number) => void;
}) => (
  <ValueField
    type="number"
    label={label}
    unit="min"
    min={least}
    max={most}
    value={String(value)}
    onChange={said => onChange(Number(said))}
  />
);
