import type { Game } from '@icewright/book';
import { SURELY_SDS } from '@icewright/engine';
import { Act } from '../../parts/act.tsx';
import type { Lengths } from '../../parts/figures.ts';
import { lengthNumberSaid, lengthSaid } from '../../parts/figures.ts';
import { clockText } from '../film-clock.ts';
import { handsWords } from './hands-words.ts';
import type { DrawnTrack } from './track-layer.tsx';
import type { FollowingSkaters } from './use-following-skaters.ts';

/** The followed skaters of this film: who, from when to when, how surely; and what is being worked on. */
export function TracksSection({
  tracks,
  freezes,
  following,
  lengths,
  chosen,
  setting,
  frameIndex,
  cannotFollow,
  onChoose,
  onSetting,
  onDropHand,
  onTakeOut,
}: {
  readonly tracks: readonly DrawnTrack[];
  readonly freezes: Game['freezes'];
  readonly following: FollowingSkaters;
  readonly lengths: Lengths;
  readonly chosen: string | undefined;
  readonly setting: string | undefined;
  readonly frameIndex: number;
  /** Why nobody can be followed now. */
  readonly cannotFollow: string | undefined;
  readonly onChoose: (id: string) => void;
  readonly onSetting: (id: string | undefined) => void;
  readonly onDropHand: (id: string) => void;
  readonly onTakeOut: (id: string) => void;
}) {
  const { state } = following;
  const one = tracks.find(({ id }) => id === chosen);
  const hasHand = one && Object.values(one.track.hands).some(hand => hand.frameIndex === frameIndex);
  return (
    <>
      <h2>
        Followed skaters{' '}
        <span className="q3">feet put down by you or taken from an offer, found between</span>
      </h2>
      <ul className="tracks">
        {tracks.map(({ id, name, track, looks }) => (
          <li key={id}>
            <button
              type="button"
              className="quiet person-name"
              aria-pressed={chosen === id}
              onClick={() => onChoose(id)}
            >
              {name} <span className="q3">{track.side}</span>
            </button>
            <span className="q3">{spanWords(looks, handsWords(track, freezes), lengths)}</span>
            <Act bare onPress={() => onTakeOut(id)} label={`Take ${name} out of the followed`}>
              take out
            </Act>
          </li>
        ))}
      </ul>
      {state.kind === 'looking' ? (
        <p className="pins-acts" role="status">
          <span className="q2">Following: {Math.round(100 * state.share)} % of the frames</span>
          <progress max={1} value={state.share} aria-label="Frames looked through" />
          <Act onPress={following.stop}>Stop</Act>
        </p>
      ) : (
        <p className="pins-acts">
          {one && (
            <Act
              isOn={setting === one.id}
              notNow={cannotFollow}
              onPress={() => onSetting(setting === one.id ? undefined : one.id)}
            >
              Set the feet of {one.name} here
            </Act>
          )}
          {one && hasHand && Object.keys(one.track.hands).length > 1 && (
            <Act onPress={() => onDropHand(one.id)}>Let go of the hand here</Act>
          )}
          <Act notNow={cannotFollow} onPress={() => following.follow(tracks.map(({ id }) => id))}>
            Follow all again
          </Act>
        </p>
      )}
      {state.kind === 'failed' && (
        <p className="note" role="status">
          <span className="warm b">They could not be followed.</span> {state.why}
        </p>
      )}
      <p className="note" role="status">
        {cannotFollow === undefined
          ? 'Step through the frames: where a ring leaves the skates, drag it back. The frames around it are then followed anew, and the ± shrinks.'
          : `To correct or follow on, ${cannotFollow}.`}
      </p>
    </>
  );
}

const spanWords = (looks: DrawnTrack['looks'], hands: string, lengths: Lengths): string => {
  const [first, last] = [looks[0], looks[looks.length - 1]];
  if (!first || !last) return `${hands}, not followed yet`;
  const worstM = SURELY_SDS * Math.max(...looks.map(({ sdM }) => sdM));
  const bestM = SURELY_SDS * Math.min(...looks.map(({ sdM }) => sdM));
  return `${clockText(first.timeS, 1)} to ${clockText(last.timeS, 1)}, ± ${lengthNumberSaid(bestM, lengths)} to ${lengthSaid(worstM, lengths)}, ${hands}`;
};
