import type { Drill, DrillAct } from '@icewright/book';
import { type End, isOurEnd, type SpotId } from '@icewright/engine';
import { ChoiceField, ValueField } from '../parts/field.tsx';
import type { Lengths } from '../parts/figures.ts';
import { Effort, LengthField, PuckSpeed, ScreenFields, TurnFields } from './act-parts.tsx';
import { PassFields } from './pass-fields.tsx';
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
        <PassFields act={act} others={others} level={drill.level} lengths={lengths} onChange={onChange} />
      );
    case 'shoot':
      return (
        <>
          <ChoiceField<End>
            label="at"
            value={act.atEnd}
            choices={[
              { value: 'minusX', said: netSaid('minusX', drill) },
              { value: 'plusX', said: netSaid('plusX', drill) },
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
            <LengthField
              label="gap"
              lengths={lengths}
              valueM={act.distanceM}
              maxM={30}
              onChange={distanceM => onChange({ ...act, distanceM })}
            />
          )}
        </>
      );
    case 'pickUp':
      return <Effort value={act.effortRatio} onChange={effortRatio => onChange({ ...act, effortRatio })} />;
    case 'turn':
      return <TurnFields act={act} onChange={onChange} />;
    case 'screen':
      return <ScreenFields act={act} others={others} onChange={onChange} />;
    case 'face':
      return (
        <ChoiceField
          label="towards"
          value={act.whom ?? THE_PUCK}
          choices={[{ value: THE_PUCK, said: 'the puck' }, ...others]}
          onChange={whom => {
            const { whom: _before, ...rest } = act;
            onChange(whom === THE_PUCK ? rest : { ...rest, whom: whom as SpotId });
          }}
        />
      );
    default:
      return null;
  }
}

const THE_PUCK = 'puck';

const netSaid = (end: End, drill: Drill): string => (isOurEnd(end, drill) ? 'our net' : 'their net');
