import type { DrillAct } from '@icewright/book';
import { feetOf, metresOf, type SpotId } from '@icewright/engine';
import { ChoiceField, ValueField } from '../parts/field.tsx';
import { LENGTH_UNIT, type Lengths } from '../parts/figures.ts';

export interface Choice {
  readonly value: string;
  readonly said: string;
}

/** A length or a speed as it stands in its field, to a tenth. */
const typedOf = (inMetres: number, lengths: Lengths): number =>
  Math.round((lengths === 'feet' ? feetOf(inMetres) : inMetres) * 10) / 10;

const metresTyped = (typed: string, lengths: Lengths): number =>
  lengths === 'feet' ? metresOf(Number(typed)) : Number(typed);

/** A length in the unit of the team. */
export function LengthField(props: {
  readonly label: string;
  readonly lengths: Lengths;
  readonly valueM: number;
  readonly minM?: number;
  readonly maxM: number;
  readonly onChange: (valueM: number) => void;
}) {
  const { lengths } = props;
  return (
    <ValueField
      label={props.label}
      type="number"
      min={typedOf(props.minM ?? 0, lengths)}
      max={typedOf(props.maxM, lengths)}
      step={lengths === 'feet' ? 0.5 : 0.1}
      unit={LENGTH_UNIT[lengths]}
      value={String(typedOf(props.valueM, lengths))}
      onChange={typed => props.onChange(metresTyped(typed, lengths))}
    />
  );
}

export function Effort({
  value,
  onChange,
}: {
  readonly value: number;
  readonly onChange: (value: number) => void;
}) {
  return (
    <ValueField
      label="effort"
      type="number"
      min={20}
      max={100}
      step={5}
      unit="%"
      value={String(Math.round(value * 100))}
      onChange={percent => onChange(Number(percent) / 100)}
    />
  );
}

export function PuckSpeed({
  lengths,
  value,
  leastMps = 1,
  onChange,
}: {
  readonly lengths: Lengths;
  readonly value: number;
  readonly leastMps?: number;
  readonly onChange: (value: number) => void;
}) {
  return (
    <ValueField
      label="puck speed"
      type="number"
      min={typedOf(leastMps, lengths)}
      max={typedOf(50, lengths)}
      step={0.5}
      unit={`${LENGTH_UNIT[lengths]}/s`}
      value={String(typedOf(value, lengths))}
      onChange={typed => onChange(metresTyped(typed, lengths))}
    />
  );
}

const DEGREE_RAD = Math.PI / 180;

/** How far round, to which side, how hard. */
export function TurnFields({
  act,
  onChange,
}: {
  readonly act: Extract<DrillAct, { kind: 'turn' }>;
  readonly onChange: (act: DrillAct) => void;
}) {
  const side = act.angleRad < 0 ? -1 : 1;
  return (
    <>
      <ValueField
        label="through"
        type="number"
        min={15}
        max={360}
        step={15}
        unit="°"
        value={String(Math.round(Math.abs(act.angleRad) / DEGREE_RAD))}
        onChange={degrees => onChange({ ...act, angleRad: side * Number(degrees) * DEGREE_RAD })}
      />
      <ChoiceField
        label="to the"
        value={side > 0 ? 'left' : 'right'}
        choices={[
          { value: 'left', said: 'left' },
          { value: 'right', said: 'right' },
        ]}
        onChange={to => onChange({ ...act, angleRad: (to === 'left' ? 1 : -1) * Math.abs(act.angleRad) })}
      />
      <Effort value={act.effortRatio} onChange={effortRatio => onChange({ ...act, effortRatio })} />
    </>
  );
}

const OWN_NET = 'net';

/** Which lane: from whom, to whom or to the own net, and how far along it. */
export function ScreenFields({
  act,
  others,
  onChange,
}: {
  readonly act: Extract<DrillAct, { kind: 'screen' }>;
  readonly others: readonly Choice[];
  readonly onChange: (act: DrillAct) => void;
}) {
  return (
    <>
      <ChoiceField
        label="lane from"
        value={act.from as string}
        choices={others}
        onChange={from => onChange({ ...act, from: from as SpotId })}
      />
      <ChoiceField
        label="to"
        value={act.to ?? OWN_NET}
        choices={[...others, { value: OWN_NET, said: 'own net' }]}
        onChange={to => {
          const { to: _before, ...rest } = act;
          onChange(to === OWN_NET ? rest : { ...rest, to: to as SpotId });
        }}
      />
      <ValueField
        label="along it"
        type="number"
        min={0}
        max={100}
        step={5}
        unit="%"
        value={String(Math.round(act.alongRatio * 100))}
        onChange={percent => onChange({ ...act, alongRatio: Number(percent) / 100 })}
      />
    </>
  );
}
