import type { Drill } from '@icewright/book';
import type { ActId, Cue, SpotId } from '@icewright/engine';
import { cueKey } from '@icewright/picture';
import { cueSaid, roleOf } from '../act-words.ts';
import { actsOf, spotsOf } from '../route-writes.ts';
import type { Write } from '../write.ts';

export interface Refired {
  readonly writes: readonly Write[];
  readonly said: string;
}

/**
 * A lozenge on another stave: the full one moves what fires for everybody who waits for it, the open one only for its own
 * act. What is waited for stays (a receive stays a receive); a cue that names nobody becomes the receive of who is named. Null where
 * nothing changes.
 */
export const refired = (
  drill: Drill,
  sign: { readonly spot: SpotId; readonly act: ActId; readonly way: 'fires' | 'waits'; readonly cue: Cue },
  bySpot: SpotId,
): Refired | null => {
  const own = drill.spots[sign.spot]?.acts[sign.act];
  if (own === undefined || drill.spots[bySpot] === undefined) return null;
  if ('spot' in sign.cue && sign.cue.spot === bySpot) return null;
  const cue: Cue = 'spot' in sign.cue ? { ...sign.cue, spot: bySpot } : { on: 'receive', spot: bySpot };
  const isShared = sign.way === 'fires' && 'spot' in sign.cue;
  const waiting = isShared ? whoWaitFor(drill, sign.cue) : [[sign.spot, sign.act] as const];
  const names = [...new Set(waiting.map(([spot]) => roleOf(drill, spot)))];
  return {
    writes: waiting.map(([spot, act]) => ({ path: ['spots', spot, 'acts', act, 'cue'], value: cue })),
    said: `${names.join(', ')} ${names.length === 1 ? 'starts' : 'start'} ${cueSaid(drill, cue)}`,
  };
};

const whoWaitFor = (drill: Drill, cue: Cue): readonly (readonly [SpotId, ActId])[] =>
  spotsOf(drill).flatMap(([spotId, spot]) =>
    actsOf(spot).flatMap(([actId, act]) =>
      act.cue !== undefined && cueKey(act.cue) === cueKey(cue) ? [[spotId, actId] as const] : [],
    ),
  );
