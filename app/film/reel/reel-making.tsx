import { Act } from '../../parts/act.tsx';
import { clockText } from '../film-clock.ts';
import { leftWords } from './reel-words.ts';
import type { useReel } from './use-reel.ts';

/** How far a reel is, the way to call it off, and what came of it. */
export function ReelMaking({
  reel: { making, said, cancel },
}: {
  readonly reel: Pick<ReturnType<typeof useReel>, 'making' | 'said' | 'cancel'>;
}) {
  return (
    <>
      {making && (
        <p className="reel-acts">
          <progress max={1} value={making.atS / making.lengthS} aria-label="How much of the reel is made" />
          <span className="q2">
            {clockText(making.atS, 0)} of {clockText(making.lengthS, 0)}{' '}
            {leftWords(making, making.lengthS, (performance.now() - making.beganMs) / 1000)}
          </span>
          <Act onPress={cancel}>Cancel</Act>
        </p>
      )}
      {said !== '' && (
        <p className="q2" role="status">
          {said}
        </p>
      )}
    </>
  );
}
