import type { FilmPart } from '@icewright/book';
import { useEffect, useRef, useState } from 'react';
import { drawFrame } from '../draw-frame.ts';
import { clockText } from '../film-clock.ts';
import { frameAtTime, middleOfFrame, timeOfFrame } from '../frame-index.ts';
import { FrameReader } from '../frame-reader.ts';
import type { OpenFilm } from '../open-film.ts';
import type { Player } from '../player.ts';
import { useFilm } from '../use-film.ts';
import { usePlayerPart } from '../use-player.ts';
import type { TiedClock } from './tied-clock.ts';

/** What another camera saw at the moment that is shown: follows every step and jump, and rests while the film plays. */
export function OtherPicture({
  part,
  player,
  clock,
  onFrame,
}: {
  readonly part: FilmPart;
  readonly player: Player;
  readonly clock: TiedClock & { kind: 'tied' };
  /** Told which frame of it is shown. */
  readonly onFrame: (frameIndex: number | undefined) => void;
}) {
  const { state } = useFilm(part);
  const canvas = useRef<HTMLCanvasElement>(null);
  const film = state.kind === 'open' ? state.film : undefined;
  const reader = useReader(film);
  const [shown, setShown] = useState(-1);
  const frameIndex = usePlayerPart(player, one => (one.playing ? -1 : one.frameIndex));
  useEffect(() => {
    if (!film || !reader || frameIndex < 0) return;
    const timeS = middleOfFrame(player.film.index, frameIndex) + clock.shiftS;
    const isThere = timeS >= (film.index.timesS[0] ?? 0) - clock.plusMinusS && timeS <= film.index.endS;
    const wanted = isThere ? frameAtTime(film.index, timeS) : undefined;
    onFrame(wanted);
    if (wanted === undefined) return setShown(-1);
    void reader.read(wanted).then(answer => {
      if (answer.kind !== 'picture' || !canvas.current) return;
      drawFrame(canvas.current, answer.picture, film);
      setShown(wanted);
    });
  }, [film, reader, player, frameIndex, clock.shiftS, clock.plusMinusS, onFrame]);
  if (state.kind === 'missing' || state.kind === 'refused')
    return <p className="q3">{part.fileName} is not at hand, so its picture cannot be shown.</p>;
  return (
    <>
      <canvas ref={canvas} className="other-picture" data-frame={shown} hidden={shown < 0} />
      {film && (
        <p className="q2">
          {shown >= 0 ? (
            <>
              {clockText(timeOfFrame(film.index, shown))}, frame {shown}{' '}
              <span className="est">± {clock.plusMinusS.toFixed(3)} s</span>
            </>
          ) : frameIndex >= 0 ? (
            'Not running at this moment.'
          ) : (
            'Follows when the film stands.'
          )}
        </p>
      )}
    </>
  );
}

const useReader = (film: OpenFilm | undefined): FrameReader | undefined => {
  const [reader, setReader] = useState<FrameReader>();
  useEffect(() => {
    if (!film) return;
    const made = new FrameReader(film);
    setReader(made);
    return () => {
      setReader(undefined);
      made.close();
    };
  }, [film]);
  return reader;
};
