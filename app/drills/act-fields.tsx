import type { Drill, DrillAct } from '@icewright/book';
import { type End, feetOf, metresOf, type SpotId } from '@icewright/engine';
import { ChoiceField, ValueField } from '../parts/field.tsx';
import { LENGTH_UNIT, type Lengths } from '../parts/figures.ts';
import { spotsOf } from './route-writes.ts';

/** The figures and names of one act. */
export function ActFields(props: {
  readonly drill: Drill;
  readonly own: SpotId;
  readonly act: DrillAct;
  readonly lengths: Lengths;
  readonly onChange: (act: DrillAct) => void;
}) {
  const { drill, own, act, lengths, onChange } = props;
  const others = spotsOf(drill)
    .filter(([id]) => id !== own)
    .map(([id, spot]) => ({ value: id as string, said: spot.role }));
  switch (act.kind) {
    case 'skate':
    case 'carry':
      return (
        <>
          <ChoiceField
            label="how"
            value={act.kind}
            choices={[
              { value: 'skate', said: 'without the puck' },
              { value: 'carry', said: 'with the puck' },
            ]}
            onChange={kind => onChange({ ...act, kind })}
          />
          <ChoiceField
            label="facing"
            value={act.facing}
            choices={[
              { value: 'forward', said: 'forward' },
              { value: 'backward', said: 'backward' },
            ]}
            onChange={facing => onChange({ ...act, facing })}
          />
          <Effort value={act.effortRatio} onChange={effortRatio => onChange({ ...act, effortRatio })} />
          <ChoiceField
            label="at the end"
            value={act.stops ? 'stops' : 'goes on'}
            choices={[
              { value: 'goes on', said: 'goes on' },
              { value: 'stops', said: 'stops' },
            ]}
            onChange={end => onChange({ ...act, stops: end === 'stops' })}
          />
        </>
      );
    case 'pass':
      return (
        <>
          <ChoiceField
            label="to"
            value={act.toSpot as string}
            choices={others}
            onChange={toSpot => onChange({ ...act, toSpot: toSpot as SpotId })}
          />
          <ChoiceField
            label="way"
            value={act.way}
            choices={[
              { value: 'direct', said: 'straight' },
              { value: 'bank', said: 'off the boards' },
            ]}
            onChange={way => onChange({ ...act, way })}
          />
          <PuckSpeed
            lengths={lengths}
            value={act.speedMps}
            onChange={speedMps => onChange({ ...act, speedMps })}
          />
        </>
      );
    case 'shoot':
      return (
        <>
          <ChoiceField<End>
            label="at"
            value={act.atEnd}
            choices={[
              { value: 'minusX', said: 'our net' },
              { value: 'plusX', said: 'their net' },
            ]}
            onChange={atEnd => onChange({ ...act, atEnd })}
          />
          <PuckSpeed
            lengths={lengths}
            value={act.speedMps}
            onChange={speedMps => onChange({ ...act, speedMps })}
          />
        </>
      );
    case 'hold':
      return (
        <ValueField
          label="for"
          type="number"
          min={0}
          max={120}
          step={0.1}
          unit="s"
          value={String(act.seconds)}
          onChange={seconds => onChange({ ...act, seconds: Number(seconds) })}
        />
      );
    case 'chase':
    case 'steal':
    case 'gap':
      return (
        <>
          <ChoiceField
            label="whom"
            value={act.whom as string}
            choices={others}
            onChange={whom => onChange({ ...act, whom: whom as SpotId })}
          />
          {act.kind !== 'gap' ? (
            <Effort value={act.effortRatio} onChange={effortRatio => onChange({ ...act, effortRatio })} />
          ) : (
            <ValueField
              label="gap"
              type="number"
              min={0}
              max={typedOf(30, lengths)}
              step={lengths === 'feet' ? 0.5 : 0.1}
              unit={LENGTH_UNIT[lengths]}
              value={String(typedOf(act.distanceM, lengths))}
              onChange={typed => onChange({ ...act, distanceM: metresTyped(typed, lengths) })}
            />
          )}
        </>
      );
    case 'pickUp':
    case 'turn':
      return <Effort value={act.effortRatio} onChange={effortRatio => onChange({ ...act, effortRatio })} />;
    default:
      return null;
  }
}

/** A length or a speed as it stands in its field, to a tenth. */
const typedOf = (inMetres: number, lengths: Lengths): number =>
  Math.round((lengths === 'feet' ? feetOf(inMetres) : inMetres) * 10) / 10;

const metresTyped = (typed: string, lengths: Lengths): number =>
  lengths === 'feet' ? metresOf(Number(typed)) : Number(typed);

function Effort({ value, onChange }: { readonly value: number; readonly onChange: (value: number) => void }) {
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

function PuckSpeed({
  lengths,
  value,
  onChange,
}: {
  readonly lengths: Lengths;
  readonly value: number;
  readonly onChange: (value: number) => void;
}) {
  return (
    <ValueField
      label="puck speed"
      type="number"
      min={typedOf(1, lengths)}
      max={typedOf(50, lengths)}
      step={0.5}
      unit={`${LENGTH_UNIT[lengths]}/s`}
      value={String(typedOf(value, lengths))}
      onChange={typed => onChange(metresTyped(typed, lengths))}
    />
  );
}
