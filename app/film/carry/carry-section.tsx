import type { Carry } from '@icewright/engine';
import { Act } from '../../parts/act.tsx';
import type { Lengths } from '../../parts/figures.ts';
import { lengthSaid } from '../../parts/figures.ts';
import { clockText } from '../film-clock.ts';
import { clampFrame, frameAtTime, timeOfFrame } from '../frame-index.ts';
import type { OpenFilm } from '../open-film.ts';
import { heldToM } from './carried-frames.ts';
import { CarryProgress } from './carry-progress.tsx';
import { LOST_WORDS } from './lost-words.ts';
import type { Following } from './use-carry.ts';

/** How far the pins of a frame are carried: so many seconds before and after it. */
const REACHES_S = [3, 10] as const;

/** Under the pins: carry them through the camera's pan, how far that is, and what came of it. */
export function CarrySection({
  film,
  frameIndex,
  following,
  carry,
  lengths,
}: {
  readonly film: OpenFilm;
  readonly frameIndex: number;
  readonly following: Following;
  readonly carry: Carry | undefined;
  readonly lengths: Lengths;
}) {
  const { state } = following;
  const start = (reachS: number) => {
    const atS = timeOfFrame(film.index, frameIndex);
    following.start(
      clampFrame(film.index, frameAtTime(film.index, atS - reachS)),
      clampFrame(film.index, frameAtTime(film.index, atS + reachS)),
    );
  };
  return (
    <section className="sec carry">
      <h2>Other frames</h2>
      {state.kind === 'following' ? (
        <CarryProgress state={state} onStop={following.stop} />
      ) : (
        <>
          <Reached film={film} following={following} carry={carry} lengths={lengths} />
          <p className="pins-acts">
            <span className="q2">Carry the pins through the pan</span>
            {REACHES_S.map(reachS => (
              <Act key={reachS} onPress={() => start(reachS)}>
                {reachS} s each way
              </Act>
            ))}
          </p>
        </>
      )}
    </section>
  );
}

function Reached({
  film,
  following: { state },
  carry,
  lengths,
}: {
  readonly film: OpenFilm;
  readonly following: Following;
  readonly carry: Carry | undefined;
  readonly lengths: Lengths;
}) {
  if (state.kind === 'failed') {
    return (
      <p className="note" role="status">
        <span className="warm b">The camera could not be followed.</span> {state.why}
      </p>
    );
  }
  if (state.kind !== 'followed' || !carry) {
    return (
      <p className="note">Pins hold this frame alone. The camera can be followed from here, both ways.</p>
    );
  }
  const { frames, picture } = state.stretch;
  const ends = [frames[0], frames[frames.length - 1]].flatMap(frame => {
    const at = frame && carry.at(frame.frameIndex);
    const heldM = at?.kind === 'carried' ? heldToM(at.fit, picture) : undefined;
    return heldM === undefined || !frame ? [] : [{ frameIndex: frame.frameIndex, heldM }];
  });
  const lost = frames.filter(frame => frame.lost);
  const clock = (frame: number) => clockText(timeOfFrame(film.index, frame), 1);
  return (
    <p className="note" role="status" data-testid="carried-stretch">
      Followed from {clock(frames[0]!.frameIndex)} to {clock(frames[frames.length - 1]!.frameIndex)}
      {ends.map(({ frameIndex, heldM }) => (
        <span key={frameIndex}>
          {', '}
          <b className="b">± {lengthSaid(heldM, lengths, 2)}</b> at {clock(frameIndex)}
        </span>
      ))}
      . Freeze any frame between
      {carry.pinned.size === 1 && '; pins on a second one hold all of them far better'}.
      {lost.map(({ frameIndex, lost: because }) => (
        <span key={frameIndex}>
          {' '}
          <span className="warm">
            {because && LOST_WORDS[because]} at {clock(frameIndex)}:
          </span>{' '}
          pin again beyond it.
        </span>
      ))}
    </p>
  );
}
