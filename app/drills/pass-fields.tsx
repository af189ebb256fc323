import type { Drill, DrillAct } from '@icewright/book';
import { levelOf, type PassWay, type SpotId } from '@icewright/engine';
import { ChoiceField } from '../parts/field.tsx';
import type { Lengths } from '../parts/figures.ts';
import { type Choice, PuckSpeed } from './act-parts.tsx';

type PassAct = Extract<DrillAct, { kind: 'pass' }>;

const WAYS: readonly { readonly value: PassWay; readonly said: string }[] = [
  { value: 'direct', said: 'straight' },
  { value: 'bank', said: 'off the boards' },
  { value: 'saucer', said: 'saucer, over sticks' },
  { value: 'rim', said: 'rim, along the boards' },
  { value: 'drop', said: 'drop, left behind' },
];

/** To whom, which way, how hard. */
export function PassFields(props: {
  readonly act: PassAct;
  readonly others: readonly Choice[];
  readonly level: Drill['level'];
  readonly lengths: Lengths;
  readonly onChange: (act: DrillAct) => void;
}) {
  const { act, onChange } = props;
  return (
    <>
      <ChoiceField
        label="to"
        value={act.toSpot as string}
        choices={props.others}
        onChange={toSpot => onChange({ ...act, toSpot: toSpot as SpotId })}
      />
      <ChoiceField
        label="way"
        value={act.way}
        choices={WAYS}
        onChange={way => onChange({ ...act, way, speedMps: usualSpeed(act, way, props.level) })}
      />
      <PuckSpeed
        lengths={props.lengths}
        leastMps={act.way === 'drop' ? 0 : 1}
        value={act.speedMps}
        onChange={speedMps => onChange({ ...act, speedMps })}
      />
    </>
  );
}

/** A drop is left where it is, a rim goes hard; between the other ways the coach's own speed stays. */
const usualSpeed = (act: PassAct, way: PassWay, level: Drill['level']): number => {
  const { model } = levelOf(level);
  if (way === 'drop') return 0;
  if (way === 'rim') return model.hardPassMps;
  return act.way === 'drop' || act.way === 'rim' ? model.typicalPassMps : act.speedMps;
};
