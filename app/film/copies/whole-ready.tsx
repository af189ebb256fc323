import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { leftSaid } from '../left-said.ts';
import { megabytes } from '../megabytes.ts';
import type { useCopies } from './use-copies.ts';
import type { WholeState } from './whole-film.ts';

/** The copy of the whole film: offered where a jump is slow without it, made while the coach rests, let go by a press. */
export function WholeReady({
  copies: { whole, askWhole },
}: {
  readonly copies: ReturnType<typeof useCopies>;
}) {
  const [refusal, setRefusal] = useState<string>();
  if (!whole || (!whole.isAsked && whole.keyDistance <= QUICK_FRAMES)) return null;
  const ask = async (isAsked: boolean) => setRefusal(await askWhole(isAsked));
  const { readyFrames, ofFrames, failedCount } = whole;
  const isReady = whole.isAsked && readyFrames === ofFrames;
  return (
    <p className="q3 whole-ready" data-state={!whole.isAsked ? 'offered' : isReady ? 'ready' : 'going'}>
      <span>{saidOf(whole, isReady)}</span>{' '}
      {whole.isAsked && !isReady && (
        <>
          <progress max={ofFrames} value={readyFrames} aria-label="The whole film made ready" />{' '}
        </>
      )}
      <Act bare onPress={() => void ask(!whole.isAsked)}>
        {!whole.isAsked ? 'Keep the whole film ready' : isReady ? 'Let it go' : 'Stop and let it go'}
      </Act>
      {failedCount > 0 && (
        <span className="warm" role="alert">
          {' '}
          {failedCount === 1 ? 'One stretch' : `${failedCount} stretches`} could not be made or kept: the film
          is damaged there, or this browser has no room left.
        </span>
      )}
      {refusal && (
        <span className="warm" role="alert">
          {' '}
          {refusal}
        </span>
      )}
    </p>
  );
}

const saidOf = (whole: WholeState, isReady: boolean): string => {
  const { readyFrames, ofFrames, leftS } = whole;
  if (!whole.isAsked)
    return `Only one picture in ${whole.keyDistance} of this film stands by itself: a jump works through those before it. A smaller copy in this browser, about ${megabytes(whole.aboutBytes)}, shows every jump at once, then the film’s own picture.`;
  if (isReady)
    return `The whole film is kept ready in this browser (${megabytes(whole.byteCount)}): a jump shows the smaller copy at once, then the film’s own picture.`;
  const left = leftS === undefined || leftS === 0 ? '' : `, ${leftSaid(leftS)}`;
  return `The whole film is made ready while you rest: ${Math.floor((100 * readyFrames) / ofFrames)} %${left}.`;
};

/** A film with a key picture so often jumps quickly as it is. */
const QUICK_FRAMES = 12;
