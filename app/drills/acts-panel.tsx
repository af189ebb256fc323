import type { ActId, SpotId } from '@icewright/engine';
import { Act } from '../parts/act.tsx';
import { ChoiceField, ValueField, WordsField } from '../parts/field.tsx';
import type { Lengths } from '../parts/figures.ts';
import { ActFields } from './act-fields.tsx';
import { actSaid, cueSaid } from './act-words.ts';
import { CueFields } from './cue-fields.tsx';
import { removed } from './edit/removed.ts';
import { pickedSpot } from './edit/selection.ts';
import { actsOf } from './route-writes.ts';
import { SameRole } from './same-role.tsx';
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
      <SameRole hand={hand} spotId={spotId} spot={spot} />
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
                  lengths={props.lengths}
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
      <p>
        <Act
          bare
          onPress={() => {
            hand.keep(removed(drill, [pickedSpot(spotId)]));
            props.onGone();
          }}
        >
          Take {spot.role} off the ice
        </Act>
      </p>
    </section>
  );
}
