import { Act } from '../../parts/act.tsx';
import { leftSaid } from '../left-said.ts';
import type { CarryState, Following } from './use-carry.ts';

/** How far the following of the camera is, and how long it takes still. It goes on wherever in the film room one is meanwhile. */
export function CarryProgress({
  state,
  onStop,
}: {
  readonly state: Extract<CarryState, { kind: 'following' }>;
  readonly onStop: Following['stop'];
}) {
  const { frameCount, ofCount, leftS } = state;
  return (
    <p className="pins-acts" role="status">
      <span className="q2">
        Following the camera: {frameCount} of {ofCount} frames
        {leftS !== undefined && `, ${leftSaid(leftS)}`}
      </span>
      <progress max={ofCount} value={frameCount} aria-label="Frames followed" />
      <Act onPress={onStop}>Stop</Act>
    </p>
  );
}
