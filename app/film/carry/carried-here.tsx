import type { Carry } from '@icewright/engine';
import { useMemo } from 'react';
import { Act } from '../../parts/act.tsx';
import { type Lengths, lengthSaid } from '../../parts/figures.ts';
import type { Player } from '../player.ts';
import { usePlayerPart } from '../use-player.ts';
import { heldToM } from './carried-frames.ts';
import { LOST_WORDS } from './lost-words.ts';

/** Of the frame that is shown and not frozen: how well carried pins hold it, and the way to its figures. */
export function CarriedHere({
  player,
  carriedAt,
  saysWhere,
  lengths,
  onFreeze,
}: {
  readonly player: Player;
  readonly carriedAt: Carry['at'];
  /** Also says of a frame that nothing reaches it. */
  readonly saysWhere: boolean;
  readonly lengths: Lengths;
  readonly onFreeze: () => void;
}) {
  // While it plays nothing is worked out: a figure that changes 60 times a second cannot be read.
  const frameIndex = usePlayerPart(player, state => (state.playing ? -1 : state.frameIndex));
  const at = useMemo(() => (frameIndex < 0 ? undefined : carriedAt(frameIndex)), [carriedAt, frameIndex]);
  if (!at || (at.kind === 'none' && !saysWhere)) return null;
  if (at.kind === 'none') {
    return (
      <p className="note" data-testid="carried-here">
        {LOST_WORDS[at.reason]}: pin this frame again to see it on the ice.
      </p>
    );
  }
  const heldM = heldToM(at.fit, player.film);
  return (
    <p className="note" role="status" data-testid="carried-here">
      Carried from frame {at.from.join(' and ')}
      {heldM !== undefined && (
        <>
          , <b className="b">± {lengthSaid(heldM, lengths, 2)}</b> in the middle
        </>
      )}
      . Drift grows.
      {at.disagree && <span className="warm"> The pinned frames do not agree here: look at their pins.</span>}{' '}
      <Act onPress={onFreeze}>Freeze it</Act>
    </p>
  );
}
