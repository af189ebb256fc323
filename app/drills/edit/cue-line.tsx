import type { Drill } from '@icewright/book';
import type { ActId, Cue, SpotId } from '@icewright/engine';
import { Act } from '../../parts/act.tsx';
import { cueSaid } from '../act-words.ts';
import { spotsOf } from '../route-writes.ts';
import type { Hand } from '../use-hand.ts';
import { cuesOfSpot } from './cue-dropped.ts';
import type { Arrange } from './use-arrange.ts';

/** What starts the open act, and what else could, given what its lozenge was dropped on. */
export function CueLine(props: {
  readonly hand: Hand;
  readonly spotId: SpotId;
  readonly actId: ActId;
  readonly arrange: Arrange;
}) {
  const { hand, spotId, actId, arrange } = props;
  const { drill } = hand;
  const spot = drill.spots[spotId];
  const act = spot?.acts[actId];
  if (spot === undefined || act === undefined) return null;
  const path = ['spots', spotId, 'acts', actId, 'cue'];
  return (
    <fieldset className="add-acts">
      <legend>{spot.role} starts it</legend>
      {choicesFor(drill, spotId, act.cue).map(cue => (
        <Act
          key={JSON.stringify(cue) ?? 'at once'}
          isOn={JSON.stringify(cue) === JSON.stringify(act.cue)}
          onPress={() => hand.keep([{ path, value: cue }])}
        >
          {cueSaid(drill, cue)}
        </Act>
      ))}
      {arrange.joinNotNow === null && <Act onPress={arrange.join}>Join with the next route</Act>}
      <Act bare onPress={arrange.copy}>
        Copy this act
      </Act>
      <Act bare onPress={arrange.takeOff}>
        Take it out
      </Act>
    </fieldset>
  );
}

/** At once, the whistle, and the kin of what it is now: other things the same spot does, others over the same line. */
function choicesFor(drill: Drill, own: SpotId, cue: Cue | undefined): readonly (Cue | undefined)[] {
  const kin: readonly Cue[] =
    cue === undefined || cue.on === 'whistle'
      ? []
      : 'line' in cue
        ? [
            { on: 'puckCrosses', line: cue.line },
            ...spotsOf(drill)
              .filter(([id, spot]) => id !== own && Object.keys(spot.acts).length > 0)
              .map(([id]) => ({ on: 'spotCrosses', spot: id, line: cue.line }) as const),
          ]
        : 'spot' in cue
          ? [cue, ...cuesOfSpot(drill, cue.spot).filter(each => each.on !== cue.on)]
          : [cue];
  return [undefined, { on: 'whistle' }, ...kin];
}
