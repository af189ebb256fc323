import type { Drill, DrillAct } from '@icewright/book';
import { type ActId, type IcePoint, levelOf, type SpotId } from '@icewright/engine';
import { Act } from '../parts/act.tsx';
import { ChoiceField, ValueField, WordsField } from '../parts/field.tsx';
import type { Lengths } from '../parts/figures.ts';
import { ActFields } from './act-fields.tsx';
import { actSaid, cueSaid } from './act-words.ts';
import { CueFields } from './cue-fields.tsx';
import { spotRemoved } from './new-things.ts';
import { actsOf, endOfRoutes, newActId, spotsOf } from './route-writes.ts';
import type { Hand } from './use-hand.ts';

/** Everything the chosen spot does, one row an act; what the board shows by hand can all be done here by key. */
export function ActsPanel(props: {
  readonly hand: Hand;
  readonly spotId: SpotId;
  readonly actId: ActId | null;
  readonly lengths: Lengths;
  readonly onChooseAct: (actId: ActId | null) => void;
  readonly onGone: () => void;
}) {
  const { hand, spotId, actId, onChooseAct } = props;
  const { drill } = hand;
  const spot = drill.spots[spotId];
  if (spot === undefined) return null;
  const acts = actsOf(spot);
  const add = (kind: DrillAct['kind']) => {
    const id = newActId();
    const act = newAct(drill, spotId, kind);
    if (act === undefined) return;
    hand.keep([{ path: ['spots', spotId, 'acts', id], value: act }]);
    onChooseAct(id);
  };
  const hasOthers = spotsOf(drill).length > 1;
  const notAlone = hasOthers ? undefined : 'there is nobody else on the ice';
  return (
    <section className="sec chosen-spot">
      <h2>
        {spot.role} <span className="q3">{spot.side === 'us' ? 'one of us' : 'one of them'}</span>
      </h2>
      <div className="fields-row">
        <WordsField
          label="role"
          value={spot.role}
          maxLength={3}
          onChange={role => hand.keep([{ path: ['spots', spotId, 'role'], value: role.slice(0, 3) }])}
        />
        <ChoiceField
          label="side"
          value={spot.side}
          choices={[
            { value: 'us', said: 'one of us' },
            { value: 'them', said: 'one of them' },
          ]}
          onChange={side => hand.keep([{ path: ['spots', spotId, 'side'], value: side }])}
        />
        <ValueField
          label="waiting behind"
          type="number"
          min={0}
          max={30}
          step={1}
          value={String(spot.waitingCount)}
          onChange={count => hand.keep([{ path: ['spots', spotId, 'waitingCount'], value: Number(count) }])}
        />
      </div>
      <ol className="acts-list">
        {acts.map(([id, act]) => (
          <li key={id} className={id === actId ? 'is-open' : undefined}>
            <button
              type="button"
              className="act-row"
              aria-expanded={id === actId}
              onClick={() => onChooseAct(id === actId ? null : id)}
            >
              <b className="b">{actSaid(drill, act)}</b> <span className="q3">{cueSaid(drill, act.cue)}</span>
            </button>
            {id === actId && (
              <div className="fields-row act-fields">
                <CueFields
                  drill={drill}
                  own={spotId}
                  cue={act.cue}
                  onChange={cue => hand.keep([{ path: ['spots', spotId, 'acts', id, 'cue'], value: cue }])}
                />
                <ActFields
                  drill={drill}
                  own={spotId}
                  act={act}
                  lengths={props.lengths}
                  onChange={changed => hand.keep([{ path: ['spots', spotId, 'acts', id], value: changed }])}
                />
                <Act
                  bare
                  onPress={() => hand.keep([{ path: ['spots', spotId, 'acts', id], value: undefined }])}
                >
                  Take this act out
                </Act>
              </div>
            )}
          </li>
        ))}
      </ol>
      <fieldset className="add-acts">
        <legend>then {spot.role}</legend>
        <Act onPress={() => add('skate')}>skates</Act>
        <Act onPress={() => add('carry')}>carries</Act>
        <Act notNow={notAlone} onPress={() => add('pass')}>
          passes
        </Act>
        <Act onPress={() => add('shoot')}>shoots</Act>
        <Act onPress={() => add('hold')}>holds</Act>
        <Act notNow={notAlone} onPress={() => add('chase')}>
          chases
        </Act>
        <Act notNow={notAlone} onPress={() => add('gap')}>
          keeps a gap
        </Act>
      </fieldset>
      <p>
        <Act
          bare
          onPress={() => {
            hand.keep(spotRemoved(drill, spotId));
            props.onGone();
          }}
        >
          Take {spot.role} off the ice
        </Act>
      </p>
    </section>
  );
}

const FIRST_STEP_M = 8;
const FURTHEST_M = 24;

/** An act as it starts: speeds and gap are those of the drill's level, for the coach to change. */
function newAct(drill: Drill, spotId: SpotId, kind: DrillAct['kind']): DrillAct | undefined {
  const spot = drill.spots[spotId];
  if (spot === undefined) return undefined;
  const rank = Math.max(-1, ...Object.values(spot.acts).map(act => act.rank)) + 1;
  const start: Pick<DrillAct, 'rank' | 'cue'> = {
    rank,
    ...(rank === 0 ? { cue: { on: 'whistle' } as const } : {}),
  };
  const somebody = spotsOf(drill).find(([id, other]) => id !== spotId && other.side !== spot.side)?.[0];
  const mate = spotsOf(drill).find(
    ([id, other]) => id !== spotId && other.side === spot.side && other.kind !== 'goalie',
  )?.[0];
  const anybody = spotsOf(drill).find(([id]) => id !== spotId)?.[0];
  const end = spot.side === 'us' ? 'plusX' : 'minusX';
  const { model } = levelOf(drill.level);
  switch (kind) {
    case 'skate':
    case 'carry':
      return {
        ...start,
        kind,
        throughM: [ahead(endOfRoutes(spot), end)],
        facing: 'forward',
        effortRatio: 1,
        stops: false,
      };
    case 'pass':
      return (
        (mate ?? anybody) && {
          ...start,
          kind,
          toSpot: (mate ?? anybody)!,
          way: 'direct',
          speedMps: model.typicalPassMps,
        }
      );
    case 'shoot':
      return { ...start, kind, atEnd: end, speedMps: model.wristShotMps };
    case 'hold':
      return { ...start, kind, seconds: 1 };
    case 'chase':
      return (somebody ?? anybody) && { ...start, kind, whom: (somebody ?? anybody)!, effortRatio: 1 };
    case 'gap':
      return (
        (somebody ?? anybody) && {
          ...start,
          kind,
          whom: (somebody ?? anybody)!,
          distanceM: model.blueLineGapM,
        }
      );
  }
}

const ahead = (fromM: IcePoint, end: 'minusX' | 'plusX'): IcePoint => ({
  xM: Math.max(
    -FURTHEST_M,
    Math.min(FURTHEST_M, fromM.xM + (end === 'plusX' ? FIRST_STEP_M : -FIRST_STEP_M)),
  ),
  yM: fromM.yM,
});
