import type { Drill } from '@icewright/book';
import { type Cue, type IcePoint, LINE_IDS, type LineId, lineWords, type SpotId } from '@icewright/engine';
import { ChoiceField, ValueField } from '../parts/field.tsx';
import type { Lengths } from '../parts/figures.ts';
import { LengthField } from './act-parts.tsx';
import { endOfRoutes, spotsOf } from './route-writes.ts';

const STARTS = [
  { value: 'atOnce', said: 'at once' },
  { value: 'whistle', said: 'on the whistle' },
  { value: 'after', said: 'after a time' },
  { value: 'receive', said: 'when … receives' },
  { value: 'shot', said: 'when … shoots' },
  { value: 'losesPuck', said: 'when … loses the puck' },
  { value: 'caught', said: 'when … is caught' },
  { value: 'reaches', said: 'when … comes to a place' },
  { value: 'spotCrosses', said: 'when … crosses a line' },
  { value: 'puckCrosses', said: 'when the puck crosses a line' },
] as const;

type Start = (typeof STARTS)[number]['value'];

/** What an act waits for. */
export function CueFields(props: {
  readonly drill: Drill;
  readonly own: SpotId;
  readonly cue: Cue | undefined;
  readonly lengths: Lengths;
  readonly onChange: (cue: Cue | undefined) => void;
}) {
  const { drill, cue, onChange } = props;
  const spots = spotsOf(drill);
  const choices = spots.map(([id, spot]) => ({ value: id as string, said: spot.role }));
  return (
    <>
      <ChoiceField<Start>
        label="starts"
        value={cue?.on ?? 'atOnce'}
        choices={spots.length === 0 ? STARTS.filter(start => !needsSpot(start.value)) : STARTS}
        onChange={start =>
          onChange(cueFrom(drill, start, cue, spots.find(([id]) => id !== props.own)?.[0] ?? props.own))
        }
      />
      {cue !== undefined && 'spot' in cue && (
        <ChoiceField
          label="who"
          value={cue.spot as string}
          choices={choices}
          onChange={spot => onChange({ ...cue, spot: spot as SpotId })}
        />
      )}
      {cue !== undefined && 'line' in cue && (
        <ChoiceField<LineId>
          label="line"
          value={cue.line}
          choices={LINE_IDS.map(line => ({ value: line, said: lineWords(line, drill) }))}
          onChange={line => onChange({ ...cue, line })}
        />
      )}
      {cue?.on === 'reaches' && <PlaceFields cue={cue} lengths={props.lengths} onChange={onChange} />}
      {cue?.on === 'after' && (
        <ValueField
          label="after"
          type="number"
          min={0}
          max={120}
          step={0.1}
          unit="s"
          value={String(cue.seconds)}
          onChange={seconds => onChange({ on: 'after', seconds: Number(seconds) })}
        />
      )}
    </>
  );
}

/** The place somebody comes to, typed; on the ice its lozenge is drawn there. */
function PlaceFields({
  cue,
  lengths,
  onChange,
}: {
  readonly cue: Extract<Cue, { on: 'reaches' }>;
  readonly lengths: Lengths;
  readonly onChange: (cue: Cue) => void;
}) {
  return (
    <>
      <LengthField
        label="from the red line"
        lengths={lengths}
        valueM={cue.atM.xM}
        minM={-FARTHEST_M.xM}
        maxM={FARTHEST_M.xM}
        onChange={xM => onChange({ ...cue, atM: { ...cue.atM, xM } })}
      />
      <LengthField
        label="from the middle"
        lengths={lengths}
        valueM={cue.atM.yM}
        minM={-FARTHEST_M.yM}
        maxM={FARTHEST_M.yM}
        onChange={yM => onChange({ ...cue, atM: { ...cue.atM, yM } })}
      />
      <LengthField
        label="within"
        lengths={lengths}
        valueM={cue.withinM}
        minM={0.1}
        maxM={30}
        onChange={withinM => onChange({ ...cue, withinM })}
      />
    </>
  );
}

/** Half the longest and the widest sheet there is. */
const FARTHEST_M = { xM: 30.5, yM: 15 } as const;

/** Where somebody comes to at last: the place that is first thought of. */
const endOf = (drill: Drill, spotId: SpotId): IcePoint => {
  const spot = drill.spots[spotId];
  return spot === undefined ? { xM: 0, yM: 0 } : endOfRoutes(spot);
};

const needsSpot = (start: Start) =>
  start !== 'atOnce' && start !== 'whistle' && start !== 'after' && start !== 'puckCrosses';

/** How near counts as there, metres: a stick's reach. */
const THERE_M = 1.5;

function cueFrom(drill: Drill, start: Start, before: Cue | undefined, anybody: SpotId): Cue | undefined {
  const spot = before !== undefined && 'spot' in before ? before.spot : anybody;
  const line = before !== undefined && 'line' in before ? before.line : 'blueLineMinusX';
  switch (start) {
    case 'atOnce':
      return undefined;
    case 'whistle':
      return { on: 'whistle' };
    case 'after':
      return { on: 'after', seconds: 1 };
    case 'receive':
    case 'shot':
    case 'losesPuck':
    case 'caught':
      return { on: start, spot };
    case 'reaches':
      return { on: start, spot, atM: endOf(drill, spot), withinM: THERE_M };
    case 'spotCrosses':
      return { on: 'spotCrosses', spot, line };
    case 'puckCrosses':
      return { on: 'puckCrosses', line };
  }
}
