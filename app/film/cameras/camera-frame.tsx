import type { FilmPart } from '@icewright/book';
import { useEffect, useRef, useState } from 'react';
import { drawFrame } from '../draw-frame.ts';
import { FrameReader } from '../frame-reader.ts';
import type { OpenFilm } from '../open-film.ts';
import { useFilm } from '../use-film.ts';

/** A film of the game beside the one that is open: its pictures are read and drawn here. */
export interface OtherFilm {
  readonly film: OpenFilm | undefined;
  readonly isGone: boolean;
  readonly reader: FrameReader | undefined;
}

export function useOtherFilm(part: FilmPart): OtherFilm {
  const { state } = useFilm(part);
  const film = state.kind === 'open' ? state.film : undefined;
  return {
    film,
    isGone: state.kind === 'missing' || state.kind === 'refused',
    reader: useReader(film),
  };
}

/** One frame of it; undefined shows none. Says which stands there, −1 for none, and why it does not follow. */
export function CameraFrame({
  other: { film, reader },
  frameIndex,
  waits,
  onShown,
}: {
  readonly other: OtherFilm;
  readonly frameIndex: number | undefined;
  /** Written over the picture while it stands still though the other film goes on. */
  readonly waits?: string | undefined;
  readonly onShown?: (frameIndex: number) => void;
}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [shown, setShown] = useState(-1);
  useEffect(() => {
    if (!film || !reader) return;
    const show = (at: number) => {
      setShown(at);
      onShown?.(at);
    };
    if (frameIndex === undefined) return show(-1);
    let isWanted = true;
    void reader.read(frameIndex).then(answer => {
      if (!isWanted || answer.kind !== 'picture' || !canvas.current) return;
      drawFrame(canvas.current, answer.picture, film);
      show(frameIndex);
    });
    return () => {
      isWanted = false;
    };
  }, [film, reader, frameIndex, onShown]);
  return (
    <div className="other-frame" hidden={shown < 0}>
      <canvas ref={canvas} className="other-picture" data-frame={shown} />
      {waits !== undefined && <p className="other-waits">{waits}</p>}
    </div>
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
