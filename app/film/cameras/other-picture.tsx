import type { FilmPart } from '@icewright/book';
import { useEffect, useState } from 'react';
import { clockText } from '../film-clock.ts';
import { frameAtTime, middleOfFrame, timeOfFrame } from '../frame-index.ts';
import type { OpenFilm } from '../open-film.ts';
import type { Player } from '../player.ts';
import { usePlayerPart } from '../use-player.ts';
import { CameraFrame, useOtherFilm } from './camera-frame.tsx';
import type { TiedClock } from './tied-clock.ts';

type Tied = TiedClock & { readonly kind: 'tied' };

/** What another camera saw at the moment that is shown: follows every step and jump, and rests while the film plays. */
export function OtherPicture({
  part,
  player,
  clock,
  onFrame,
}: {
  readonly part: FilmPart;
  readonly player: Player;
  readonly clock: Tied;
  /** Told which frame of it is shown. */
  readonly onFrame: (frameIndex: number | undefined) => void;
}) {
  const other = useOtherFilm(part);
  const { film } = other;
  const [shown, setShown] = useState(-1);
  const isPlaying = usePlayerPart(player, one => one.playing);
  const frameIndex = usePlayerPart(player, one => (one.playing ? -1 : one.frameIndex));
  // While the film plays the last picture stays.
  const [wanted, setWanted] = useState<number>();
  const { shiftS, plusMinusS } = clock;
  useEffect(() => {
    if (!film || frameIndex < 0) return;
    const at = frameThen(player, frameIndex, film, { shiftS, plusMinusS });
    setWanted(at);
    onFrame(at);
  }, [film, player, frameIndex, shiftS, plusMinusS, onFrame]);
  if (other.isGone)
    return <p className="q3">{part.fileName} is not at hand, so its picture cannot be shown.</p>;
  return (
    <>
      <CameraFrame
        other={other}
        frameIndex={wanted}
        waits={isPlaying ? WAITS : undefined}
        onShown={setShown}
      />
      {film && (
        <p className="q2">
          {shown >= 0 ? (
            <>
              {clockText(timeOfFrame(film.index, shown))}, frame {shown}{' '}
              <span className="est">± {clock.plusMinusS.toFixed(3)} s</span>
            </>
          ) : isPlaying ? (
            WAITS
          ) : (
            'Not running at this moment.'
          )}
        </p>
      )}
    </>
  );
}

const WAITS = 'Follows when the film stands.';

/** The frame that it showed then; undefined before it began and after it ended. */
function frameThen(
  player: Player,
  frameIndex: number,
  film: OpenFilm,
  clock: Omit<Tied, 'kind'>,
): number | undefined {
  const timeS = middleOfFrame(player.film.index, frameIndex) + clock.shiftS;
  const isThere = timeS >= (film.index.timesS[0] ?? 0) - clock.plusMinusS && timeS <= film.index.endS;
  return isThere ? frameAtTime(film.index, timeS) : undefined;
}
